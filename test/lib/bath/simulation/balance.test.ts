import fc from "fast-check";
import { expect, test } from "vitest";
import { steelTable, tankSteel } from "../../../../lib/bath/bathModel.ts";
import { bathEnthalpy, simulateBath } from "../../../../lib/bath/index.ts";
import { saltMass } from "../../../../lib/bath/saltMasses.ts";
import type { BathTally, CoursePoint, SimulatedBath, SimulationSetup } from "../../../../lib/bath/simulationTypes.ts";
import { brineEnthalpyTotal } from "../../../../lib/physics/brineEnthalpy.ts";
import { steelHeat } from "../../../../lib/physics/steelHeat.ts";
import { busy, charges, cold, happenings, setup, setups } from "./baths.ts";

const tallied = (point: CoursePoint | undefined): { point: CoursePoint; tally: Readonly<BathTally> } => {
  if (!point?.tally) throw new Error("a point without a tally");
  return { point, tally: point.tally };
};

/** J in the liquid and the steel, from public functions; below 0 °C steel's is the simulation's own. */
const holds = ({ point, tally }: ReturnType<typeof tallied>, steel: number): number => {
  const { salts, water, T } = point;
  const kilograms = steel + tally.parts;
  const warm = T < 273.15 ? kilograms * steelTable().at(T) : steelHeat(kilograms, 273.15, T);
  return bathEnthalpy(salts, water, T) + warm;
};

/** The worst miss of any step: energy over the energy in the bath, water over the water, salt over the salt. */
function worstMiss(run: SimulatedBath, where: SimulationSetup): { energy: number; water: number; salt: number } {
  const steel = tankSteel(where.tank);
  let [energy, water, salt] = [0, 0, 0];
  const start = tallied(run.course[0]).point;
  const saltIn = run.course.map(({ salts }) => saltMass(salts));
  for (let i = 1; i < run.course.length; i++) {
    const a = tallied(run.course[i - 1]);
    const b = tallied(run.course[i]);
    const d = (of: (tally: Readonly<BathTally>) => number) => of(b.tally) - of(a.tally);
    const came =
      d(({ fire, waterEnthalpy, partsEnthalpy, saltEnthalpy }) => fire + waterEnthalpy + partsEnthalpy + saltEnthalpy) -
      d(({ walls, top, steamEnthalpy, dragOutEnthalpy }) => walls + top + steamEnthalpy + dragOutEnthalpy);
    const here = holds(b, steel);
    // Near 0 °C and for the hydroxide's own zero the energy may be close to nothing: 100 kJ a kg stands for it.
    const scale = Math.abs(here) + 1e5 * b.point.water;
    energy = Math.max(energy, Math.abs(here - holds(a, steel) - came) / scale);
    const poured = d(({ water: into, steam, dragOutWater }) => into - steam - dragOutWater);
    water = Math.max(water, Math.abs(b.point.water - a.point.water - poured) / b.point.water);
    const dragged = d(({ dragOut, dragOutWater }) => dragOut - dragOutWater);
    const gone = (saltIn[i - 1] ?? 0) - (saltIn[i] ?? 0);
    // Salt goes in by whole lots of 0.3 kg in these schedules.
    const lots = Math.round((dragged - gone) / 0.3);
    salt = Math.max(salt, Math.abs(dragged - gone - 0.3 * lots) / saltMass(start.salts));
  }
  return { energy, water, salt };
}

test.each([1, 10, 30, 120])("water, salt and energy balance over every step of %f s", (step) => {
  const run = simulateBath(
    setup,
    cold,
    { end: 5400, events: busy },
    { step, tally: true, mixing: 20, partsWarming: 24 },
  );
  const miss = worstMiss(run, setup);
  expect(run.course.length).toBeGreaterThan(5400 / step);
  expect(miss.energy).toBeLessThan(1e-10);
  expect(miss.water).toBeLessThan(1e-12);
  expect(miss.salt).toBeLessThan(1e-12);
});

