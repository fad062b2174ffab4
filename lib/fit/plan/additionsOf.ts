import type { HoldSchedule } from "./simulateHold.ts";
import type { Addition, SlugLimit } from "./types.ts";

/**
 * What a schedule puts in: one steady feed, or pours in the middle of each stretch of time, each let in so slowly that
 * the fire's heat keeps up with it.
 *
 * @param does the schedule
 * @param limit of one pour
 * @example additionsOf(schedule, limit)[0] // { t: 0, water: 3.8, duration: 1800 }
 */
export function additionsOf(does: HoldSchedule, limit: SlugLimit): readonly Addition[] {
  const { hold, from, rate, slug, every } = does;
  if (from >= hold) return [];
  if (slug === 0) return [{ t: from, water: rate * (hold - from), duration: hold - from }];
  const count = Math.floor((hold - from) / every + 0.5);
  return Array.from({ length: count }, (_, i) => ({
    t: from + (i + 0.5) * every,
    water: slug,
    duration: (limit.over * slug) / limit.mass,
  })).filter(({ t }) => t < hold);
}
