import fc from "fast-check";
import { expect, test } from "vitest";
import { barometerToPressure } from "../../../lib/physics/barometerToPressure.ts";
import { standardAltitude } from "../../../lib/physics/standardAltitude.ts";
import { standardPressure } from "../../../lib/physics/standardPressure.ts";

test("standardAltitude undoes standardPressure", () => {
  fc.assert(
    fc.property(fc.double({ min: -490, max: 10990, noNaN: true }), (altitude) => {
      expect(Math.abs(standardAltitude(standardPressure(altitude)) - altitude)).toBeLessThan(1e-6);
    }),
  );
});

test("barometerToPressure at one standard atmosphere is standardPressure, at sea level the reading itself", () => {
  expect(barometerToPressure(101325, 1234)).toBeCloseTo(standardPressure(1234), 6);
  expect(barometerToPressure(99000, 0)).toBeCloseTo(99000, 6);
});

test.each([-501, 11001, Number.NaN])("standardPressure(%f) is out of range", (altitude) => {
  expect(() => standardPressure(altitude)).toThrow("-500 to 11,000 m");
});

test.each([
  [29.92, 0, "invalid barometer reading: 29.92 Pa; 90,000 to 110,000 Pa"],
  [101325, 6000, "invalid altitude: 6,000 m; -500 to 5,000 m"],
  [Number.NaN, 0, "invalid barometer reading: NaN Pa"],
])("barometerToPressure(%f, %f) says what is wrong", (reading, altitude, message) => {
  expect(() => barometerToPressure(reading, altitude)).toThrow(message);
});
