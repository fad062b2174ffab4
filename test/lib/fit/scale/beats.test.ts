import { expect, test } from "vitest";
import { inventTanks } from "../../../../data/generator/inventTanks.ts";
import { random } from "../../../../data/generator/random.ts";
import { scaleTogether } from "../../../../lib/fit/scale/index.ts";
import { type Value, winsOver } from "../../../../lib/measure/index.ts";

const options = { pressure: 101_325, draws: 200 };

/** Which of two new tanks boils off more, from one log of the old tank: how sure is said, and whether it is so. */
function pair(seed: number): { readonly sure: number; readonly right: boolean } {
  const chance = random(seed);
  const size = () => ({ times: chance.from(1.25, 3), burners: chance.pick([1, 2, 3, 4]) });
  // Same seed: the world, the old tank and its log are the same for both.
  const one = inventTanks(seed, size());
  const other = inventTanks(seed, size());
  expect(other.from).toEqual(one.from);
  expect(other.found).toEqual(one.found);
  const said = ({ from, to, found }: typeof one, name: string): Value => {
    const { scaled, sources } = scaleTogether({ boilOff: found }, from, to, options);
    // What goes with no factor is each tank's own.
    const parts = [...sources.boilOff].map(([factor, part]) => [factor === "rest" ? name : factor, part] as const);
    return { value: scaled.boilOff.value, dimension: { mass: 1, time: -1 }, components: new Map(parts) };
  };
  const wins = winsOver(said(one, "one"), said(other, "other"));
  const truly = one.truth.boilOff > other.truth.boilOff;
  return { sure: Math.max(wins, 1 - wins), right: truly === wins > 0.5 };
}

// The generator's flames and losses are other laws than the library's: ours too, a figure of honesty and no proof.
const pairs = Array.from({ length: 400 }, (_, i) => pair(83_000 + i));
const from80 = pairs.filter(({ sure }) => sure >= 0.8 && sure < 0.9);
const share = (list: typeof pairs) => list.filter(({ right }) => right).length / list.length;

// More than said come true: that errs on the careful side, as what goes with no factor cannot cancel.
test(`"A boils off more than B": of ${pairs.length} pairs of new tanks from one log, those said with 80 to 90 % (${from80.length}) come true in ${(100 * share(from80)).toFixed(0)} %`, () => {
  expect(from80.length).toBeGreaterThanOrEqual(12);
  expect(share(from80)).toBeGreaterThanOrEqual(0.72);
});

test("surer is truer: below 80 % fewer come true than above 90 %", () => {
  const unsure = pairs.filter(({ sure }) => sure < 0.8);
  const surest = pairs.filter(({ sure }) => sure >= 0.9);
  expect(unsure.length).toBeGreaterThan(15);
  expect(share(unsure)).toBeLessThan(share(surest));
  expect(share(surest)).toBeGreaterThan(0.95);
});
