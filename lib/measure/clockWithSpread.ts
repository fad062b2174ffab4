import { digits } from "./digits.ts";
import { formatDuration } from "./formatDuration.ts";
import type { FormatOptions } from "./formatQuantity.ts";
import type { Shown } from "./formatWithSpread.ts";
import { roundedHalf } from "./roundedHalf.ts";
import { interval95 } from "./standardUncertainty.ts";
import type { Value } from "./types.ts";

const noBreak = "\u00a0";

function spreadOf(half: number, options: FormatOptions): string {
  if (half === Number.POSITIVE_INFINITY) return "±∞";
  if (half >= 60) return `±${formatDuration(half)}`;
  return `±${digits(Math.max(1, roundedHalf(half).shown), 0, options.system)}${noBreak}s`;
}

/**
 * A time as "12:30 ±15 s", the wider side of its 95 % interval behind ±.
 *
 * @param value s
 * @example
 * clockWithSpread(measuredValue(750, 7.5, { time: 1 }, "clock"), {}).text // "12:30 ±15 s"
 */
export function clockWithSpread(value: Value, options: FormatOptions): Shown {
  const [low, high] = interval95(value);
  const number = formatDuration(value.value);
  const spread = low === high ? "exactly" : spreadOf(Math.max(high - value.value, value.value - low), options);
  const end = (at: number) => (Number.isFinite(at) ? formatDuration(at) : at > 0 ? "∞" : "\u2212∞");
  return { number, spread, unit: "", low: end(low), high: end(high), text: `${number}${noBreak}${spread}` };
}
