import type { Pour } from "./logFacts.ts";
import { stepResponse, stepResponseRate } from "./stepResponse.ts";

/** How much of a pour a reading shows, 0..1, and how that hangs on when it was made and how slowly it shows. */
export interface PourShown {
  readonly share: number;
  /** Per second since the pour. */
  readonly rate: number;
  /** By the ln of the time constants of mixing and thermometer. */
  readonly byMixing: number;
  readonly byLag: number;
}

const nothing: PourShown = { share: 0, rate: 0, byMixing: 0, byLag: 0 };
const all: PourShown = { share: 1, rate: 0, byMixing: 0, byLag: 0 };
/** By what factor the time constants are moved to see what hangs on them. */
const moved = 1.01;
const lnMoved = Math.log(moved);
/** In time constants: what is left then is less than a double can tell from nothing. */
const settled = 45;

/** s since the pour as a thermometer counts them: a reading on a pour's own row was taken before it, or half a minute after it if it stands behind. */
function since(pour: Pour, after: number, order: number, shift: number): number {
  if (Math.abs(after) < 1e-6) return order < pour.order ? 0 : 30;
  return after - shift;
}

/** Of a drip, its five fifths. */
function drip(pour: Pour, after: number, mixing: number, lag: number): number {
  let sum = 0;
  for (const part of [0.1, 0.3, 0.5, 0.7, 0.9]) sum += stepResponse(after - part * pour.duration, mixing, lag) / 5;
  return sum;
}

/**
 * How much of a pour is in the bath (asked with order Infinity), or shows in a reading.
 *
 * @param pour it
 * @param time s
 * @param order place of the reading in the log; Infinity for the bath itself, which no thermometer delays
 * @param shift s by which the pour was later than written
 * @param mixing s
 * @param lag s
 * @returns share of the pour, 0..1
 * @example shareShown({ id: "", time: 0, mass: 1, duration: 0, order: 0 }, 35, 1, 0, 20, 15) // 0.5958
 */
export function shareShown(
  pour: Pour,
  time: number,
  order: number,
  shift: number,
  mixing: number,
  lag: number,
): number {
  const after = time - pour.time;
  if (!Number.isFinite(order)) return after < -1e-6 ? 0 : pour.duration > 0 ? Math.min(1, after / pour.duration) : 1;
  if (pour.duration > 0) return drip(pour, after, mixing, lag);
  return stepResponse(since(pour, after, order, shift), mixing, lag);
}

/**
 * The same, with what it hangs on.
 *
 * @param pour it
 * @param time s
 * @param order as for `shareShown`
 * @param shift s
 * @param mixing s
 * @param lag s
 * @example pourShown({ id: "", time: 0, mass: 1, duration: 0, order: 0 }, 35, 1, 0, 20, 15).rate // 0.01536
 */
export function pourShown(
  pour: Pour,
  time: number,
  order: number,
  shift: number,
  mixing: number,
  lag: number,
): PourShown {
  const after = time - pour.time;
  if (!Number.isFinite(order)) {
    if (after < -1e-6) return nothing;
    return pour.duration > 0 ? { ...nothing, share: Math.min(1, after / pour.duration) } : all;
  }
  if (pour.duration > 0) {
    if (after <= 0) return nothing;
    const share = drip(pour, after, mixing, lag);
    return {
      share,
      rate: 0,
      byMixing: (drip(pour, after, mixing * moved, lag) - share) / lnMoved,
      byLag: (drip(pour, after, mixing, lag * moved) - share) / lnMoved,
    };
  }
  const seconds = since(pour, after, order, shift);
  if (!(seconds > 0)) return nothing;
  if (seconds > settled * moved * Math.max(mixing, lag)) return all;
  const share = stepResponse(seconds, mixing, lag);
  // On one row with the pour its written time says nothing more.
  const rate = Math.abs(after) < 1e-6 && order <= pour.order ? 0 : stepResponseRate(seconds, mixing, lag);
  return {
    share,
    rate,
    byMixing: (stepResponse(seconds, mixing * moved, lag) - share) / lnMoved,
    byLag: (stepResponse(seconds, mixing, lag * moved) - share) / lnMoved,
  };
}
