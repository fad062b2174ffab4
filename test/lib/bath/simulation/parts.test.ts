import { expect, test } from "vitest";
import { bathLosses, quietVapour } from "../../../../lib/bath/bathLosses.ts";
import { tankSteel } from "../../../../lib/bath/bathModel.ts";
import { simulateBath } from "../../../../lib/bath/index.ts";
import type { ScheduledEvent } from "../../../../lib/bath/simulationTypes.ts";
import { steamHeat } from "../../../../lib/bath/steamHeat.ts";
import { tabulate } from "../../../../lib/bath/uniformTable.ts";
import {
  boilingPoint,
  brineVapourPressure,
  evaporationHeat,
  steamEnthalpy,
  surfaceLoss,
  wallLoss,
} from "../../../../lib/physics/index.ts";
import { cold, hot, setup } from "./baths.ts";

test.each([[{ sodiumHydroxide: 1 }], [{ sodiumHydroxide: 0.89, sodiumNitrate: 0.445 }], [{ sodiumHydroxide: 0.4 }]])(
  "below the boil of %j the vapour pressure is brineVapourPressure's within 5 % for 20 K, 15 % for 80 K",
  (brine) => {
    const boils = boilingPoint(brine, 101_325);
    const heat = evaporationHeat(brine, 101_325) / (2.501e6 - 2619 * (boils - 273.15));
    for (const [below, within] of [
      [2, 0.01],
      [20, 0.05],
      [80, 0.15],
    ] as const) {
      const published = brineVapourPressure(brine, boils - below);
      expect(Math.abs(quietVapour(boils - below, boils, 101_325, heat) / published - 1)).toBeLessThan(within);
    }
    expect(quietVapour(boils + 1, boils, 101_325, heat)).toBe(101_325);
  },
);

test("computed losses are wallLoss of the sides and surfaceLoss of the top, from a table", () => {
  const { length, width, depth } = setup.tank;
  const losses = bathLosses(setup);
  for (const T of [285, 312, 371, 417.6]) {
    const side = 2 * (length + width) * depth * wallLoss({ wall: T, air: 293.15, height: depth, pressure: 101_325 });
    const over = surfaceLoss({
      surface: T,
      air: 293.15,
      length,
      width,
      vapourPressure: 3000,
      airVapourPressure: 884,
      pressure: 101_325,
    });
    expect(Math.abs(losses.walls(T) - side)).toBeLessThan(0.003 * Math.abs(side) + 0.5);
    const top = length * width * (over.convection + over.radiation);
    expect(Math.abs(losses.top(T) - top)).toBeLessThan(0.003 * Math.abs(top) + 0.5);
    expect(losses.evaporates(T) * (3000 - 884)).toBeCloseTo(length * width * over.evaporated, 7);
  }
});

test("fitted losses are straight in the temperature, and their evaporation is that of the same law", () => {
  const losses = bathLosses({ ...setup, losses: { wall: 9, top: 4, evaporation: (235 * 3.154591) / 6894.757 } });
  expect(losses.walls(393.15)).toBeCloseTo(900, 9);
  expect(losses.top(393.15)).toBeCloseTo(400, 9);
  for (const T of [320, 370, 415]) expect(losses.evaporates(T) / bathLosses(setup).evaporates(T)).toBeCloseTo(1, 1);
});

test("a tank's steel by hand: 2 mm of bottom and four sides", () => {
  const area = 0.965 * 0.203 + 2 * 0.965 * 0.2 + 2 * 0.203 * 0.2;
  expect(tankSteel(setup.tank)).toBeCloseTo(area * 0.002 * 7850, 9);
  expect(tankSteel({ ...setup.tank, wall: { steel: 12, thickness: 0.002 } })).toBe(12);
  expect(tankSteel({ length: 1, width: 1, depth: 1 })).toBe(0);
});

test("insulation and a bright wall lose less", () => {
  const loss = (wall: object) => bathLosses({ ...setup, tank: { ...setup.tank, wall } }).walls(417.6);
  expect(loss({ emissivity: 0.2 })).toBeLessThan(0.75 * loss({}));
  expect(loss({ insulation: { thickness: 0.025, conductivity: 0.05 } })).toBeLessThan(0.25 * loss({}));
});

test("steam at the air's pressure, and saturated below water's boiling point, without a jump between", () => {
  const heat = steamHeat(101_325);
  for (const T of [374, 390, 417.6, 445]) expect(Math.abs(heat(T) - steamEnthalpy(T, 101_325))).toBeLessThan(30);
  // Steam tables, from memory: saturated steam of 60 °C 2,609 kJ/kg.
  expect(Math.abs(heat(333.15) / 1000 - 2609)).toBeLessThan(1);
  expect(Math.abs(heat(373.1243 + 1e-4) - heat(373.1243 - 1e-4))).toBeLessThan(1);
});

test("tabulate(f, low, high, step) is f to the fourth order inside, and straight on outside", () => {
  const table = tabulate(Math.exp, 0, 2, 0.1);
  for (let x = 0; x <= 2; x += 0.037) {
    expect(Math.abs(table.at(x) - Math.exp(x))).toBeLessThan(1e-4);
    expect(Math.abs(table.slope(x) - Math.exp(x))).toBeLessThan(5e-3);
  }
  expect(table.at(3) - table.at(2)).toBeCloseTo(table.slope(2), 9);
  expect(table.at(0) - table.at(-1)).toBeCloseTo(table.slope(0), 9);
});

test("when the bath first boils, and boils again, does not hang on the step", () => {
  const events: ScheduledEvent[] = [{ kind: "parts in", time: 1503, mass: 6, temperature: 293 }];
  const when = (step: number) =>
    simulateBath(setup, cold, { end: 2000, events }, { step })
      .events.filter(({ says }) => says.startsWith("the bath boils"))
      .map(({ time }) => time);
  const [coarse, fine] = [when(25), when(0.5)];
  expect(coarse.length).toBe(2);
  coarse.forEach((time, i) => {
    expect(Math.abs(time - (fine[i] ?? Number.NaN))).toBeLessThan(1);
  });
});

test("parts that come out before they are warm took their share only", () => {
  const events: ScheduledEvent[] = [
    { kind: "parts in", time: 60, mass: 4, temperature: 293.15 },
    { kind: "parts out", time: 90, dragOut: 0 },
  ];
  const slow = simulateBath(setup, hot, { end: 600, events }, { partsWarming: 60 }).totals.heat.parts;
  const fast = simulateBath(setup, hot, { end: 600, events }, { partsWarming: 30 }).totals.heat.parts;
  expect(slow / fast).toBeGreaterThan(0.49);
  expect(slow / fast).toBeLessThan(0.52);
  const stay = simulateBath(setup, hot, { end: 600, events: events.slice(0, 1) }, { partsWarming: 60, tally: true });
  expect(stay.course.at(-1)?.tally?.parts).toBeCloseTo(4, 9);
});
