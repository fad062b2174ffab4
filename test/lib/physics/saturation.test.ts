import fc from "fast-check";
import { expect, test } from "vitest";
import { saturationPressure } from "../../../lib/physics/saturationPressure.ts";
import { saturationTemperature } from "../../../lib/physics/saturationTemperature.ts";
import { steamEnthalpy } from "../../../lib/physics/steamEnthalpy.ts";
import { waterDensity } from "../../../lib/physics/waterDensity.ts";
import { waterEnthalpy } from "../../../lib/physics/waterEnthalpy.ts";

test("saturationTemperature undoes saturationPressure", () => {
  fc.assert(
    fc.property(fc.double({ min: 273.15, max: 647, noNaN: true }), (T) => {
      expect(Math.abs(saturationTemperature(Math.max(saturationPressure(T), 611.213)) - T)).toBeLessThan(1e-4);
    }),
  );
});

test.each([273, 648, Number.NaN, Number.POSITIVE_INFINITY, -1])("saturationPressure(%f) is out of range", (T) => {
  expect(() => saturationPressure(T)).toThrow("273.15 to 647.096 K");
});

test.each([611, 2.3e7, Number.NaN, 0])("saturationTemperature(%f) is out of range", (p) => {
  expect(() => saturationTemperature(p)).toThrow("611.213 to 22,064,000 Pa");
});

test.each([200, 647.1, Number.NaN])("waterDensity and waterEnthalpy(%f) are out of range", (T) => {
  expect(() => waterDensity(T)).toThrow("invalid temperature");
  expect(() => waterEnthalpy(T)).toThrow("invalid temperature");
});

test.each([
  [370, 101325, "for steam at 370 K"],
  [400, 0, "above 0"],
  [400, Number.NaN, "invalid pressure: NaN Pa"],
  [Number.NaN, 1000, "invalid temperature: NaN K"],
])("steamEnthalpy(%f, %f) says what is wrong", (T, p, message) => {
  expect(() => steamEnthalpy(T, p)).toThrow(message);
});
