import { expect, test } from "vitest";
import { fromUnit, inUnit, type Kind, unit, waterByVolume } from "../../lib/measure/index.ts";

// NIST Special Publication 811 (2008), appendix B.8: factors printed in bold there are exact, the others are given to
// seven digits. From memory of the printed table, each recomputed from the definitions below.
const exactFactors: readonly (readonly [spelling: string, SI: number])[] = [
  ["lb", 0.45359237],
  ["in", 0.0254],
  ["ft", 0.3048],
  ["ft2", 0.09290304],
  ["in2", 0.00064516],
  ["in3", 1.6387064e-5],
  ["gal", 3.785411784e-3],
  ["h", 3600],
  ["day", 86400],
  ["kWh", 3.6e6],
  ["BTU", 1055.05585262],
  ["bar", 1e5],
  ["mbar", 100],
];

test.each(exactFactors)("unit(%s) is exact, as NIST SP 811 B.8 has it", (spelling, SI) => {
  expect(unit(spelling).factor / SI).toBeCloseTo(1, 14);
});

const roundedFactors: readonly (readonly [spelling: string, SI: number])[] = [
  ["oz", 2.834952e-2],
  ["fl oz", 2.957353e-5],
  ["cup", 2.365882e-4],
  ["pt", 4.731765e-4],
  ["qt", 9.463529e-4],
  ["tbsp", 1.478676e-5],
  ["tsp", 4.928922e-6],
  ["ft3", 2.831685e-2],
  ["psi", 6.894757e3],
  ["inHg", 3.386389e3],
  ["mmHg", 1.333224e2],
  ["inH2O", 2.490889e2],
  ["BTU/h", 2.930711e-1],
  ["lb/gal", 1.198264e2],
  ["lb/ft3", 1.601846e1],
  ["gal/min", 6.30902e-5],
  ["BTU/(h ft2)", 3.154591],
  ["lb/h", 1.259979e-4],
];

test.each(roundedFactors)("unit(%s) agrees with NIST SP 811 B.8 to its seven digits", (spelling, SI) => {
  expect(Math.abs(unit(spelling).factor / SI - 1)).toBeLessThan(5e-7);
});

// NIST Handbook 44, appendix C, "General tables of units of measurement": liquid measure, avoirdupois weight.
const handbook44: readonly (readonly [count: number, small: string, large: string])[] = [
  [3, "tsp", "tbsp"],
  [2, "tbsp", "fl oz"],
  [8, "fl oz", "cup"],
  [2, "cup", "pt"],
  [16, "fl oz", "pt"],
  [2, "pt", "qt"],
  [4, "qt", "gal"],
  [128, "fl oz", "gal"],
  [231, "in3", "gal"],
  [16, "oz", "lb"],
  [12, "in", "ft"],
  [1728, "in3", "ft3"],
];

test.each(handbook44)("%d %s are one %s, as NIST Handbook 44, appendix C has it", (count, small, large) => {
  expect((count * unit(small).factor) / unit(large).factor).toBeCloseTo(1, 14);
});

// SI Brochure, 9th edition (2019), 2.3.1: t/°C = T/K − 273.15. NIST SP 811, B.8: T/K = (t/°F + 459.67)/1.8.
const scalePoints: readonly (readonly [number: number, name: string, kelvin: number])[] = [
  [0, "°C", 273.15],
  [100, "°C", 373.15],
  [32, "°F", 273.15],
  [212, "°F", 373.15],
  [-40, "°F", 233.15],
  [-459.67, "°F", 0],
];

test.each(scalePoints)("fromUnit(%d %s) is %d K (SI Brochure 2.3.1, NIST SP 811 B.8)", (number, name, kelvin) => {
  expect(fromUnit(number, name)).toBeCloseTo(kelvin, 10);
  expect(inUnit(kelvin, { temperature: 1, point: true }, name)).toBeCloseTo(number, 10);
});

test("a difference of 9 °F is 5 K (NIST SP 811 B.8: 1 °F of interval is 1/1.8 K)", () => {
  expect(fromUnit(9, "°F", { temperature: 1 })).toBeCloseTo(5, 14);
});

test("waterByVolume is the density of water at 20 °C (CIPM formula, Tanaka et al. 2001: 998.207 kg/m³)", () => {
  expect(Math.abs(waterByVolume / 998.207 - 1)).toBeLessThan(1e-4);
});

test("a US gallon of water at 20 °C weighs 8.33 lb (common practice, no source)", () => {
  expect(inUnit(fromUnit(1, "gal", { mass: 1 }), { mass: 1 }, "lb")).toBeCloseTo(8.33, 2);
});

test("the kinds of temperature and of ounces stay apart", () => {
  const ounces: readonly (readonly [Kind, string])[] = [
    ["mass", "oz"],
    ["volume", "fl oz"],
    ["water", "fl oz"],
  ];
  for (const [kind, symbol] of ounces) expect(unit("oz", kind).symbol).toBe(symbol);
});
