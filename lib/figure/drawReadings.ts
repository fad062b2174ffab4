import { svg } from "./svg.ts";
import { thin } from "./thin.ts";
import type { ReadingDrawn } from "./types.ts";

export interface Mapped {
  readonly x: (seconds: number) => number;
  readonly y: (kelvin: number) => number;
}

/** Readings that count, thinned to what the eye can tell apart, and how large a dot may be. */
export function shownReadings(
  readings: readonly ReadingDrawn[],
  { x, y }: Mapped,
): { readonly shown: readonly ReadingDrawn[]; readonly radius: number; readonly halo: number } {
  const counting = readings.filter((one) => !one.struck && !one.apart);
  const last = counting[counting.length - 1];
  const first = counting[0];
  const length = first && last ? Math.max(1, x(last.time) - x(first.time)) : 1;
  if (counting.length <= length / 5 + 20) return { shown: counting, radius: 3.3, halo: 1.6 };
  const shown = thin(
    counting,
    (one) => x(one.time),
    (one) => y(one.temperature),
    3,
  );
  return { shown, radius: 1.5, halo: 0 };
}

/** Readings that do not count: struck out first by time, thinned like the rest. */
export function setApart(readings: readonly ReadingDrawn[], { x, y }: Mapped): readonly ReadingDrawn[] {
  return thin(
    readings.filter((one) => one.struck || one.apart),
    (one) => x(one.time),
    (one) => y(one.temperature),
    6,
  );
}

/**
 * A ring at the reading's true value; one stroke through it when it was struck out.
 * @example group.append(drawSetApart(document, reading, frame))
 */
export function drawSetApart(document: Document, reading: ReadingDrawn, { x, y }: Mapped): SVGElement {
  const cx = x(reading.time);
  const cy = y(reading.temperature);
  const ring = svg(document, "circle", {
    cx,
    cy,
    r: 4.5,
    fill: "none",
    stroke: "var(--ink)",
    "stroke-width": 1.2,
  });
  const stroke = svg(document, "line", {
    x1: cx - 7,
    y1: cy + 7,
    x2: cx + 7,
    y2: cy - 7,
    stroke: "var(--ink)",
    "stroke-width": 1.6,
  });
  return svg(
    document,
    "g",
    { "data-reading": reading.id, "data-state": reading.struck ? "struck out" : "apart" },
    reading.struck ? [ring, stroke] : [ring],
  );
}
