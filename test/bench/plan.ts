import { drawsOf, planning, scheduleOf, tried } from "../../lib/fit/plan/planning.ts";
import { evenTable } from "../../lib/fit/plan/searchTable.ts";
import { type PlanGivens, planFeed, simulateBath } from "../../lib/index.ts";

const setup = {
  tank: { length: 0.965, width: 0.203, depth: 0.2, wall: { thickness: 0.002 } },
  burner: { power: 17_600, efficiency: 0.4 },
};
const salts = { sodiumHydroxide: 5.3, sodiumNitrate: 2.65 };
const bath = { water: 6.6, salts, temperature: 291 } as const;
const hold = 1800;
const givens: PlanGivens = { setup, bath, target: 417.6, band: 1.1, hold, pressure: 101_325, pours: "steady" };

const plan = planning(givens, {});
const does = scheduleOf(plan, 1, -0.3);
const draws = drawsOf(plan, 300, 1);
const table = evenTable(plan, 0.3);

/** 300 holds with nobody correcting. */
export const holds300 = () => tried(plan, does, draws);

const feed = { kind: "feed" as const, from: 0, to: hold, rate: does.rate, temperature: 293.15 };
const boiling = { ...bath, water: plan.bath.water, temperature: "boiling" as const };
/** One of them by the full simulation, in the same steps, its fire without gusts. */
export const fullHold = () => simulateBath(setup, boiling, { end: hold, events: [feed] }, { step: 10 });

/** A plan from start to finish: first result, search, table, promises. */
export const wholePlan = () => planFeed(givens);

/** As many holds as that plan simulates, as many of them corrected, and nothing else: 25 lots of 300 and 2 of 150. */
const { simulated } = wholePlan();
const corrected = 10.5;
export function bareHolds(): void {
  const lots = simulated / 300;
  for (let done = 0; done < lots; done += 0.5) tried(plan, does, half, done < corrected ? table : undefined);
}
const half = draws.slice(0, 150);
