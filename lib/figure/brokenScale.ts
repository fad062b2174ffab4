import { max, min, quantile } from "d3";

/** One stretch of an upright rule that keeps one scale: limits of the value, and the px where they lie. */
export interface ScaleStretch {
  readonly low: number;
  readonly high: number;
  readonly lowAt: number;
  readonly highAt: number;
}

/** A rule that may be squeezed below or above, so that a far value stays on it and the hold stays legible. */
export interface BrokenScale {
  readonly stretches: readonly ScaleStretch[];
  /** px where the rule changes its scale. */
  readonly breaks: readonly number[];
}

const squeezedShare = 0.17;

/**
 * An upright rule for `values`, with the greater part of its height for `core`. As long as everything fits in
 * twice the core's span to a side the rule has one scale; beyond that the far part is squeezed into a foot or a
 * head, never cut off. Values in any one unit; `bottom` > `top` in px; `least` is the smallest span of the core.
 * @example brokenScale([287, 295], [70, 280, 297], { top: 20, bottom: 380, least: 8 }).breaks.length // 1
 */
export function brokenScale(
  core: readonly number[],
  values: readonly number[],
  room: { readonly top: number; readonly bottom: number; readonly least: number },
): BrokenScale {
  const wanted = core.length > 0 ? core : middleOf(values);
  let low = min(wanted) ?? 0;
  let high = max(wanted) ?? 1;
  const lack = Math.max(0, room.least - (high - low)) / 2;
  low -= lack;
  high += lack;
  const span = high - low;
  const lowest = Math.min(low, min(values) ?? low);
  const highest = Math.max(high, max(values) ?? high);
  const footed = low - lowest > 2 * span;
  const headed = highest - high > 2 * span;
  if (!footed) low = lowest;
  if (!headed) high = highest;
  const pad = (high - low) * 0.06;
  low -= footed ? span * 0.12 : pad;
  high += headed ? span * 0.12 : pad;
  const height = room.bottom - room.top;
  const footAt = footed ? room.bottom - height * squeezedShare : room.bottom;
  const headAt = headed ? room.top + height * squeezedShare : room.top;
  const stretches: ScaleStretch[] = [];
  if (footed) {
    const foot = low - (low - lowest) * 1.06;
    stretches.push({ low: foot, high: low, lowAt: room.bottom, highAt: footAt });
  }
  stretches.push({ low, high, lowAt: footAt, highAt: headAt });
  if (headed) {
    const head = high + (highest - high) * 1.06;
    stretches.push({ low: high, high: head, lowAt: headAt, highAt: room.top });
  }
  return { stretches, breaks: [...(footed ? [footAt] : []), ...(headed ? [headAt] : [])] };
}

/** Domain and range of the whole rule, as d3 and Plot take them. */
export function scaleKnots(scale: BrokenScale): { readonly domain: number[]; readonly range: number[] } {
  const first = scale.stretches[0];
  if (!first) return { domain: [0, 1], range: [1, 0] };
  return {
    domain: [first.low, ...scale.stretches.map((one) => one.high)],
    range: [first.lowAt, ...scale.stretches.map((one) => one.highAt)],
  };
}

// Without a target the middle of the readings is what the picture is about: Tukey's far fences leave out the rest.
function middleOf(values: readonly number[]): readonly number[] {
  const lower = quantile(values, 0.25);
  const upper = quantile(values, 0.75);
  if (lower === undefined || upper === undefined) return [];
  const reach = 3 * (upper - lower);
  return values.filter((value) => value >= lower - reach && value <= upper + reach);
}
