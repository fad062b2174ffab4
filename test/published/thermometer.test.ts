import { expect, test } from "vitest";
import { thermometerOffset } from "../../lib/physics/thermometerOffset.ts";
import { thermometerTolerance } from "../../lib/physics/thermometerTolerance.ts";

// ASTM E230/E230M (ANSI MC96.1) and IEC 60584-2, tolerances of new wire (read at thermocouple makers' tables), K.
test.each([
  ["type K", 144.44, 2.2],
  ["type K special", 144.44, 1.1],
  ["type N", 144.44, 2.2],
  ["type J", 144.44, 2.2],
  ["type J special", 144.44, 1.1],
  ["type T", 144.44, 1.083],
  ["type T special", 144.44, 0.578],
  ["type E", 144.44, 1.7],
  ["type E special", 144.44, 1.0],
  ["type K class 1", 144.44, 1.5],
  ["type K class 2", 144.44, 2.5],
  ["type K", 500, 3.75],
  ["type K special", 500, 2.0],
] as const)("thermometerTolerance(%s) at %f °C is %f K", (kind, t, limit) => {
  expect(thermometerTolerance(kind, t + 273.15).limit).toBeCloseTo(limit, 3);
});

// IEC 60751, platinum, class A 0.15 + 0.002 t and class B 0.3 + 0.005 t (from memory): the table's values at 100 °C.
test.each([
  ["platinum class A", 0.35],
  ["platinum class B", 0.8],
] as const)("thermometerTolerance(%s) at 100 °C is %f K", (kind, limit) => {
  expect(thermometerTolerance(kind, 373.15).limit).toBeCloseTo(limit, 9);
});

// JCGM 100:2008, 4.3.7: half-width over the square root of 3.
test("thermometerTolerance gives the standard uncertainty of a rectangle", () => {
  expect(thermometerTolerance("type K", 400).standardUncertainty).toBeCloseTo(1.270171, 6);
});

// Hypsometer table of "Weather Warnings for Watchers" (Victorian, read): water boils at 203.09 °F under 25 inHg. A
// thermometer that reads 206 °F there reads 2.9 °F high.
test("thermometerOffset in boiling water at 25 inHg", () => {
  const { offset } = thermometerOffset({ read: (206 + 459.67) / 1.8, pressure: 25 * 3386.389 });
  expect(Math.abs(offset * 1.8 - 2.91)).toBeLessThan(0.1);
});
