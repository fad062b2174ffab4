import { linePath, svg } from "./svg.ts";

type Point = readonly [x: number, y: number];

/**
 * A dimension line of a shop drawing with a head at each end, broken by `gap` px in its middle for the number; nothing
 * between points less than 1 px apart, and no heads where they would meet. All in px.
 * @example group.append(...dimensionLine(document, [20, 40], [300, 40], 60))
 */
export function dimensionLine(document: Document, from: Point, to: Point, gap = 0): readonly SVGElement[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length < 1) return [];
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const at = (along: number, aside = 0): Point => [
    from[0] + ux * along - uy * aside,
    from[1] + uy * along + ux * aside,
  ];
  const head = Math.min(7, length / 3);
  const half = (length - gap) / 2;
  const stroke = { stroke: "var(--ink)", "stroke-width": 0.9, fill: "none" };
  const arrow = (tip: number, back: number) =>
    svg(document, "path", { d: `${linePath([at(tip), at(back, 2.4), at(back, -2.4)])}Z`, fill: "var(--ink)" });
  const lines =
    gap > 0
      ? [
          [at(0), at(half)],
          [at(length - half), at(length)],
        ]
      : [[at(0), at(length)]];
  const heads = length < 9 ? [] : [arrow(0, head), arrow(length, length - head)];
  return [...lines.map((points) => svg(document, "path", { d: linePath(points), ...stroke })), ...heads];
}
