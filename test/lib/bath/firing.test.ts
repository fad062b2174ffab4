import { describe, expect, test } from "vitest";
import { firingAsFarAsItGoes, firingOf, holdTimes } from "../../../lib/bath/firing/firingOf.ts";
import type { FiringGivens } from "../../../lib/bath/firing/types.ts";
import { boilingPointSlope } from "../../../lib/physics/boilingPointSlope.ts";
import { steelHeat } from "../../../lib/physics/steelHeat.ts";

const inch = 0.0254;
const pound = 0.45359237;
const btuPerHour = 1055.05585262 / 3600;
const fahrenheit = (F: number) => (F + 459.67) / 1.8;

/** A tank in still air with the losses of hand calculation: 600 BTU/(h ft²) at the walls, 392 at the top. */
function tank(length: number, width: number, depth: number, fire: number): FiringGivens {
  const wall = ((2 * (length + width) * depth) / 144) * 600;
  const top = ((length * width) / 144) * 392;
  return {
    fire: fire * btuPerHour,
    wall: wall * btuPerHour,
    top: top * btuPerHour,
    length: length * inch,
    width: width * inch,
    depth: (depth + 6) * inch,
    // 10 lb to the gallon of water, to the working depth.
    salt: length * width * depth * inch ** 3 * 1750 * 0.56,
    hydroxide: 0.67,
    target: fahrenheit(292),
    band: 1.1,
    pressure: 101_325,
    offset: 0,
    scale: 1,
    cold: fahrenheit(60),
    parts: 2,
    hold: 1800,
  };
}

describe("against hand calculation", () => {
  // A fed bath at rest gives off steam of 292 °F at one atmosphere for each pound of water of 60 °F: nothing is diluted
  // or concentrated. 1,188.8 - 28.1 BTU/lb by the steam tables (Keenan and Keyes, from memory, between 280 and 300 °F).
  const perPound = 1160.7;

  test.each([
    { size: [38, 8, 3.5] as const, fire: 60_000 * 0.35, poundsPerHour: (21_000 - 1341.7 - 827.6) / perPound },
    { size: [40, 6, 5] as const, fire: 60_000 * 0.3, poundsPerHour: (18_000 - 1916.7 - 653.3) / perPound },
    { size: [48, 6, 5] as const, fire: 60_000 * 0.3, poundsPerHour: (18_000 - 2250 - 784) / perPound },
  ])("make-up is the net heat over what steam takes from cold water: $size in", ({ size, fire, poundsPerHour }) => {
    const made = (firingOf(tank(size[0], size[1], size[2], fire)).makeUp / pound) * 3600;
    expect(made / poundsPerHour).toBeCloseTo(1, 2);
  });

  test("regression of our own reckoning: 16.2, 13.3 and 12.9 lb/h", () => {
    const made = (length: number, width: number, depth: number, fire: number) =>
      (firingOf(tank(length, width, depth, fire)).makeUp / pound) * 3600;
    expect(made(38, 8, 3.5, 21_000)).toBeCloseTo(16.2, 0);
    expect(made(40, 6, 5, 18_000)).toBeCloseTo(13.3, 0);
    expect(made(48, 6, 5, 18_000)).toBeCloseTo(12.9, 0);
  });

  test("left alone it climbs as the boiling curve's slope says for the water that leaves", () => {
    const givens = tank(38, 8, 3.5, 21_000);
    const { drift, water, makeUp } = firingOf(givens);
    const ratio = givens.salt / water;
    const brine = { sodiumHydroxide: ratio * 0.67, sodiumNitrate: ratio * 0.33 };
    // K for each kg of water gone, times kg/s; the climb itself takes some of the heat.
    const most = (boilingPointSlope(brine, 101_325) / water) * makeUp;
    expect(drift / most).toBeGreaterThan(0.8);
    expect(drift / most).toBeLessThan(1);
  });

  test("the dip is the parts' heat over what the bath can hold of it", () => {
    const givens = { ...tank(38, 8, 3.5, 21_000), parts: 6 };
    const { dip, water } = firingOf(givens);
    const heat = steelHeat(6, givens.cold, givens.target);
    // At the least 2.2 kJ/(kg K) of bath, none of the fire's heat counted: no dip can be deeper.
    expect(dip).toBeGreaterThan(0);
    expect(dip).toBeLessThan(heat / ((water + givens.salt) * 2200));
  });
});

describe("a firing", () => {
  const givens = tank(38, 8, 3.5, 21_000);
  const plain = firingOf(givens);

  test("fed what holds it, it stays at the target; left alone it leaves the band when it says", () => {
    const still = firingOf({ ...givens, parts: 0 });
    for (const T of still.fed) expect(Math.abs(T)).toBeLessThan(0.02);
    const times = holdTimes(givens.hold);
    const i = still.unfed.findIndex((T) => T >= givens.band);
    expect(times[i - 1]).toBeLessThanOrEqual(still.late);
    expect(times[i]).toBeGreaterThanOrEqual(still.late);
  });

  test("a bigger fire boils sooner, drifts faster and needs more feed; more parts dip deeper and longer", () => {
    const bigger = firingOf({ ...givens, fire: 1.3 * givens.fire });
    expect(bigger.toBoil).toBeLessThan(plain.toBoil);
    expect(bigger.drift).toBeGreaterThan(plain.drift);
    expect(bigger.makeUp).toBeGreaterThan(plain.makeUp);
    expect(bigger.late).toBeLessThan(plain.late);
    const heavy = firingOf({ ...givens, parts: 6 });
    expect(heavy.dip).toBeGreaterThan(plain.dip);
    expect(heavy.back).toBeGreaterThanOrEqual(plain.back);
  });

  test("a fire that is too small never boils it, and says so; what there is of it is still told", () => {
    const small = { ...givens, fire: 0.15 * givens.fire };
    expect(() => firingOf(small)).toThrow(/does not bring the bath to its boil/);
    const part = firingAsFarAsItGoes(small);
    expect(part.toBoil).toBeUndefined();
    expect(part.spare).toBeLessThan(0);
    expect(part.water).toBeCloseTo(plain.water, 9);
  });

  test("what does not fit its tank is refused", () => {
    expect(() => firingOf({ ...givens, depth: 2 * inch })).toThrow(/overflow|does not fit|brim|run/);
  });
});
