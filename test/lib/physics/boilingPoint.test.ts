import fc from "fast-check";
import { expect, test } from "vitest";
import { boilingPoint } from "../../../lib/physics/boilingPoint.ts";
import { saturationTemperature } from "../../../lib/physics/saturationTemperature.ts";
import { salts } from "../../../lib/physics/types.ts";

const bath = fc.record({
  sodiumHydroxide: fc.double({ min: 0.05, max: 0.9, noNaN: true }),
  sodiumNitrate: fc.double({ min: 0, max: 0.4, noNaN: true }),
  sodiumNitrite: fc.double({ min: 0, max: 0.2, noNaN: true }),
  potassiumNitrate: fc.double({ min: 0, max: 0.2, noNaN: true }),
});
const pressure = fc.double({ min: 65e3, max: 105e3, noNaN: true });

test.each(salts)("boilingPoint rises with every kg of %s", (salt) => {
  fc.assert(
    fc.property(bath, pressure, fc.double({ min: 1e-4, max: 0.2, noNaN: true }), (brine, p, more) => {
      expect(boilingPoint({ ...brine, [salt]: brine[salt] + more }, p)).toBeGreaterThan(boilingPoint(brine, p));
    }),
  );
});

test.each(salts)("boilingPoint rises with %s alone, in small steps and without a jump", (salt) => {
  let before = saturationTemperature(101325);
  for (let ratio = 0.002; ratio < 1.4; ratio += 0.002) {
    const here = boilingPoint({ [salt]: ratio }, 101325);
    expect(here).toBeGreaterThan(before);
    expect(here - before).toBeLessThan(0.15);
    before = here;
  }
});

test("boilingPoint rises with the pressure", () => {
  fc.assert(
    fc.property(bath, fc.double({ min: 65e3, max: 104e3, noNaN: true }), (brine, p) => {
      expect(boilingPoint(brine, p + 500)).toBeGreaterThan(boilingPoint(brine, p));
    }),
  );
});

test.each(salts)("boilingPoint of a trace of %s is that of water", (salt) => {
  expect(Math.abs(boilingPoint({ [salt]: 1e-9 }, 101325) - saturationTemperature(101325))).toBeLessThan(1e-6);
});

test("boilingPoint does not care whether an absent salt is written as 0", () => {
  expect(boilingPoint({ sodiumHydroxide: 0.8, sodiumNitrate: 0 }, 9e4)).toBe(
    boilingPoint({ sodiumHydroxide: 0.8 }, 9e4),
  );
  expect(boilingPoint({ sodiumNitrate: 0 }, 9e4)).toBe(saturationTemperature(9e4));
});

test("boilingPoint of hydroxide with a trace of nitrate is that of hydroxide", () => {
  const alone = boilingPoint({ sodiumHydroxide: 0.8 }, 101325);
  expect(Math.abs(boilingPoint({ sodiumHydroxide: 0.8, sodiumNitrate: 1e-9 }, 101325) - alone)).toBeLessThan(1e-6);
});

test("boilingPoint is smooth: its second difference stays even through a bath's whole range", () => {
  const step = 1e-3;
  const at = (scale: number) => boilingPoint({ sodiumHydroxide: 0.6 * scale, sodiumNitrate: 0.3 * scale }, 101325);
  for (let scale = 0.05; scale < 1.8; scale += 0.01) {
    const bend = (at(scale + step) - 2 * at(scale) + at(scale - step)) / step ** 2;
    expect(Math.abs(bend)).toBeLessThan(60);
  }
});

test.each([
  [{ sodiumHydroxide: 1 }, 4000, "invalid pressure: 4,000 Pa; 5,000 to 105,000 Pa for sodium hydroxide alone"],
  [{ sodiumHydroxide: 1 }, 105001, "invalid pressure: 105,001 Pa; 5,000 to 105,000 Pa for sodium hydroxide alone"],
  [{ sodiumNitrate: 1 }, 64999, "invalid pressure: 64,999 Pa; 65,000 to 105,000 Pa with nitrate or nitrite"],
  [{ sodiumHydroxide: 1 }, Number.NaN, "invalid pressure: NaN Pa"],
  [{}, -1, "invalid pressure: -1 Pa"],
  [{ sodiumHydroxide: -0.1 }, 1e5, "invalid sodium hydroxide: -0.1 kg per kg of water; 0 to 100"],
  [{ sodiumNitrite: Number.NaN }, 1e5, "invalid sodium nitrite: NaN kg per kg of water; 0 to 100"],
  [{ potassiumNitrate: Number.POSITIVE_INFINITY }, 1e5, "invalid potassium nitrate: Infinity"],
  [{ sodiumHydroxide: 2, sodiumNitrate: 1 }, 1e5, "brines that boil at no more than 438.15 K"],
  [{ sodiumHydroxide: 6 }, 1e5, "invalid brine: 6 kg of salt per kg of water at 100,000 Pa"],
])("boilingPoint(%j, %f) says what is wrong", (brine, p, message) => {
  expect(() => boilingPoint(brine, p)).toThrow(message);
  expect(() => boilingPoint(brine, p)).toThrow(RangeError);
});

test("boilingPoint refuses a salt it does not know", () => {
  const brine = JSON.parse('{ "caustic": 1 }');
  expect(() => boilingPoint(brine, 1e5)).toThrow("unknown salt: caustic; sodiumHydroxide, sodiumNitrate");
});

test.each([5e3, 65e3, 105e3])("boilingPoint takes the end of its range, %f Pa", (p) => {
  expect(boilingPoint({ sodiumHydroxide: 0.5 }, p)).toBeGreaterThan(saturationTemperature(p));
});
