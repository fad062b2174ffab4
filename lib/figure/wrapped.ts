import { textWidth } from "./textWidth.ts";

/**
 * A text in lines no wider than `width` px, broken at spaces; a word wider than that stands alone. National Park at
 * `size` px; `stretch` is how much wider another face runs.
 * @example wrapped("one two three", 14, 60) // ["one two", "three"]
 */
export function wrapped(text: string, size: number, width: number, stretch = 1): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/).filter((one) => one !== "")) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line !== "" && textWidth(longer, size) * stretch > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === "" ? lines : [...lines, line];
}
