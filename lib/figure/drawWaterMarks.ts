import type { Placing } from "./placeSlope.ts";
import { svg } from "./svg.ts";
import { thin } from "./thin.ts";
import type { WaterPoint } from "./types.ts";

/** Points that are drawn: all of them while they can be told apart. */
export function shownWaterPoints(
  points: readonly WaterPoint[],
  { x, y }: Pick<Placing, "x" | "y">,
): readonly WaterPoint[] {
  const sorted = [...points].sort((a, b) => a.time - b.time);
  return sorted.length <= 150
    ? sorted
    : thin(
        sorted,
        (one) => x(one.time),
        (one) => y(one.gone),
        4,
      );
}

/** What each reading says of the water: a dot (a ring where it is not trusted) and its 95 % bar with end ticks. */
export function drawWaterMarks(points: readonly WaterPoint[], { document, x, y }: Placing): SVGElement {
  const shown = shownWaterPoints(points, { x, y });
  const group = svg(document, "g", { "data-part": "points" });
  const barred = shown.length <= 60;
  for (const one of shown) {
    const [cx, cy] = [x(one.time), y(one.gone)];
    const trusted = one.weight >= 0.5;
    const half = 1.96 * one.standardUncertainty;
    const stroke = { stroke: "var(--ink)", "stroke-width": 0.9 };
    const line = (x1: number, y1: number, x2: number, y2: number) =>
      svg(document, "line", { x1, y1, x2, y2, ...stroke });
    if (barred && trusted && half > 0) {
      const [foot, head] = [y(one.gone - half), y(one.gone + half)];
      group.append(line(cx, head, cx, foot), line(cx - 3, head, cx + 3, head), line(cx - 3, foot, cx + 3, foot));
    }
    group.appendChild(
      trusted
        ? svg(document, "circle", {
            cx,
            cy,
            r: barred ? 3.3 : 1.8,
            fill: "var(--ink)",
            ...(barred ? { stroke: "var(--ground)", "stroke-width": 1.6 } : {}),
            "data-mark": "point",
          })
        : svg(document, "circle", {
            cx,
            cy,
            r: 4.5,
            fill: "none",
            ...stroke,
            "stroke-width": 1.2,
            "data-mark": "apart",
          }),
    );
  }
  return group;
}
