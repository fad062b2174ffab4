import { expect, test } from "vitest";
import { holdSpread, type PlanGivens, planFeed } from "../../../../lib/fit/index.ts";

const givens: PlanGivens = {
  setup: { tank: { length: 0.965, width: 0.203, depth: 0.2 }, burner: { power: 17_600, efficiency: 0.4 } },
  bath: { water: 6.2, salts: { sodiumHydroxide: 5.3, sodiumNitrate: 2.65 }, temperature: "boiling" },
  target: 417.6,
  band: 1.1,
  hold: 1800,
  pressure: 101_325,
  pours: "steady",
};
const plan = planFeed(givens);
const spread = holdSpread(givens, plan);

test("the spread reaches the end of the hold, every 30 s with nobody correcting, at each reading with the table", () => {
  expect(spread.nobody.map(({ time }) => time)).toEqual(Array.from({ length: 60 }, (_, i) => 30 * (i + 1)));
  expect(spread.corrected.map(({ time }) => time)).toEqual(Array.from({ length: 15 }, (_, i) => 120 * (i + 1)));
});

test("the table narrows what the bath does at the end of the hold", () => {
  const wide = (of: typeof spread.nobody) => (of.at(-1)?.high ?? 0) - (of.at(-1)?.low ?? 0);
  expect(wide(spread.corrected)).toBeLessThan(0.75 * wide(spread.nobody));
});

test("no pour of a plan or its table goes beyond a smaller limit that is asked for", () => {
  const most = 0.08;
  const small = planFeed({ ...givens, pours: { measure: 0.5 } }, { mostAtOnce: most });
  expect(small.slugLimit.mass).toBe(most);
  expect(small.measureLimited).toBe(true);
  expect(small.largestSlug).toBeLessThanOrEqual(most);
  expect(Math.max(...small.table.rows.map(({ water }) => water))).toBeLessThanOrEqual(most);
});