test("water, salt and energy balance over every step whatever happens, and the heats add up to the fire", () => {
  let boiled = 0;
  fc.assert(
    fc.property(setups, charges, happenings, fc.constantFrom(0, 25), (where, charge, events, mixing) => {
      const run = simulateBath(where, charge, { end: 2400, events }, { tally: true, mixing, partsWarming: mixing });
      const miss = worstMiss(run, where);
      if (run.course.some(({ state }) => state === "boiling")) boiled++;
      const { fire, ...others } = run.totals.heat;
      const sum = Object.values(others).reduce((all, one) => all + one, 0);
      // At least 1 kJ: with hardly a fire and no losses only rounding is left of the bath's megajoules.
      const size = Object.values(others).reduce((all, one) => all + Math.abs(one), 1000);
      expect(miss.energy).toBeLessThan(1e-9);
      expect(miss.water).toBeLessThan(1e-11);
      expect(miss.salt).toBeLessThan(1e-11);
      expect(Math.abs(sum - fire) / size).toBeLessThan(1e-9);
    }),
    { numRuns: 60 },
  );
  expect(boiled).toBeGreaterThan(10);
});

test("the heat into each part is what its own physics says", () => {
  const events = [
    { kind: "parts in", time: 0, mass: 4, temperature: 293.15 },
    { kind: "feed", from: 0, to: 600, rate: 0.001, temperature: 290 },
  ] as const;
  const run = simulateBath(setup, { ...cold, temperature: 350 }, { end: 600, events }, { step: 5 });
  const { heat } = run.totals;
  expect(heat.parts).toBeCloseTo(steelHeat(4, 293.15, run.end.T), -1);
  expect(heat.tank).toBeCloseTo(steelHeat(tankSteel(setup.tank), 350, run.end.T), -1);
  expect(heat.fire).toBeCloseTo(600 * 17_600 * 0.4, 3);
  expect(run.totals.gas).toBeCloseTo(600 * 17_600, 3);
  expect(heat.salt).toBe(0);
  // 0.6 kg from 290 K to a bath between 350 and 400 K.
  expect(heat.makeUpWater).toBeGreaterThan(0.6 * 4180 * 60);
  expect(heat.makeUpWater).toBeLessThan(0.6 * 4250 * 110);
});

test("bathEnthalpy(salts, water, T) is the whole bath's brineEnthalpy to 0.1 J/kg, and homogeneous", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.25, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 2, noNaN: true }),
      fc.double({ min: 273.15, max: 473.15, noNaN: true }),
      (share, nitrate, T) => {
        const salts = { sodiumHydroxide: 1 / share - 1, sodiumNitrate: nitrate, potassiumNitrate: nitrate / 3 };
        const mass = 1 + saltMass(salts);
        const h = bathEnthalpy(salts, 1, T);
        expect(Math.abs(h - brineEnthalpyTotal(salts, 1, T)) / mass).toBeLessThan(0.1);
        const thrice = Object.fromEntries(Object.entries(salts).map(([kind, kg]) => [kind, 3 * kg]));
        expect(Math.abs(bathEnthalpy(thrice, 3, T) / 3 - h)).toBeLessThan(1e-6);
      },
    ),
    { numRuns: 500 },
  );
});

test("bathEnthalpy carries strong hydroxide on into the cold with a level heat capacity", () => {
  // 60 wt% is published from 37 °C.
  const capacity = (T: number) =>
    (bathEnthalpy({ sodiumHydroxide: 6 }, 4, T + 1) - bathEnthalpy({ sodiumHydroxide: 6 }, 4, T - 1)) / 20;
  const published = capacity(320);
  for (const T of [250, 265, 274, 285, 300]) expect(Math.abs(capacity(T) / published - 1)).toBeLessThan(0.05);
  expect(bathEnthalpy({}, 2, 268.15)).toBeLessThan(bathEnthalpy({}, 2, 273.15));
});

test.each([
  [() => bathEnthalpy({ sodiumHydroxide: 9 }, 1, 400), "invalid hydroxide: 90 wt%; 0 to 84 wt%"],
  [() => bathEnthalpy({ sodiumHydroxide: 1 }, 1, 200), "invalid temperature: 200 K; 243.15 to 513.15 K"],
  [() => bathEnthalpy({ sodiumHydroxide: 1 }, 0, 400), "invalid water: 0 kg"],
])("bathEnthalpy refuses what it cannot know: %#", (work, message) => {
  expect(work).toThrow(message);
});
