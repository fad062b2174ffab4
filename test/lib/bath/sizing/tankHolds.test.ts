import fc from "fast-check";
import { expect, test } from "vitest";
import {
  bathToFill,
  brineDensity,
  plateOf,
  saltRatio,
  tankHolds,
  usualFreeboard,
  weightOnStand,
} from "../../../../lib/index.ts";

const inch = 0.0254;
const pound = 0.45359237;
const gallon = 231 * inch ** 3;

// 24 x 6 x 5.5 in are 792 cubic inches, and a US gallon is 231 of them by definition (NIST Handbook 44, appendix C).
test("a tank of 24 x 6 in filled 5½ in deep holds 3.4286 gallons", () => {
  const tank = { length: 24 * inch, width: 6 * inch, depth: 5.5 * inch, freeboard: 4 * inch };
  expect(tankHolds(tank).volume / gallon).toBeCloseTo(792 / 231, 10);
  expect(tankHolds(tank).spare / gallon).toBeCloseTo(576 / 231, 10);
});

// Steel of 0.2836 lb a cubic inch (7,850 kg/m³; Machinery's Handbook gives 0.284, from memory).
test("ten pounds of steel displace some 35 cubic inches and lower the level by that over the surface", () => {
  const tank = { length: 24 * inch, width: 6 * inch, depth: 5 * inch, freeboard: 0.1 };
  const { displaced, fall, liquid, volume } = tankHolds(tank, { parts: 8 * pound, hangers: 2 * pound });
  expect(displaced / inch ** 3).toBeCloseTo(10 / 0.2836, 1);
  expect(fall / inch).toBeCloseTo(10 / 0.2836 / 144, 3);
  expect(liquid + displaced).toBeCloseTo(volume, 12);
});

// A plate of 1/8 in weighs 5.10 lb a square foot (standard weights of steel plate, 40.8 lb per inch of thickness; memory).
test("plate of an eighth of an inch weighs 5.10 lb a square foot", () => {
  const { area, mass } = plateOf({ length: 1, width: 0.2, depth: 0.15, freeboard: 0.1 }, inch / 8);
  expect(mass / pound / (area / (12 * inch) ** 2)).toBeCloseTo(5.1, 1);
});

test("plate is what lies between outside and inside", () => {
  const size = fc.double({ min: 0.05, max: 3, noNaN: true });
  fc.assert(
    fc.property(size, size, size, fc.double({ min: 0.001, max: 0.02, noNaN: true }), (l, w, d, t) => {
      const { area } = plateOf({ length: l, width: w, depth: d, freeboard: 0.1 }, t);
      const steel = (l + 2 * t) * (w + 2 * t) * (d + 0.1 + t) - l * w * (d + 0.1);
      expect(area * t).toBeCloseTo(steel, 10);
    }),
  );
});

test("the stand carries tank, steel and liquid, and brimful what is above the working depth too", () => {
  const holds = tankHolds({ length: 1, width: 0.2, depth: 0.15, freeboard: 0.1 }, { parts: 7.85, hangers: 7.85 });
  const load = weightOnStand(holds, { tank: 20, parts: 7.85, hangers: 7.85, other: 1 }, 1500);
  expect(load.mass).toBeCloseTo(20 + 15.7 + 1 + 1500 * (0.03 - 0.002), 9);
  expect(load.brimful - load.mass).toBeCloseTo(1500 * 0.02, 9);
  expect(load.force).toBeCloseTo(load.brimful * 9.80665, 9);
});

test("usual freeboard is 4 in, or a third of a deep tank", () => {
  expect(usualFreeboard(0.1)).toBeCloseTo(4 * inch, 12);
  expect(usualFreeboard(0.6)).toBeCloseTo(0.2, 12);
});

const tank = { length: 1, width: 0.2, depth: 0.15, freeboard: 0.1 };
test.each([
  [() => tankHolds({ ...tank, depth: 0 }), "invalid working depth: 0 m; 0.01 to 100 m"],
  [() => tankHolds({ ...tank, freeboard: -0.1 }), "invalid freeboard: -0.1 m"],
  [() => tankHolds(tank, { parts: Number.NaN }), "invalid weight of the parts: NaN kg"],
  [() => tankHolds(tank, { parts: 300 }), "invalid weight of parts and hangers: 300 kg; at most 235.5 kg of steel"],
  [() => plateOf(tank, 0), "invalid thickness of the plate: 0 m"],
  [() => weightOnStand(tankHolds(tank), { tank: -1 }, 1500), "invalid weight of the tank: -1 kg"],
  [() => weightOnStand(tankHolds(tank), { tank: 1 }, 1.5), "invalid density: 1.5 kg/m³"],
  [() => usualFreeboard(Number.NaN), "invalid working depth: NaN m"],
])("%# refuses what is no tank", (work, message) => {
  expect(work).toThrow(message);
});

const usual = { salts: { sodiumHydroxide: 2, sodiumNitrate: 1 }, target: 417.594, pressure: 101_325 };

test("salt and water fill the volume, in the bath's proportions and at its ratio", () => {
  const bath = bathToFill(0.02, usual);
  expect(bath.salt / bath.water).toBeCloseTo(saltRatio(417.594, 101_325, usual.salts), 12);
  expect(bath.salts.sodiumHydroxide / bath.salts.sodiumNitrate).toBeCloseTo(2, 12);
  const brine = { sodiumHydroxide: (bath.ratio * 2) / 3, sodiumNitrate: bath.ratio / 3 };
  expect((bath.salt + bath.water) / brineDensity(brine, 417.594)).toBeCloseTo(0.02, 12);
});

// About 10 lb of salt to a gallon of water is how shops mix it (common practice, no source).
test("the usual mix for 292 °F is within a quarter of ten pounds of salt a gallon of water", () => {
  const { ratio } = bathToFill(0.02, usual);
  const poundsPerGallon = (ratio * 998.2 * gallon) / pound;
  expect(poundsPerGallon).toBeGreaterThan(7.5);
  expect(poundsPerGallon).toBeLessThan(12.5);
});

test("a bath higher up needs more salt for one target, and its own ratio and curve are taken where known", () => {
  expect(bathToFill(0.02, { ...usual, pressure: 80_000 }).ratio).toBeGreaterThan(bathToFill(0.02, usual).ratio);
  expect(
    bathToFill(0.02, { ...usual, ratio: 1.2 }).salt / bathToFill(0.02, { ...usual, ratio: 1.2 }).water,
  ).toBeCloseTo(1.2, 12);
  const low = bathToFill(0.02, { ...usual, departure: { offset: -2, scale: 1 } });
  expect(low.ratio).toBeCloseTo(saltRatio(419.594, 101_325, usual.salts), 12);
});

test.each([
  [() => bathToFill(-1, usual), "invalid volume: -1 m³"],
  [() => bathToFill(0.02, { ...usual, salts: {} }), "missing salts"],
  [() => bathToFill(0.02, { ...usual, ratio: 0 }), "invalid ratio: 0 kg/kg"],
  [() => bathToFill(0.02, { ...usual, target: Number.NaN }), "invalid temperature: NaN K"],
])("%# refuses what is no bath", (work, message) => {
  expect(work).toThrow(message);
});
