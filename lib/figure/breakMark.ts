import { linePath, svg } from "./svg.ts";

/**
 * Where an upright rule changes its scale: a short zigzag on it, as a drawing breaks a long part, and a chain line
 * across the plate. `at` is px down, `rule` and `end` px from the left.
 * @example breakMark(document, 320, 96, 1280);
 */
export function breakMark(document: Document, at: number, rule: number, end: number): SVGElement {
  const zigzag = linePath([
    [rule - 10, at + 1],
    [rule - 4, at - 4],
    [rule + 4, at + 6],
    [rule + 10, at + 1],
  ]);
  return svg(document, "g", { "data-mark": "break" }, [
    svg(document, "line", {
      x1: rule + 12,
      x2: end,
      y1: at + 1,
      y2: at + 1,
      stroke: "var(--rule)",
      "stroke-width": 1,
      "stroke-dasharray": "12 4 3 4",
    }),
    svg(document, "path", { d: zigzag, stroke: "var(--plate)", "stroke-width": 5, fill: "none" }),
    svg(document, "path", { d: zigzag, stroke: "var(--ink)", "stroke-width": 1.2, fill: "none" }),
  ]);
}
