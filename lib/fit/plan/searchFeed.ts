import { goldenSection } from "./goldenSection.ts";
import type { HoldDraw } from "./holdDraws.ts";
import { type Planning, scheduleOf, tried } from "./planning.ts";
import type { HoldSchedule } from "./simulateHold.ts";

/** Times the boil-off, and K about the start by lateness alone: where the search looks. */
const leastFeed = 0.9;
const mostFeed = 1.12;
const around = 0.5;

/** K/s by which the boiling point climbs unfed. */
export function driftOf({ bath, dip }: Planning): number {
  const slope = bath.k / bath.water;
  return (slope * bath.heat) / (bath.evaporation + (bath.capacity + dip.capacity) * slope);
}

/** K over the target to start at so that mean lateness, at the start and with the feed, ends on the target. */
export function earlyStart(plan: Planning): number {
  const late = plan.errors.late * Math.sqrt(2 / Math.PI);
  return -driftOf(plan) * 1.5 * late;
}

/**
 * The schedule that holds most holds, nobody correcting: the reading to start at, then the feed's rate, by golden
 * section over the same draws; nothing else was found worth moving.
 *
 * @param plan what is planned
 * @param draws what goes otherwise
 * @param stop asked between tries
 * @example searchFeed(plan, draws).rate // 0.00213 kg/s
 */
export function searchFeed(plan: Planning, draws: readonly HoldDraw[], stop?: () => boolean): HoldSchedule {
  const early = earlyStart(plan);
  let stopped = false;
  const score = (factor: number, start: number): number => {
    stopped ||= stop?.() ?? false;
    return stopped ? Number.NEGATIVE_INFINITY : tried(plan, scheduleOf(plan, factor, start), draws).score;
  };
  const wide = Math.max(around, 0.3 * plan.bath.band);
  const start = goldenSection((x) => score(1, x), early - wide, early + wide, 6);
  if (stopped) return scheduleOf(plan, 1, early);
  const factor = goldenSection((x) => score(x, start), leastFeed, mostFeed, 7);
  return stopped ? scheduleOf(plan, 1, start) : scheduleOf(plan, factor, start);
}
