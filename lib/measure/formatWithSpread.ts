import { clockWithSpread } from "./clockWithSpread.ts";
import { digits } from "./digits.ts";
import { clockUnit, type FormatOptions, withUnit } from "./formatQuantity.ts";
import { fractionDigits } from "./fractionDigits.ts";
import { inUnit, unitMeasuring } from "./inUnit.ts";
import { plainDigits } from "./plainDigits.ts";
import { roundedHalf, roundHalf } from "./roundedHalf.ts";
import { interval95 } from "./standardUncertainty.ts";
import type { Unit, Value } from "./types.ts";

export interface Shown {
  /** The value, rounded as its spread deserves: "4.6". */
  readonly number: string;
  /** "±0.3", "+0.5/−1.5", or "exactly". */
  readonly spread: string;
  /** The two sides where they differ, to be stacked: "+0.5" above "−1.5". */
  readonly sides?: { readonly up: string; readonly down: string };
  readonly unit: string;
  /** Ends of the 95 % interval, rounded alike. */
  readonly low: string;
  readonly high: string;
  /** All in one line, with no-break spaces: "4.6 ±0.3 fl oz". */
  readonly text: string;
}

const noBreak = "\u00a0";
const minus = "\u2212";

/** How the value, its ends and its two sides are written: fractions, or the decimals that the narrower side deserves. */
function hand(
  up: number,
  down: number,
  options: FormatOptions,
): { at: (end: number) => string; side: (half: number) => string } {
  const { fractions, system } = options;
  const endless = (number: number) => (number > 0 ? "∞" : `${minus}∞`);
  if (fractions !== undefined) {
    const parts = (half: number) => Math.ceil(half * fractions - 0.05) / fractions;
    const shown = (number: number) => (Number.isFinite(number) ? fractionDigits(number, fractions) : endless(number));
    return { at: shown, side: (half) => shown(parts(half)) };
  }
  const deserving = [up, down].filter((half) => half > 0 && half < Number.POSITIVE_INFINITY);
  const decimals = options.decimals ?? (deserving.length === 0 ? 2 : roundedHalf(Math.min(...deserving)).decimals);
  const shown = (number: number) => (Number.isFinite(number) ? digits(number, decimals, system) : endless(number));
  return { at: shown, side: (half) => shown(roundHalf(half, decimals)) };
}

/**
 * A value with its 95 % half-width behind ±, rounded together: the half-width to one significant digit, two where the
 * first is a 1, and never shown more than a twentieth too narrow; the value to the same decimals. Unequal sides are
 * "+0.5/−1.5"; a value without doubt says "exactly".
 *
 * @param unit a unit of what the value measures, or "m:ss" for a time; liquid measures show the water of a mass
 * @param options with `fractions` or `decimals` both numbers are written so instead
 * @throws TypeError for a unit of something else; RangeError for an unknown one or a value that is not finite.
 * @example
 * formatWithSpread(measuredValue(10.9, 0.1, { mass: 1 }, "scale"), "kg").text // "10.9 ±0.2 kg"
 */
export function formatWithSpread(value: Value, unit: string | Unit, options: FormatOptions = {}): Shown {
  if (!Number.isFinite(value.value)) throw new RangeError(`invalid value: ${value.value}; a finite number expected`);
  if (unit === clockUnit) return clockWithSpread(value, options);
  const { dimension } = value;
  const known = unitMeasuring(unit, dimension);
  const { symbol } = known;
  const [bottom, top] = interval95(value);
  const number = inUnit(value.value, dimension, known);
  // What rounding leaves of a doubt that has cancelled is no doubt.
  if (top - bottom <= 1e-10 * Math.abs(value.value)) {
    const bare = plainDigits(number, symbol, options);
    return {
      number: bare,
      spread: "exactly",
      unit: symbol,
      low: bare,
      high: bare,
      text: `${withUnit(bare, symbol)}${noBreak}exactly`,
    };
  }
  const up = (top - value.value) / known.factor;
  const down = (value.value - bottom) / known.factor;
  const { at, side } = hand(up, down, options);
  const ends = { low: at(inUnit(bottom, dimension, known)), high: at(inUnit(top, dimension, known)) };
  const equal = side(up) === side(down);
  const spread = equal ? `±${side(up)}` : `+${side(up)}/${minus}${side(down)}`;
  const shown = {
    number: at(number),
    spread,
    unit: symbol,
    ...ends,
    text: withUnit(`${at(number)}${noBreak}${spread}`, symbol),
  };
  return equal ? shown : { ...shown, sides: { up: `+${side(up)}`, down: `${minus}${side(down)}` } };
}
