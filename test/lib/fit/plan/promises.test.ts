import { expect, test } from "vitest";
import { correctionTable, type FeedPlan, planFeed } from "../../../../lib/index.ts";
import { fittedBath } from "./fittedBath.ts";
import { type HeldBackBath, inventBath, type Policy, trueHold } from "./heldBack.ts";

const baths = 30;
const holds = 12;

/** Share of a bath's true holds that stay in its band for 95 % of the time. */
function heldOf(bath: HeldBackBath, plan: FeedPlan, policy: Policy, seed: number, of = holds) {
  let held = 0;
  for (let j = 0; j < of; j += 1) if (trueHold(bath, plan, policy, seed + j) >= 0.95) held += 1;
  return held / of;
}

// Held back: the full simulation with other gusts, thermometers and people than the plan draws. Ours too, so no
// evidence of the physics; it is evidence that the promises follow from what they say they follow from.
test.each([0, 100])(
  "over thirty baths from %d the promises come true: 6 points with nobody correcting, 4 with the table",
  (from) => {
    const sum = { nobody: 0, table: 0, promised: 0, corrected: 0 };
    for (let i = from; i < from + baths; i += 1) {
      const bath = inventBath(i);
      const plan = planFeed(bath.told, { draws: 200, seed: i });
      sum.nobody += heldOf(bath, plan, "nobody", 1000 * i);
      sum.table += heldOf(bath, plan, "table", 1000 * i);
      sum.promised += plan.inBand;
      sum.corrected += plan.inBandCorrected;
    }
    expect(Math.abs(sum.nobody - sum.promised) / baths).toBeLessThan(0.06);
    expect(Math.abs(sum.table - sum.corrected) / baths).toBeLessThan(0.04);
    expect(sum.table / baths).toBeGreaterThan(sum.nobody / baths + 0.05);
  },
  90_000,
);

// Few holds of many baths: one fit's error is fixed for its bath, so that the mean of fourteen is known to some 8 points.
test("promises made from one log's fit come true, over fourteen logs of the generator", () => {
  const sum = { nobody: 0, table: 0, promised: 0, corrected: 0 };
  for (let seed = 51_000; seed < 51_014; seed += 1) {
    const { bath, plan } = fittedBath(seed, { draws: 200 });
    sum.nobody += heldOf(bath, plan, "nobody", 100 * seed, 6);
    sum.table += heldOf(bath, plan, "table", 100 * seed, 6);
    sum.promised += plan.inBand;
    sum.corrected += plan.inBandCorrected;
  }
  expect(Math.abs(sum.nobody - sum.promised) / 14).toBeLessThan(0.16);
  expect(Math.abs(sum.table - sum.corrected) / 14).toBeLessThan(0.08);
}, 60_000);

test("truly too, the table beats full corrections", () => {
  const held = { table: 0, full: 0 };
  for (let i = 2; i < 6; i += 1) {
    const bath = inventBath(i);
    const plan = planFeed(bath.told, { draws: 100, seed: i });
    held.table += heldOf(bath, plan, "table", 1000 * i);
    held.full += heldOf(bath, plan, "full", 1000 * i);
  }
  expect(held.table).toBeGreaterThan(held.full + 0.3);
}, 60_000);

test.each([1, 2, 3, 4])(
  "in a band of %d °F the table beats doing nothing and full corrections, in every bath",
  (band) => {
    for (let i = 40; i < 46; i += 1) {
      const { told } = inventBath(i, (band * 5) / 9);
      const { inBand } = correctionTable({ ...told, pours: "steady" }, { draws: 500, seed: i });
      // Where nearly all holds stay in, there is nothing left to win.
      const ceiling = (one: number | null) => Math.min(one ?? 0, 0.985);
      expect(inBand.table).toBeGreaterThan(ceiling(inBand.nobody));
      expect(inBand.table).toBeGreaterThan(ceiling(inBand.full));
    }
  },
);
