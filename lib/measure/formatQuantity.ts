import { formatDuration } from "./formatDuration.ts";
import { inUnit } from "./inUnit.ts";
import { plainDigits } from "./plainDigits.ts";
import type { Dimension, Unit, UnitSystem } from "./types.ts";
import { unit as unitOf } from "./unit.ts";

export interface FormatOptions {
  /** How thousands are divided; "US" if absent. */
  readonly system?: UnitSystem;
  /** What the number measures; if absent, what the unit measures by itself (°F: a temperature on the scale). */
  readonly dimension?: Dimension;
  /** Significant digits, 4 if absent; digits before the decimal point always stay. */
  readonly digits?: number;
  /** Decimals, in place of `digits`; trailing zeros then stay. */
  readonly decimals?: number;
  /** Fractions to the nearest 1/2, 1/4 … 1/64 in place of decimals. */
  readonly fractions?: number;
}

/** The unit that shows a time as "12:05". */
export const clockUnit = "m:ss";

const noBreak = "\u00a0";

/**
 * Number and unit side by side, as everywhere on the page: "24 lb", "$18.50", "12:05". The space does not break.
 *
 * @example
 * withUnit("4.50", "$/lb") // "$4.50/lb"
 */
export function withUnit(number: string, symbol: string): string {
  if (symbol === "") return number;
  if (symbol.startsWith("$"))
    return number.startsWith("\u2212") ? `\u2212$${number.slice(1)}${symbol.slice(1)}` : `$${number}${symbol.slice(1)}`;
  return `${number}${noBreak}${symbol.replaceAll(" ", noBreak)}`;
}

/**
 * An SI number in a unit, as text, without its doubt.
 *
 * @param value SI; finite
 * @param unit a unit, or "m:ss" for a time; a liquid measure shows the water of a mass, if `dimension` says mass
 * @throws RangeError for a number that is not finite or an unknown unit; TypeError for a unit of something else.
 * @example
 * formatQuantity(0.45359237, "oz") // "16 oz" (with a no-break space)
 */
export function formatQuantity(value: number, unit: string | Unit, options: FormatOptions = {}): string {
  if (!Number.isFinite(value)) throw new RangeError(`invalid number: ${value}; a finite number expected`);
  if (unit === clockUnit) return formatDuration(value);
  const known =
    typeof unit === "string"
      ? unitOf(unit, options.dimension && !options.dimension.point ? "number" : "temperature")
      : unit;
  const number = inUnit(value, options.dimension ?? known.dimension, known);
  return withUnit(plainDigits(number, known.symbol, options), known.symbol);
}
