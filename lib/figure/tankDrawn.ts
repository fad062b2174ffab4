import { fractionDigits } from "../measure/fractionDigits.ts";
import { dimensionLine } from "./dimensionLine.ts";
import { figureUnits } from "./figureUnits.ts";
import { assertFinite, assertWidth } from "./finite.ts";
import { linePath, svg } from "./svg.ts";
import { textWidth } from "./textWidth.ts";
import type { FigureOptions, TankDrawnData } from "./types.ts";
import { decimal } from "./words.ts";

/**
 * A length in m as a maker says it, to the eighth of an inch where that is what was meant.
 * @example lengthText(0.1397, "US") // "5½ in"
 */
export function lengthText(metres: number, system: "US" | "metric"): string {
  const { length } = figureUnits(system);
  const value = length.fromSI(metres);
  const isEighth = Math.abs(value * 8 - Math.round(value * 8)) < 0.08;
  const figures = system === "US" && isEighth ? fractionDigits(value, 8) : decimal(value, 1, system);
  return `${figures} ${length.name}`;
}

/**
 * What the drawing of a tank shows, in a sentence.
 * @example tankDrawnFinding({ length: 0.3048, width: 0.1524, depth: 0.2032 }, { system: "US" }) // "Tank 12 in long, 6 in…"
 */
export function tankDrawnFinding(data: TankDrawnData, options: Pick<FigureOptions, "system">): string {
  const text = (metres: number) => lengthText(metres, options.system);
  const level = data.level === undefined ? "" : `; filled ${text(data.level)} deep`;
  return `Tank ${text(data.length)} long, ${text(data.width)} wide, ${text(data.depth)} deep inside${level}`;
}

/**
 * A tank from the side, to scale, with arrowed dimension lines for its length and for the depth of the liquid (or of
 * the tank, where no level is known). Inside measures in m, above 0; `scaleLength` (m) is what the drawing's width
 * stands for, so that tanks under each other compare. Throws a RangeError for other measures and widths.
 * @example tankDrawn({ length: 0.61, width: 0.15, depth: 0.2, level: 0.14 }, { document, width: 360, system: "US" });
 */
export function tankDrawn(data: TankDrawnData, options: FigureOptions): SVGSVGElement {
  assertWidth(options.width);
  assertFinite(data, "tank");
  const smallest = Math.min(data.length, data.width, data.depth);
  if (!(smallest > 0)) throw new RangeError(`invalid tank: ${smallest} m; length, width and depth above 0`);
  const { document, width: whole } = options;
  const size = options.narrow ? 13 : 14;
  const text = (metres: number) => lengthText(metres, options.system);
  const measured = Math.min(data.level ?? data.depth, data.depth);
  const side = textWidth(text(measured), size) + 34;
  // A tank taller than long would grow past any row: it is held to 160 px of height, still to scale.
  const perMetre = Math.min((whole - side - 4) / Math.max(data.scaleLength ?? 0, data.length), 160 / data.depth);
  const [left, top] = [2, 4];
  const right = left + data.length * perMetre;
  const bottom = top + data.depth * perMetre;
  const surface = bottom - Math.max(0, measured) * perMetre;
  const below = bottom + 26;
  const ink = { stroke: "var(--ink)", fill: "none" };
  const path = (points: readonly (readonly [number, number])[], width: number) =>
    svg(document, "path", { d: linePath(points), ...ink, "stroke-width": width });
  const filled =
    data.level === undefined
      ? []
      : [
          svg(document, "rect", {
            x: left,
            y: surface,
            width: right - left,
            height: bottom - surface,
            fill: "var(--plate)",
            "data-part": "liquid",
          }),
          path(
            [
              [left, surface],
              [right, surface],
            ],
            1,
          ),
        ];
  const acrossText = text(data.length);
  const fits = right - left > textWidth(acrossText, size) + 44;
  const wide = `${text(data.width)} wide`;
  const height = below + size * 0.6 + (fits ? 4 : size + 8) + size * 1.5;
  const label = (x: number, y: number, anchor: string, words: string, fill = "var(--ink)") =>
    svg(document, "text", { x, y, "text-anchor": anchor, "font-size": size, fill }, [words]);
  const root = svg(
    document,
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      class: "figure",
      "data-figure": "tank",
      role: "img",
      "aria-label": tankDrawnFinding(data, options),
      width: whole,
      height,
      viewBox: `0 0 ${whole} ${Math.round(height * 100) / 100}`,
      "font-family": '"National Park Variable", "National Park", sans-serif',
      fill: "var(--ink)",
    },
    [
      ...filled,
      path(
        [
          [left, top],
          [left, bottom],
          [right, bottom],
          [right, top],
        ],
        2.4,
      ),
      path(
        [
          [left, bottom + 6],
          [left, below + 5],
        ],
        0.9,
      ),
      path(
        [
          [right, bottom + 6],
          [right, below + 5],
        ],
        0.9,
      ),
      ...dimensionLine(document, [left, below], [right, below], fits ? textWidth(acrossText, size) + 12 : 0),
      label(
        fits ? (left + right) / 2 : Math.max((left + right) / 2, left + textWidth(acrossText, size) / 2),
        fits ? below + size * 0.35 : below + size + 6,
        "middle",
        acrossText,
      ),
      path(
        [
          [right + 6, surface],
          [right + 22, surface],
        ],
        0.9,
      ),
      path(
        [
          [right + 6, bottom],
          [right + 22, bottom],
        ],
        0.9,
      ),
      ...dimensionLine(document, [right + 16, surface], [right + 16, bottom], 0),
      label(right + 26, Math.max((surface + bottom) / 2 + size * 0.35, size), "start", text(measured)),
      label(left, height - 4, "start", wide, options.narrow ? "var(--ink)" : "var(--faint)"),
    ],
  ) as SVGSVGElement;
  root.style.setProperty("font-feature-settings", '"tnum"');
  root.style.setProperty("display", "block");
  return root;
}
