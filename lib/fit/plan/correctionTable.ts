import { drawsOf, planning, promisesOf, scheduleOf, sharesOf } from "./planning.ts";
import { earlyStart } from "./searchFeed.ts";
import { fullTable, searchTable } from "./searchTable.ts";
import { tableOf } from "./tableOf.ts";
import type { CorrectionTable, PlanGivens, PlanOptions } from "./types.ts";

/**
 * What to do at a reading above or below the target: water to add, or seconds to pause the drip, and how long to wait
 * before the next reading. Each row is worked out by simulated holds of this bath, whose feed equals what boils off, with
 * the errors of people and thermometers; no rule of thumb is in it. Never salt; beyond the last rows it says stop.
 *
 * @param givens as for `planFeed`
 * @param options draws (300), seed, s between readings (120), errors of people and instruments
 * @returns rows from the most below to the most above, K, kg, s; shares of holds in the band with it, without, and
 * with full corrections
 * @throws RangeError as `planFeed`
 * Source: our own simulation; the errors are judgements (`humanErrors`).
 * @example
 * const setup = { tank: { length: 0.965, width: 0.203, depth: 0.2 }, burner: { power: 17_600, efficiency: 0.4 } };
 * const bath = { water: 6.2, salts: { sodiumHydroxide: 5.3, sodiumNitrate: 2.65 }, temperature: "boiling" };
 * const table = correctionTable({ setup, bath, target: 417.6, band: 1.1, hold: 1800, pressure: 101_325, pours: "steady" });
 * table.rows.at(-1).water <= table.slugLimit.mass; // true
 * table.inBand.table > table.inBand.nobody; // true
 */
export function correctionTable(givens: PlanGivens, options: PlanOptions = {}): CorrectionTable {
  const plan = planning(givens, options);
  const { draws = 300 } = options;
  const does = scheduleOf(plan, 1, earlyStart(plan));
  const found = searchTable(plan, does, drawsOf(plan, draws, 1));
  const tables = { corrected: found.correcting, full: fullTable(plan) };
  return tableOf(plan, does, found, sharesOf(promisesOf(plan, does, tables, draws, 2)));
}
