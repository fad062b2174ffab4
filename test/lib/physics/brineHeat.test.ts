import fc from "fast-check";
import { expect, test } from "vitest";
import { boilingPoint } from "../../../lib/physics/boilingPoint.ts";
import { brineEnthalpy } from "../../../lib/physics/brineEnthalpy.ts";
import { brineHeatCapacity } from "../../../lib/physics/brineHeatCapacity.ts";
import { evaporationHeat } from "../../../lib/physics/evaporationHeat.ts";
import { saturationTemperature } from "../../../lib/physics/saturationTemperature.ts";
import { steamEnthalpy } from "../../../lib/physics/steamEnthalpy.ts";
import { waterEnthalpy } from "../../../lib/physics/waterEnthalpy.ts";
import { waterInBrineEnthalpy } from "../../../lib/physics/waterInBrineEnthalpy.ts";

const bath = fc.record({
  sodiumHydroxide: fc.double({ min: 0, max: 1, noNaN: true }),
  sodiumNitrate: fc.double({ min: 0, max: 0.4, noNaN: true }),
});

test("brineHeatCapacity is the rise of brineEnthalpy over 1 K", () => {
  fc.assert(
    fc.property(bath, fc.double({ min: 370, max: 430, noNaN: true }), (brine, T) => {
      const rise = brineEnthalpy(brine, T + 0.5) - brineEnthalpy(brine, T - 0.5);
      expect(Math.abs(brineHeatCapacity(brine, T) / rise - 1)).toBeLessThan(1e-4);
    }),
  );
});

test("boiling water off closes: brine before = brine after + steam - evaporationHeat, to second order", () => {
  fc.assert(
    fc.property(bath, (brine) => {
      const p = 101325;
      const T = boilingPoint(brine, p);
      const off = 1e-3;
      const after = {
        sodiumHydroxide: brine.sodiumHydroxide / (1 - off),
        sodiumNitrate: brine.sodiumNitrate / (1 - off),
      };
      const salt = brine.sodiumHydroxide + brine.sodiumNitrate;
      const heat =
        brineEnthalpy(after, T) * (1 - off + salt) + off * steamEnthalpy(T, p) - brineEnthalpy(brine, T) * (1 + salt);
      expect(Math.abs(heat / off / evaporationHeat(brine, p) - 1)).toBeLessThan(1e-3);
    }),
  );
});

// Thermodynamics, not our figures: the boiling curve's slope against pressure fixes the heat (Clapeyron). Steam is
// taken as 0.988 of an ideal gas. Hydroxide alone within 2 %, with nitrate within 4 %: the enthalpy has no heat of
// mixing for nitrate.
test.each([
  [{}, 0.01],
  [{ sodiumHydroxide: 0.25 }, 0.02],
  [{ sodiumHydroxide: 0.5 }, 0.02],
  [{ sodiumHydroxide: 0.8 }, 0.02],
  [{ sodiumHydroxide: 1.2 }, 0.02],
  [{ sodiumHydroxide: 0.6, sodiumNitrate: 0.3 }, 0.04],
  [{ sodiumHydroxide: 0.89, sodiumNitrate: 0.445 }, 0.04],
  [{ sodiumHydroxide: 0.96, sodiumNitrate: 0.24 }, 0.04],
  [{ sodiumHydroxide: 0.9, sodiumNitrite: 0.3 }, 0.04],
])("evaporationHeat(%j) agrees with Clapeyron on the boiling curve within %f", (brine, within) => {
  for (const p of [70e3, 85e3, 101325]) {
    const T = boilingPoint(brine, p);
    const dT = boilingPoint(brine, p * 1.001) - boilingPoint(brine, p * 0.999);
    const clapeyron = (0.988 * 461.526 * T * T * Math.log(1.001 / 0.999)) / dT;
    expect(Math.abs(evaporationHeat(brine, p) / clapeyron - 1)).toBeLessThan(within);
  }
});

test("without salt every heat is that of water, exactly", () => {
  const T = 360;
  expect(brineEnthalpy({}, T)).toBe(waterEnthalpy(T));
  expect(waterInBrineEnthalpy({}, T)).toBeCloseTo(waterEnthalpy(T), 5);
  const boils = saturationTemperature(9e4);
  expect(evaporationHeat({}, 9e4)).toBeCloseTo(steamEnthalpy(boils, 9e4) - waterEnthalpy(boils), 4);
});

test.each(["sodiumHydroxide", "sodiumNitrate", "sodiumNitrite", "potassiumNitrate"])(
  "a trace of %s changes no heat by more than a trace",
  (salt) => {
    const trace = { [salt]: 1e-7 };
    expect(Math.abs(brineHeatCapacity(trace, 370) - brineHeatCapacity({}, 370))).toBeLessThan(0.01);
    expect(Math.abs(evaporationHeat(trace, 1e5) - evaporationHeat({}, 1e5))).toBeLessThan(10);
  },
);

test.each([
  [{}, 273, "invalid temperature: 273 K; 273.15 to 473.15 K"],
  [{}, Number.NaN, "invalid temperature: NaN K"],
  [{ sodiumHydroxide: 1 }, 290, "invalid brine: 50 wt% sodium hydroxide; 0 to 46 wt% at 290 K"],
  [{ sodiumHydroxide: 4 }, 420, "invalid brine: 80 wt% sodium hydroxide; 0 to 78 wt% at 420 K"],
  [{ sodiumNitrate: -1 }, 420, "invalid sodium nitrate: -1 kg per kg of water"],
])("brineEnthalpy and brineHeatCapacity(%j, %f) say what is wrong", (brine, T, message) => {
  expect(() => brineEnthalpy(brine, T)).toThrow(message);
  expect(() => brineHeatCapacity(brine, T)).toThrow(message);
});

test.each([273.15, 473.15])("brineHeatCapacity({}, %f) takes the end of its range", (T) => {
  expect(brineHeatCapacity({}, T)).toBeGreaterThan(4100);
});
