import { linePath } from "./svg.ts";
import type { Box } from "./types.ts";

/**
 * Path data of a line straight down from `top` to `bottom` px, broken wherever it would cross a box of text.
 * @example dropLine(10, 0, 100, [{ x: 0, y: 40, width: 30, height: 10 }]) // "M10,0L10,37M10,53L10,100"
 */
export function dropLine(x: number, top: number, bottom: number, boxes: readonly Box[]): string {
  const inTheWay = boxes
    .filter((box) => box.x - 3 < x && x < box.x + box.width + 3)
    .map((box) => ({ from: box.y - 3, to: box.y + box.height + 3 }))
    .sort((a, b) => a.from - b.from);
  let path = "";
  let from = top;
  for (const box of [...inTheWay, { from: bottom, to: bottom }]) {
    const to = Math.min(box.from, bottom);
    if (to > from) {
      path += linePath([
        [x, from],
        [x, to],
      ]);
    }
    from = Math.max(from, box.to);
  }
  return path;
}
