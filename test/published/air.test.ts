import { expect, test } from "vitest";
import { barometerToPressure } from "../../lib/physics/barometerToPressure.ts";
import { standardAltitude } from "../../lib/physics/standardAltitude.ts";
import { standardPressure } from "../../lib/physics/standardPressure.ts";

// ISO 2533:1975 and ICAO Doc 7488, hPa by geopotential altitude (from memory; 1000 m, 898.75 hPa, also read in a
// published atmosphere calculator's page; -500, 1000 and 4000 m in another program's checks).
const atmosphere = [
  [-500, 1074.78],
  [0, 1013.25],
  [1000, 898.746],
  [2000, 794.952],
  [3000, 701.085],
  [4000, 616.402],
  [5000, 540.199],
  [11000, 226.321],
] as const;

test.each(atmosphere)("standardPressure(%f m) is the standard atmosphere's %f hPa", (altitude, hectopascal) => {
  expect(Math.abs(standardPressure(altitude) / 100 / hectopascal - 1)).toBeLessThan(5e-6);
});

test.each(atmosphere)("standardAltitude undoes the standard atmosphere at %f m", (altitude, hectopascal) => {
  expect(Math.abs(standardAltitude(Math.min(Math.max(hectopascal * 100, 22632), 107478)) - altitude)).toBeLessThan(0.2);
});

// US National Weather Service's altimeter setting, with the 0.3 hPa that it takes off for the instrument (read in two
// public weather programs): A = (p - 0.3) (1 + 8.42288069e-5 h / (p - 0.3)^0.190284)^(1/0.190284).
// Its exponent differs from the standard atmosphere's in the fifth digit: 0.15 hPa at 3,100 m.
test.each([
  [1013.25, 0],
  [980, 300],
  [840, 1609],
  [750, 2500],
  [690, 3100],
])("barometerToPressure undoes the weather service's altimeter setting of %f hPa at %f m", (station, altitude) => {
  const n = 0.190284;
  const bare = station - 0.3;
  const setting = bare * (1 + (8.42288069e-5 * altitude) / bare ** n) ** (1 / n);
  expect(Math.abs(barometerToPressure(setting * 100, altitude) / 100 - bare)).toBeLessThan(0.15);
});

// Pilot's Handbook of Aeronautical Knowledge, FAA-H-8083-25 (from memory): about 1 inHg for each 1,000 ft low down.
test("barometerToPressure takes about 1 inHg off for 1,000 ft", () => {
  const inches = (101325 - barometerToPressure(101325, 304.8)) / 3386.389;
  expect(Math.abs(inches - 1)).toBeLessThan(0.1);
});
