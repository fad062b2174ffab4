import { type EdgeUnit, figureUnits } from "./figureUnits.ts";
import { svg } from "./svg.ts";
import { textWidth } from "./textWidth.ts";
import type { Target } from "./types.ts";
import { decimal } from "./words.ts";

export interface Plate {
  readonly document: Document;
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  /** Where the limits' figures end (start at a rule on the right); the strip's edges are broken round them. */
  readonly figures: { readonly x: number; readonly anchor: "start" | "end" };
  readonly size: number;
  readonly unit: EdgeUnit;
  readonly y: (kelvin: number) => number;
  readonly target?: Target;
}

/** Temperature in the unit shown, with one decimal only where the limit has one. */
export function limitText(kelvin: number, unit: EdgeUnit = figureUnits("US").temperature): string {
  return decimal(Number(unit.fromSI(kelvin).toFixed(1)), 1);
}

/** Where the two limits' figures stand: pushed apart where the band is thinner than a line of text. */
export function limitPlaces(
  plate: Plate,
): readonly { readonly at: number; readonly text: string; readonly edge: number }[] {
  if (!plate.target) return [];
  const high = plate.y(plate.target.high);
  const low = plate.y(plate.target.low);
  const push = Math.max(0, plate.size * 1.05 - (low - high)) / 2;
  return [
    { at: high - push, edge: high, text: limitText(plate.target.high, plate.unit) },
    { at: low + push, edge: low, text: limitText(plate.target.low, plate.unit) },
  ];
}

/**
 * The darker plate with the bright strip on it, edge to edge, its two edges scribed and broken round the limits.
 * @example group.append(drawPlate(plate))
 */
export function drawPlate(plate: Plate): SVGElement {
  const { document, width, top, bottom, target } = plate;
  const group = svg(document, "g", { "data-part": "plate" }, [
    svg(document, "rect", { x: 0, y: top, width, height: bottom - top, fill: "var(--plate)" }),
  ]);
  if (!target) return group;
  const high = plate.y(target.high);
  const low = plate.y(target.low);
  group.appendChild(
    svg(document, "rect", { x: 0, y: high, width, height: low - high, fill: "var(--strip)", "data-part": "strip" }),
  );
  for (const limit of limitPlaces(plate)) {
    const { x, anchor } = plate.figures;
    const length = textWidth(limit.text, plate.size, 600);
    const [start, end] = anchor === "end" ? [x - length, x] : [x, x + length];
    const edge = (x1: number, x2: number) =>
      svg(document, "line", { x1, x2, y1: limit.edge, y2: limit.edge, stroke: "var(--ink)", "stroke-width": 1 });
    group.append(
      edge(0, Math.max(0, start - 4)),
      edge(end + 4, width),
      svg(
        document,
        "text",
        {
          x,
          y: limit.at + plate.size * 0.35,
          "text-anchor": anchor,
          "font-size": plate.size,
          "font-weight": 600,
          fill: "var(--ink)",
          "data-limit": limit.text,
        },
        [limit.text],
      ),
    );
  }
  return group;
}
