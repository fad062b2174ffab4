import { expect, test } from "vitest";
import { saturationTemperature } from "../../../lib/physics/saturationTemperature.ts";
import { thermometerOffset } from "../../../lib/physics/thermometerOffset.ts";
import { thermometerKinds, thermometerTolerance } from "../../../lib/physics/thermometerTolerance.ts";

test.each(thermometerKinds)(
  "thermometerTolerance(%s) at 292 °F is above 0, below 3 K, and names its source",
  (kind) => {
    const { limit, standardUncertainty, source } = thermometerTolerance(kind, 417.594);
    expect(limit).toBeGreaterThan(0);
    expect(limit).toBeLessThan(3);
    expect(standardUncertainty).toBeLessThan(limit);
    expect(source).not.toBe("");
  },
);

test("thermometerTolerance refuses what it does not know", () => {
  expect(() => thermometerTolerance(JSON.parse('"glass"'), 400)).toThrow("unknown thermometer: glass; type K");
  expect(() => thermometerTolerance("type T", 700)).toThrow(
    "invalid temperature: 700 K; 273.15 to 643.15 K for type T",
  );
  expect(() => thermometerTolerance("type K", Number.NaN)).toThrow("invalid temperature: NaN K");
});

test("thermometerOffset is the reading less the boiling point", () => {
  const found = thermometerOffset({ read: 374.15, pressure: 101325 });
  expect(found.boilingPoint).toBe(saturationTemperature(101325));
  expect(found.offset).toBeCloseTo(374.15 - saturationTemperature(101325), 12);
});

test("thermometerOffset is the less sure the less is known of the pressure, and the further off it is used", () => {
  const station = thermometerOffset({ read: 370, pressure: 89874.6 }).standardUncertainty;
  const weather = thermometerOffset({ read: 370, barometer: 101325, altitude: 1000 }).standardUncertainty;
  const altitude = thermometerOffset({ read: 370, altitude: 1000 }).standardUncertainty;
  const far = thermometerOffset({ read: 370, altitude: 1000, at: 417.6 }).standardUncertainty;
  expect([station, weather, altitude, far]).toEqual([station, weather, altitude, far].sort((a, b) => a - b));
  expect(station).toBeGreaterThanOrEqual(0.3);
});

test("thermometerOffset takes stated uncertainties", () => {
  const found = thermometerOffset({ read: 373, pressure: 1e5, readUncertainty: 0.1, pressureUncertainty: 0 });
  expect(found.standardUncertainty).toBeCloseTo(0.1, 12);
});

test.each([
  [{ read: 373 }, "missing pressure"],
  [{ read: 373, barometer: 1e5 }, "missing altitude"],
  [{ read: 300, pressure: 1e5 }, "invalid reading in boiling water: 300 K; within 20 K"],
  [{ read: Number.NaN, pressure: 1e5 }, "invalid reading in boiling water: NaN K"],
  [{ read: 373, pressure: 1e5, readUncertainty: -1 }, "invalid reading uncertainty: -1; 0 or more"],
  [{ read: 373, pressure: 1e5, at: Number.NaN }, "invalid temperature: NaN K"],
])("thermometerOffset(%j) says what is wrong", (check, message) => {
  expect(() => thermometerOffset(check)).toThrow(message);
});
