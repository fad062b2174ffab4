import type { Given, Line, Worked } from "../../lib/lines/index.ts";
import { formatWithSpread, interval95, type Shown, siUnit, usualUnit } from "../../lib/measure/index.ts";
import type { Value } from "../../lib/measure/types.ts";

export type System = "US" | "metric";

/** The unit in which the page shows a line in this system. */
export function unitOf(line: Line, system: System): string {
  const { unit, metricUnit }: Given | Worked = line;
  return (system === "metric" ? (metricUnit ?? unit) : unit) ?? "";
}

/** The unit of a line's amount: its own, or the usual one of what it measures. */
export function unitOfAmount(line: Line, value: Value, system: System): string {
  return unitOf(line, system) || usualUnit(value.dimension, system);
}

/** Sides that differ by less than this share are shown as one ±, the wider of the two. */
const nearlyEqual = 0.35;

/** The value with one half-width for both sides, where they nearly agree: easier to read, never narrower. */
export function evened(value: Value): Value {
  const [low, high] = interval95(value);
  const [below, above] = [value.value - low, high - value.value];
  const wider = Math.max(below, above);
  return Math.min(below, above) > (1 - nearlyEqual) * wider
    ? { ...value, interval95: [value.value - wider, value.value + wider] }
    : value;
}

/** A number with its spread as the page writes it. Minutes are never rounded to tens: "50 of the 45 minutes" is none. */
export function written(value: Value, unit: string, system: System): Shown {
  const even = evened(value);
  const [low, high] = interval95(even);
  const wide = unit === "min" && Math.max(even.value - low, high - even.value) > 9 * 60;
  try {
    return formatWithSpread(even, unit, { system, ...(wide ? { decimals: 0 } : {}) });
  } catch {
    // A unit of something else, or none that a text can name: the number in SI is better than none.
    return formatWithSpread(even, siUnit(even.dimension), { system });
  }
}
