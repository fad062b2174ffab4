import { textWidth } from "./textWidth.ts";
import { wrapped } from "./wrapped.ts";

/**
 * A text cut with an ellipsis to what fits in `room` px; National Park at `size` px.
 * @example cutTo("gas for the run", 14, 60) // "gas for…"
 */
export function cutTo(text: string, size: number, room: number, weight = 400): string {
  if (textWidth(text, size, weight) <= room) return text;
  const letters = [...text];
  while (letters.length > 0 && textWidth(`${letters.join("").trimEnd()}…`, size, weight) > room) letters.pop();
  return `${letters.join("").trimEnd()}…`;
}

/**
 * A text in at most `most` lines of `room` px, the last one cut with an ellipsis where there is more.
 * @example linesOf("gas for the run", 14, 60, 1) // ["gas for…"]
 */
export function linesOf(text: string, size: number, room: number, most: number): readonly string[] {
  const lines = wrapped(text, size, room);
  const kept = [...lines.slice(0, most - 1), lines.slice(most - 1).join(" ")].filter((line) => line !== "");
  return kept.map((line) => cutTo(line, size, room));
}
