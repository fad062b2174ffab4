import { dimensionLine } from "./dimensionLine.ts";
import { assertFinite, assertWidth } from "./finite.ts";
import { linePath, svg } from "./svg.ts";
import { lengthText } from "./tankDrawn.ts";
import { barFaces, type View } from "./tankPlanFaces.ts";
import { partSaid, tankPlanFinding, wallSaid } from "./tankPlanFinding.ts";
import { textWidth } from "./textWidth.ts";
import type { FigureOptions, TankPlanData } from "./types.ts";
import { wrapped } from "./wrapped.ts";

type Point = readonly [x: number, y: number];

/**
 * A tank with a part in it from above and, below that, from the side: both to one scale, with dimension lines for
 * length, width and depth of the liquid, the clearance dashed, the words for the part underneath. Measures in m, above
 * 0 (freeboard and clearance 0 or more). Throws a RangeError for others, and for widths that no figure has.
 * @example
 * const tank = { length: 0.61, width: 0.15, depth: 0.13, freeboard: 0.1 };
 * tankPlan(tank, { document, width: 480, system: "US" }).getAttribute("data-figure"); // "tank plan"
 */
export function tankPlan(data: TankPlanData, options: FigureOptions): SVGSVGElement {
  assertWidth(options.width);
  assertFinite(data, "tank");
  const smallest = Math.min(data.length, data.width, data.depth);
  if (!(smallest > 0)) throw new RangeError(`invalid tank: ${smallest} m; length, width and depth above 0`);
  const { freeboard = 0, clearance = 0 } = data;
  const least = Math.min(freeboard, clearance);
  if (least < 0) throw new RangeError(`invalid tank: ${least} m; freeboard and clearance 0 or more`);
  const { document, width: whole } = options;
  const size = options.narrow ? 13 : 14;
  const text = (metres: number) => lengthText(metres, options.system);
  const wall = data.depth + freeboard;
  const rightWords = [data.width, data.depth, freeboard].map((one) => textWidth(text(one), size));
  const side = Math.max(...rightWords) + 34;
  // A short and deep tank would grow past any page: neither view is higher than 240 px.
  const scale = Math.min((whole - side - 4) / data.length, 240 / Math.max(wall, data.width));
  const left = 2;
  const right = left + data.length * scale;
  const planTop = size * 1.6;
  const planBottom = planTop + Math.max(1, data.width * scale);
  const brim = planBottom + size * 2.6;
  const bottom = brim + wall * scale;
  const surface = bottom - data.depth * scale;
  const below = bottom + 26;
  const acrossText = text(data.length);
  const fits = right - left > textWidth(acrossText, size) + 44;
  // Where the wall above the liquid is too low for its own dimension the words below say it.
  const showsFreeboard = surface - brim > size * 1.4 && (bottom - brim) / 2 > size * 1.2;
  const wallWords = freeboard > 0 && !showsFreeboard ? `${wallSaid(freeboard, options)} ` : "";
  const foot = wrapped(wallWords + partSaid(data, options), size, whole - 4);
  const footTop = below + size * 0.6 + (fits ? 4 : size + 8) + size * 1.5;
  const height = footTop + foot.length * size * 1.4 - size * 0.8;

  const path = (points: readonly Point[], width: number, more: Readonly<Record<string, string | number>> = {}) =>
    svg(document, "path", { d: linePath(points), stroke: "var(--ink)", fill: "none", "stroke-width": width, ...more });
  const label = (x: number, y: number, anchor: string, words: string, fill = "var(--ink)") =>
    svg(document, "text", { x, y, "text-anchor": anchor, "font-size": size, fill }, [words]);
  const box = (top: number, low: number, part: string) =>
    svg(document, "rect", {
      x: left,
      y: top,
      width: right - left,
      height: low - top,
      fill: "var(--plate)",
      "data-part": part,
    });
  const clear = (top: number, low: number) => {
    const c = clearance * scale;
    if (c < 1.5 || right - left <= 2 * c || low - top <= 2 * c) return [];
    const [x0, x1, y0, y1] = [left + c, right - c, top + c, low - c];
    const round: readonly Point[] = [
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
      [x0, y0],
    ];
    return [path(round, 0.9, { stroke: "var(--faint)", "stroke-dasharray": "3 3", "data-part": "clearance" })];
  };
  const bar = (view: View) => {
    if (!data.part) return [];
    const place = ([x, y, z]: readonly [number, number, number]): Point =>
      view === "above" ? [left + x * scale, planBottom - y * scale] : [left + x * scale, bottom - z * scale];
    const faces = barFaces(data.part.corners, view).map((face) =>
      svg(document, "path", {
        d: `${linePath(face.map(place))}Z`,
        fill: "var(--strip)",
        stroke: "var(--ink)",
        "stroke-width": 1.1,
        "stroke-linejoin": "round",
      }),
    );
    return [svg(document, "g", { "data-part": "part", "data-view": view }, faces)];
  };
  const tick = (x: number, y: number, upright: boolean) =>
    path(
      upright
        ? [
            [x, y - 14],
            [x, y + 5],
          ]
        : [
            [x, y],
            [x + 16, y],
          ],
      0.9,
    );
  const upright = (from: number, to: number, metres: number) => [
    tick(right + 6, from, false),
    tick(right + 6, to, false),
    ...dimensionLine(document, [right + 16, from], [right + 16, to], 0),
    label(right + 26, (from + to) / 2 + size * 0.35, "start", text(metres)),
  ];
  const root = svg(
    document,
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      class: "figure",
      "data-figure": "tank plan",
      role: "img",
      "aria-label": tankPlanFinding(data, options),
      width: whole,
      height,
      viewBox: `0 0 ${whole} ${Math.round(height * 100) / 100}`,
      "font-family": '"National Park Variable", "National Park", sans-serif',
      fill: "var(--ink)",
    },
    [
      label(left, size * 0.95, "start", "From above", "var(--faint)"),
      box(planTop, planBottom, "plan"),
      ...clear(planTop, planBottom),
      ...bar("above"),
      path(
        [
          [left, planTop],
          [right, planTop],
          [right, planBottom],
          [left, planBottom],
          [left, planTop],
        ],
        2.4,
      ),
      ...upright(planTop, planBottom, data.width),
      label(left, brim - size * 0.6, "start", "From the side", "var(--faint)"),
      box(surface, bottom, "liquid"),
      path(
        [
          [left, surface],
          [right, surface],
        ],
        1,
      ),
      ...clear(surface, bottom),
      ...bar("side"),
      path(
        [
          [left, brim],
          [left, bottom],
          [right, bottom],
          [right, brim],
        ],
        2.4,
      ),
      ...upright(surface, bottom, data.depth),
      ...(showsFreeboard ? upright(brim, surface, freeboard) : []),
      tick(left, below, true),
      tick(right, below, true),
      ...dimensionLine(document, [left, below], [right, below], fits ? textWidth(acrossText, size) + 12 : 0),
      label(
        fits ? (left + right) / 2 : Math.max((left + right) / 2, left + textWidth(acrossText, size) / 2),
        fits ? below + size * 0.35 : below + size + 6,
        "middle",
        acrossText,
      ),
      ...foot.map((line, index) => label(left, footTop + index * size * 1.4, "start", line)),
    ],
  ) as SVGSVGElement;
  root.style.setProperty("font-feature-settings", '"tnum"');
  root.style.setProperty("display", "block");
  return root;
}
