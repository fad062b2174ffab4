import fc from "fast-check";
import { expect, test } from "vitest";
import {
  clockUnit,
  type Dimension,
  defaultDoubts,
  defaultUncertainty,
  digits,
  doubtOf,
  exact,
  formatDuration,
  formatLimit,
  formatQuantity,
  formatWithSpread,
  fractionDigits,
  fromUnit,
  inUnit,
  type Kind,
  kindFacts,
  kindOf,
  kinds,
  measuredValue,
  unit,
  unitFor,
  waterByVolume,
} from "../../../lib/measure/index.ts";

const mass: Dimension = { mass: 1 };
const point: Dimension = { temperature: 1, point: true };
const plain = (text: string) => text.replaceAll("\u00a0", " ");

const spreads: readonly (readonly [value: number, half: number, text: string])[] = [
  [10.9, 0.2, "10.9 ±0.2 kg"],
  [10.9, 0.31, "10.9 ±0.3 kg"],
  [10.9, 0.34, "10.9 ±0.4 kg"],
  [4.57, 0.14, "4.57 ±0.14 kg"],
  [0.7, 0.098, "0.70 ±0.10 kg"],
  [123, 78, "120 ±80 kg"],
  [1234, 588, "1,200 ±600 kg"],
  [-5, 2, "\u22125 ±2 kg"],
  [-0.001, 2, "0 ±2 kg"],
  [0.00123, 0.0002, "0.0012 ±0.0002 kg"],
];

test.each(spreads)("formatWithSpread of %d with a half-width of %d is %s", (value, half, text) => {
  expect(plain(formatWithSpread(measuredValue(value, half / 1.96, mass, "s"), "kg").text)).toBe(text);
});

test("formatWithSpread never shows a spread more than a twentieth too narrow", () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (half) => {
      const shown = formatWithSpread(measuredValue(0, half / 1.96, mass, "s"), "kg");
      const read = Number(shown.spread.replace("±", "").replaceAll(",", ""));
      expect(read).toBeGreaterThanOrEqual(0.9499 * half);
      expect(read).toBeLessThanOrEqual(1.6 * half);
    }),
  );
});

test("formatWithSpread stacks unequal sides and gives the ends", () => {
  const shown = formatWithSpread(measuredValue(36, 0.5, mass, "s", [34.5, 36.5]), "kg");
  expect(shown).toMatchObject({ number: "36.0", spread: "+0.5/\u22121.5", low: "34.5", high: "36.5" });
  expect(shown.sides).toEqual({ up: "+0.5", down: "\u22121.5" });
});

test("formatWithSpread says exactly, and writes an endless side as such", () => {
  expect(plain(formatWithSpread(exact(2.5, mass), "kg").text)).toBe("2.5 kg exactly");
  const open = measuredValue(2, 0.5, mass, "s", [1, Number.POSITIVE_INFINITY]);
  expect(formatWithSpread(open, "kg")).toMatchObject({ spread: "+∞/\u22121.0", high: "∞" });
});

test("formatWithSpread shows temperatures on the scale, with the spread as a difference", () => {
  const shown = formatWithSpread(measuredValue(fromUnit(292, "°F"), 1 / 1.8, point, "s"), "°F");
  expect(shown.text).toBe("292\u00a0±2\u00a0°F");
  expect(shown.low).toBe("290");
});

test("formatWithSpread writes fractions, times and metric thousands where asked", () => {
  const board = measuredValue(18.5 * 0.0254, 0.0008, { length: 1 }, "s");
  expect(plain(formatWithSpread(board, "in", { fractions: 16 }).text)).toBe("18½ ±1/16 in");
  expect(plain(formatWithSpread(measuredValue(750, 7.5, { time: 1 }, "s"), clockUnit).text)).toBe("12:30 ±15 s");
  expect(plain(formatWithSpread(measuredValue(3750, 60, { time: 1 }, "s"), clockUnit).text)).toBe("1:02:30 ±1:58");
  const heavy = measuredValue(12345, 100, mass, "s");
  expect(formatWithSpread(heavy, "kg", { system: "metric" }).number).toBe("12\u202f300");
});

test("formatLimit takes the safe end and rounds to the safe side", () => {
  const value = measuredValue(10.93, 0.1, mass, "s");
  expect(plain(formatLimit(value, "kg", "at most"))).toBe("10.7 kg");
  expect(plain(formatLimit(value, "kg", "at least"))).toBe("11.2 kg");
  expect(plain(formatLimit(exact(0.3, mass), "kg", "at most"))).toBe("0.30 kg");
});

