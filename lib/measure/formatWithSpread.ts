import { digits, roundedHalf } from "./digits.ts";
import { formatDuration } from "./formatDuration.ts";
import { clockUnit, type FormatOptions, formatQuantity, withUnit } from "./formatQuantity.ts";
import { inUnit, unitMeasuring } from "./inUnit.ts";
import { interval95, standardUncertainty } from "./standardUncertainty.ts";
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

interface Rounded {
  readonly up: number;
  readonly down: number;
  readonly decimals: number;
}

/** Both sides to the decimals that the narrower one deserves. */
function roundedSides(up: number, down: number, value: number): Rounded {
  const finite = [up, down].filter((side) => side > Math.abs(value) * 1e-12 && side < Number.POSITIVE_INFINITY);
  const { decimals } = finite.length === 0 ? { decimals: 2 } : roundedHalf(Math.min(...finite));
  const side = (half: number) => {
    if (!(half < Number.POSITIVE_INFINITY) || half <= Math.abs(value) * 1e-12)
      return half < Number.POSITIVE_INFINITY ? 0 : half;
    const steps = half * 10 ** decimals;
    const near = Math.round(steps);
    return (near >= 0.95 * steps ? near : Math.ceil(steps)) / 10 ** decimals;
  };
  return { up: side(up), down: side(down), decimals };
}

function clockShown(value: Value, options: FormatOptions): Shown {
  const [low, high] = interval95(value);
  const half = Math.max(high - value.value, value.value - low);
  const seconds = half < 60;
  const spread =
    half === 0
      ? "exactly"
      : `±${seconds ? `${digits(Math.ceil(half), 0, options.system)}${noBreak}s` : formatDuration(half)}`;
  const number = formatDuration(value.value);
  return {
    number,
    spread,
    unit: "",
    low: formatDuration(low),
    high: formatDuration(high),
    text: `${number} ${spread}`.replace(" ", noBreak),
  };
}

/**
 * A value with its 95 % half-width behind ±, rounded together: the half-width to one significant digit, two where the
 * first is a 1, and never shown more than a twentieth too narrow; the value to the same decimals. Unequal sides are
 * "+0.5/−1.5"; a value without doubt says "exactly".
 *
 * @param unit a unit of what the value measures, or "m:ss" for a time; liquid measures show the water of a mass
 * @throws TypeError for a unit of something else; RangeError for an unknown one or a value that is not finite.
 * @example
 * formatWithSpread(measuredValue(10.9, 0.1, { mass: 1 }, "scale"), "kg").text // "10.9 ±0.2 kg" (with no-break spaces)
 */
export function formatWithSpread(value: Value, unit: string | Unit, options: FormatOptions = {}): Shown {
  if (!Number.isFinite(value.value)) throw new RangeError(`invalid value: ${value.value}; a finite number expected`);
  if (unit === clockUnit) return clockShown(value, options);
  const { dimension } = value;
  const known = unitMeasuring(unit, dimension);
  const { symbol } = known;
  const number = inUnit(value.value, dimension, known);
  const [low, high] = interval95(value).map((end) => inUnit(end, dimension, known)) as [number, number];
  if (standardUncertainty(value) === 0 && low === high) {
    const text = formatQuantity(value.value, known, { ...options, dimension });
    const bare = text.replace(withUnit("", symbol), "");
    return { number: bare, spread: "exactly", unit: symbol, low: bare, high: bare, text: `${text}${noBreak}exactly` };
  }
  const { system } = options;
  const { up, down, decimals } = roundedSides(high - number, number - low, number);
  const side = (half: number) => (half < Number.POSITIVE_INFINITY ? digits(half, decimals, system) : "∞");
  const main = digits(number, decimals, system);
  const end = (at: number) => (Number.isFinite(at) ? digits(at, decimals, system) : at > 0 ? "∞" : "\u2212∞");
  const equal = side(up) === side(down);
  const spread = equal ? `±${side(up)}` : `+${side(up)}/\u2212${side(down)}`;
  const text = withUnit(`${main}${noBreak}${spread}`, symbol);
  const shown = { number: main, spread, unit: symbol, low: end(low), high: end(high), text };
  return equal ? shown : { ...shown, sides: { up: `+${side(up)}`, down: `\u2212${side(down)}` } };
}
