// Of this file, not of at.ts: only so do all engines work it in where a fit spends its time.
const at = (list: Float64Array, i: number): number => list[i] as number;

/** What is left of things that fade, e-fold in `tau`. */
export interface Decays {
  /** exp(-|time| / tau) of each time. */
  readonly left: Float64Array;
  /** exp(-|difference| / tau) of two of the times, by their numbers. */
  readonly between: (i: number, j: number) => number;
}

/**
 * What is left of something that fades, at some times and from each of them to the next: one exponential a time.
 *
 * @param times s
 * @param tau s
 * @example decays(Float64Array.of(0, 60, 120), 60).between(1, 2) // 0.3679
 */
export function decays(times: Float64Array, tau: number): Decays {
  const left = times.map((time) => Math.exp(-Math.abs(time) / tau));
  const from = times.reduce((least, time) => Math.min(least, time), Infinity);
  const to = times.reduce((most, time) => Math.max(most, time), -Infinity);
  // Quotients hold only while no exponential has vanished.
  if (!((to - from) / tau < 600))
    return { left, between: (i, j) => Math.exp(-Math.abs(at(times, i) - at(times, j)) / tau) };
  const fallen = times.map((time) => Math.exp((from - time) / tau));
  return {
    left,
    between: (i, j) => {
      const a = at(fallen, i);
      const b = at(fallen, j);
      return a < b ? a / b : b / a;
    },
  };
}
