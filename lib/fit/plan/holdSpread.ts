import { drawsOf, planning, scheduleOf } from "./planning.ts";
import { type Correcting, type HoldSchedule, nothingHeld, simulateHold } from "./simulateHold.ts";
import type { FeedPlan, PlanGivens, PlanOptions } from "./types.ts";

/** Where the bath's true temperature lies at one moment of many simulated holds. K, s from parts in. */
export interface HoldMoment {
  readonly time: number;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** 95 % of simulated holds, moment by moment. */
export interface HoldSpread {
  readonly nobody: readonly HoldMoment[];
  /** From the first reading that is acted on. */
  readonly corrected: readonly HoldMoment[];
  readonly holds: number;
}

const look = 30;
/** s, the longest hold that is planned. */
const longest = 6 * 3600;
const stream = 5;

/**
 * How the true temperature of the bath goes in simulated holds that follow a plan: the middle, and where 95 of 100 lie;
 * every 30 s with nobody correcting, at each reading with the table followed.
 *
 * @param givens those of the plan
 * @param plan what `planFeed` found
 * @param options those of the plan; 300 draws where absent
 * @returns K and s
 * @throws RangeError as `planFeed`
 * Source: our own simulation, as `planFeed`.
 * @example
 * const setup = { tank: { length: 0.965, width: 0.203, depth: 0.2 }, burner: { power: 17_600, efficiency: 0.4 } };
 * const bath = { water: 6.2, salts: { sodiumHydroxide: 5.3, sodiumNitrate: 2.65 }, temperature: "boiling" };
 * const givens = { setup, bath, target: 417.6, band: 1.1, hold: 1200, pressure: 101_325, pours: "steady" };
 * const { nobody } = holdSpread(givens, planFeed(givens, { draws: 100 }), { draws: 100 });
 * nobody.every(({ low, middle, high }) => low <= middle && middle <= high); // true
 */
export function holdSpread(givens: PlanGivens, plan: FeedPlan, options: PlanOptions = {}): HoldSpread {
  const { draws = 300 } = options;
  // One reading longer than the hold, so that its end is seen.
  const longer = (by: number): PlanGivens => ({ ...givens, hold: Math.min(longest, givens.hold + by) });
  const often = planning(longer(look), { ...options, readEvery: look });
  const table = planning(longer(plan.table.readEvery), options);
  const schedule = (of: typeof table): HoldSchedule => ({
    ...scheduleOf(of, 1, plan.startReading - givens.target),
    rate: plan.feed,
    every: of.slug > 0 ? of.slug / plan.feed : 0,
  });
  const upTo = (moments: readonly HoldMoment[]) => moments.filter(({ time }) => time <= givens.hold);
  const nothing = correcting(plan, look, 0, () => 0);
  const does = correcting(plan, plan.table.readEvery, plan.table.ignoreUntil, (water) => water);
  return {
    nobody: upTo(momentsOf(often, schedule(often), nothing, draws)),
    corrected: upTo(momentsOf(table, schedule(table), does, draws)),
    holds: draws,
  };
}

/** The rows of a plan's table as the simulation takes them. */
function correcting({ table, feed }: FeedPlan, every: number, from: number, of: (water: number) => number): Correcting {
  const above = table.rows.filter(({ off }) => off >= 0).map(({ water }) => of(water));
  const below = table.rows.filter(({ off }) => off <= 0).map(({ pause }) => of(pause * feed));
  const step = (table.rows.at(-1)?.off ?? 1) / Math.max(1, above.length - 1);
  return { every, from, step, above: Float64Array.from(above), below: Float64Array.from(below.reverse()) };
}

function momentsOf(
  plan: ReturnType<typeof planning>,
  does: HoldSchedule,
  acts: Correcting,
  draws: number,
): readonly HoldMoment[] {
  const at: number[][] = [];
  const out = nothingHeld();
  for (const draw of drawsOf(plan, draws, stream)) {
    let reading = 0;
    simulateHold(plan.bath, does, draw, acts, out, (_, truly) => {
      const moment = at[reading] ?? [];
      at[reading] = moment;
      moment.push(plan.bath.target + truly);
      reading++;
    });
  }
  const first = Math.max(1, Math.ceil(acts.from / acts.every));
  return at.map((all, i) => {
    const sorted = all.sort((a, b) => a - b);
    const share = (p: number) => sorted[Math.min(sorted.length - 1, Math.floor(p * sorted.length))] ?? Number.NaN;
    return { time: (first + i) * acts.every, low: share(0.025), middle: share(0.5), high: share(0.975) };
  });
}