const quantities: readonly (readonly [si: number, unit: string, dimension: Dimension | undefined, text: string])[] = [
  [417.594444, "°F", undefined, "292 °F"],
  [5, "°F", { temperature: 1 }, "9 °F"],
  [10.886, "lb", mass, "24 lb"],
  [0.70848713, "fl oz", mass, "24 fl oz"],
  [1.2004250382, "lb/gal", {}, "10 lb/gal"],
  [18.5, "$", undefined, "$18.50"],
  [-18.5, "$", undefined, "\u2212$18.50"],
  [0.75, "%", undefined, "75 %"],
  [12345.6, "kg", mass, "12,346 kg"],
  [725, "m:ss", { time: 1 }, "12:05"],
];

test.each(quantities)("formatQuantity(%d, %s, %j) is %s", (si, name, dimension, text) => {
  expect(plain(formatQuantity(si, name, dimension ? { dimension } : {}))).toBe(text);
});

test("formatQuantity refuses what is no number, no unit or the wrong unit", () => {
  expect(() => formatQuantity(Number.NaN, "kg")).toThrow("invalid number: NaN");
  expect(() => formatQuantity(1, "stone")).toThrow("unknown unit: stone");
  expect(() => formatQuantity(1, "min", { dimension: mass })).toThrow("invalid unit: min; a unit of a weight expected");
});

test("digits, fractionDigits and formatDuration keep their signs and carries", () => {
  expect(digits(-0.04, 1)).toBe("0.0");
  expect(digits(1234567, -3)).toBe("1,235,000");
  expect(digits(1234.5, 1, "metric")).toBe("1234.5");
  expect(fractionDigits(2.999, 16)).toBe("3");
  expect(fractionDigits(-0.75, 16)).toBe("\u2212¾");
  expect(fractionDigits(5.1875, 16)).toBe("5 3/16");
  expect(() => fractionDigits(1, 10)).toThrow("invalid parts: 10");
  expect(formatDuration(59.6)).toBe("1:00");
  expect(formatDuration(-65)).toBe("\u22121:05");
});

test("inUnit and fromUnit undo each other in the usual units of every kind", () => {
  fc.assert(
    fc.property(fc.constantFrom(...kinds.keys()), fc.double({ min: -1e6, max: 1e6, noNaN: true }), (kind, si) => {
      const { dimension } = kindFacts(kind);
      for (const system of ["US", "metric"] as const) {
        const again = fromUnit(inUnit(si, dimension, unitFor(kind, system)), unitFor(kind, system), dimension);
        expect(Math.abs(again - si)).toBeLessThan(1e-9 * Math.max(1, Math.abs(si)));
      }
    }),
  );
});

test("a liquid measure shows a mass as the water it holds, and nothing else does", () => {
  expect(inUnit(waterByVolume / 1000, mass, "l")).toBeCloseTo(1, 14);
  expect(inUnit(1, { mass: 1, time: -1 }, "l/h")).toBeCloseTo(3600e3 / waterByVolume, 9);
  expect(() => inUnit(1, mass, "ft")).toThrow("a unit of a weight expected");
  expect(() => inUnit(1, { length: 3 }, "lb")).toThrow(TypeError);
});

const named: readonly (readonly [text: string, kind: Kind])[] = [
  ["lb", "mass"],
  ["fl oz", "volume"],
  ["%", "share"],
  ["min", "time"],
  ["inHg", "pressure"],
  ["°F", "temperature difference"],
];

test.each(named)("kindOf(%s) is %s", (text, kind) => {
  expect(kindOf(unit(text))).toBe(kind);
});

test("defaultUncertainty knows every way of knowing every kind", () => {
  for (const known of new Set(defaultDoubts.map((row) => row.known))) {
    for (const kind of kinds.keys()) expect(defaultUncertainty(known, kind, 300)).toBeGreaterThanOrEqual(0);
  }
  expect(defaultUncertainty("measured", "temperature", 400)).toBeCloseTo(2 / 1.8, 12);
  expect(defaultUncertainty("weighed", "mass", 0)).toBeCloseTo(0.45359237 / 32, 12);
  expect(doubtOf("guessed", "mass").says).toContain("15 %");
  expect(() => defaultUncertainty("heard" as "guessed", "mass", 1)).toThrow("unknown way of knowing: heard");
});
