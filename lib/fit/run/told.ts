import type { Told } from "./types.ts";

/**
 * How far a log drew a parameter from its prior.
 *
 * @param u standard uncertainty with the log
 * @param before standard uncertainty without it, the same unit
 * @returns 1 - u²/before², 0..1, and the word for it: nothing below 0.1, much from 0.7
 * @example told(1, 2).share // 0.75
 */
export function told(u: number, before: number): Told {
  const share = before > 0 ? Math.min(1, Math.max(0, 1 - (u / before) ** 2)) : 0;
  return { share, word: share < 0.1 ? "nothing" : share < 0.7 ? "some" : "much" };
}
