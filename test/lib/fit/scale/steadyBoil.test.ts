import { expect, test } from "vitest";
import { type InventedTanks, inventTanks } from "../../../../data/generator/inventTanks.ts";
import { scaleSetup, stallLength } from "../../../../lib/fit/scale/index.ts";
import { holds, percent, shareOf } from "./judgeTanks.ts";

// Weak fires under one long tank each, of the invented world of `scaleCoverage`. Each tank is made as long as one end of
// the interval of `stallLength` or its middle says, so that a steady boil is likely by as much; what then happens is the
// world's own.
const options = { pressure: 101_325, draws: 100 };
const first = 64_001;

interface Said {
  readonly said: number;
  readonly boils: boolean;
  readonly heatUpHeld: boolean;
}

function madeSoLong(seed: number, world: InventedTanks, length: number): Said | undefined {
  const times = length / world.from.tank.length;
  if (!(times >= 1 && length <= 4.5)) return undefined;
  const { from, to, found, truth } = inventTanks(seed, { weak: true, burners: 1, times });
  const said = scaleSetup({ boilOff: found }, from, to, options);
  return { said: said.boilsSteadily, boils: truth.boilsSteadily, heatUpHeld: holds(said.heatUp, truth.heatUp) };
}

const even: Said[] = [];
const likely: Said[] = [];
for (let seed = first; seed < first + 180; seed++) {
  const world = inventTanks(seed, { weak: true, burners: 1, times: 2 });
  const stall = stallLength({ boilOff: world.found }, world.from, world.to, options);
  const middle = madeSoLong(seed, world, stall.value);
  // A tenth of the way down: 1.28 of the 1.96 standard uncertainties to the low end.
  const shorter = madeSoLong(seed, world, stall.value * (stall.interval95[0] / stall.value) ** (1.2816 / 1.96));
  if (middle) even.push(middle);
  if (shorter) likely.push(shorter);
  if (seed % 20 === 0) await new Promise((resolve) => setImmediate(resolve));
}

for (const [list, about] of [
  [even, 0.5],
  [likely, 0.9],
] as const) {
  const said = list.reduce((sum, one) => sum + one.said, 0) / list.length;
  const came = shareOf(list, ({ boils }) => boils);
  test(`boilsSteadily: said ${percent(said)} on the mean of ${list.length} invented tanks, came true in ${percent(came)}`, () => {
    expect(list.length).toBeGreaterThan(100);
    expect(Math.abs(said - about)).toBeLessThan(0.05);
    expect(Math.abs(came - said)).toBeLessThanOrEqual(0.1);
  });
  const held = shareOf(list, ({ heatUpHeld }) => heatUpHeld);
  test(`heatUp: near the length where the fire stalls, at a chance of ${about}, its interval holds the truth in ${percent(held)}`, () => {
    expect(held).toBeGreaterThanOrEqual(0.9);
  });
}
