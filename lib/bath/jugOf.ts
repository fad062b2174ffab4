import type { LogFacts } from "./logFacts.ts";

/** kg that the jug lost, its doubt, and from when to when, s. */
export interface Jug {
  readonly value: number;
  readonly u: number;
  readonly from: number;
  readonly to: number;
}

/** What the feed jug lost between its first and last level; a rise in between is a refill and counts for nothing. */
export function jugOf(facts: LogFacts): Jug | undefined {
  const { levels } = facts;
  const first = levels[0];
  const last = levels[levels.length - 1];
  if (!first || !last || levels.length < 2 || last.time <= first.time) return undefined;
  let value = 0;
  let variance = 0;
  for (let i = 1; i < levels.length; i++) {
    const fall = (levels[i - 1]?.mass ?? 0) - (levels[i]?.mass ?? 0);
    if (fall > 0) value += fall;
  }
  for (const level of levels) variance += Math.max(level.u, 0.005 * Math.abs(level.mass)) ** 2;
  return { value, u: Math.max(0.02, Math.sqrt(variance)), from: first.time, to: last.time };
}
