import { digits } from "./digits.ts";
import { type FormatOptions, withUnit } from "./formatQuantity.ts";
import { inUnit, unitMeasuring } from "./inUnit.ts";
import { roundedHalf } from "./roundedHalf.ts";
import { interval95 } from "./standardUncertainty.ts";
import type { Unit, Value } from "./types.ts";

/**
 * A number whose error can hurt, as a limit: the safe end of its 95 % interval, rounded to the safe side, without ±.
 * "at most" takes the low end and rounds down, "at least" the high end and rounds up.
 *
 * @param safe which way is safe
 * @throws TypeError for a unit of something else; RangeError for an unknown one or an end that is not finite.
 * @example
 * formatLimit(measuredValue(10.9, 0.1, { mass: 1 }, "scale"), "kg", "at most") // "10.7 kg"
 */
export function formatLimit(
  value: Value,
  unit: string | Unit,
  safe: "at most" | "at least",
  options: FormatOptions = {},
): string {
  const known = unitMeasuring(unit, value.dimension);
  const ends = interval95(value);
  const number = inUnit(ends[safe === "at most" ? 0 : 1], value.dimension, known);
  if (!Number.isFinite(number)) throw new RangeError(`invalid limit: ${number}; a finite 95 % interval expected`);
  const half = (ends[1] - ends[0]) / 2 / known.factor;
  const decimals = options.decimals ?? (half > 0 ? roundedHalf(half).decimals : 2);
  const step = 10 ** -decimals;
  // The nudge keeps 0.3 at 0.3, which is 2.9999999999999996 steps of a tenth.
  const steps = safe === "at most" ? Math.floor(number / step + 1e-9) : Math.ceil(number / step - 1e-9);
  return withUnit(digits(steps * step, decimals, options.system), known.symbol);
}
