import { drawCaseMark } from "./caseMark.ts";
import { linesOf } from "./cutTo.ts";
import { svg } from "./svg.ts";
import { textWidth } from "./textWidth.ts";

/** A case that is named below a figure, for want of room inside: its mark, its name, and its number or a word. */
export interface ListedCase {
  readonly mark: number;
  readonly name: string;
  readonly says: string;
}

/**
 * Cases one below the other, each with its mark, its name and what it says; in px from `top`, `height` high.
 * @example caseList(document, [{ mark: 0, name: "Small tank", says: "4.6 lb" }], { top: 300, width: 350, size: 13 }).height // 22.75
 */
export function caseList(
  document: Document,
  cases: readonly ListedCase[],
  { top, width, size }: { readonly top: number; readonly width: number; readonly size: number },
): { readonly elements: readonly SVGElement[]; readonly height: number } {
  const leading = size * 1.3;
  let y = top;
  const elements = cases.map(({ mark, name, says }) => {
    const [room, saying] = [width - 26, textWidth(says, size, 500)];
    const beside = textWidth(name, size) + saying + 14 <= room;
    const names = linesOf(name, size, room, 2);
    const below = beside || says === "" ? [] : linesOf(says, size, room, 2);
    const first = y + size;
    const text = (words: string, at: number, line: number, weight: number) =>
      svg(document, "text", { x: at, y: first + line * leading, "font-size": size, "font-weight": weight }, [words]);
    const lines = [
      ...names.map((words, line) => text(words, 22, line, 400)),
      ...below.map((words, line) => text(words, 22, names.length + line, 500)),
      ...(beside && says !== "" ? [text(says, 22 + textWidth(name, size) + 10, 0, 500)] : []),
    ];
    y += leading * Math.max(1, names.length + below.length) + size * 0.45;
    return svg(document, "g", { "data-listed": mark + 1 }, [
      drawCaseMark(document, mark, 10, first - size * 0.34),
      ...lines,
    ]);
  });
  return { elements, height: y - top };
}
