import fc from "fast-check";
import { unit as oracle } from "mathjs";
import { expect, test } from "vitest";
import { findUnit, type Kind, unit, unitSpellings, unitTable } from "../../../lib/measure/index.ts";

// mathjs is the oracle here: ours on the left, its name for the same unit on the right. Left out: °F, °C and K (its
// temperature differences are wrong), spoons (its are metric), inHg and inH₂O (it has none), $ and %.
const pairs: readonly (readonly [ours: string, theirs: string])[] = [
  ["lb", "lbm"],
  ["oz", "ounce"],
  ["g", "gram"],
  ["kg", "kg"],
  ["in", "inch"],
  ["ft", "foot"],
  ["m", "m"],
  ["cm", "cm"],
  ["mm", "mm"],
  ["ft²", "sqft"],
  ["in²", "sqin"],
  ["m²", "m2"],
  ["fl oz", "floz"],
  ["cup", "cup"],
  ["pt", "pint"],
  ["qt", "quart"],
  ["gal", "gallon"],
  ["ml", "ml"],
  ["l", "L"],
  ["m³", "m3"],
  ["in³", "cuin"],
  ["ft³", "cuft"],
  ["s", "s"],
  ["min", "minute"],
  ["h", "hour"],
  ["day", "day"],
  ["Pa", "Pa"],
  ["hPa", "hPa"],
  ["mbar", "mbar"],
  ["kPa", "kPa"],
  ["bar", "bar"],
  ["psi", "psi"],
  ["mmHg", "mmHg"],
  ["J", "J"],
  ["kJ", "kJ"],
  ["MJ", "MJ"],
  ["BTU", "BTU"],
  ["kWh", "kWh"],
  ["W", "W"],
  ["kW", "kW"],
];
const without = ["°F", "°C", "K", "tbsp", "tsp", "inHg", "inH₂O", "BTU/h", "$", "%"];

// mathjs takes 1 mmHg = 133.322 Pa, ours is 133.3224.
const tolerance = 4e-6;

test("every unit of the table is checked against mathjs or is named as left out", () => {
  const known = new Set([...pairs.map(([ours]) => ours), ...without]);
  expect(unitTable.map(({ symbol }) => symbol).filter((symbol) => !known.has(symbol))).toEqual([]);
});

test("unit agrees with mathjs for any number in any unit", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...pairs),
      fc.double({ min: 1e-6, max: 1e9, noNaN: true }),
      ([ours, theirs], number) => {
        const SI: number = oracle(number, theirs).toSI().toNumber();
        expect(Math.abs((number * unit(ours).factor) / SI - 1)).toBeLessThan(ours === "mmHg" ? tolerance : 1e-9);
      },
    ),
  );
});

test("unit agrees with mathjs for any quotient of two units", () => {
  fc.assert(
    fc.property(fc.constantFrom(...pairs), fc.constantFrom(...pairs), ([a, theirA], [b, theirB]) => {
      const ratio = oracle(1, theirA).toSI().toNumber() / oracle(1, theirB).toSI().toNumber();
      expect(Math.abs(unit(`${a}/${b}`).factor / ratio - 1)).toBeLessThan(2 * tolerance);
    }),
  );
});

test("unit gives the spelling of its table for all spellings, and reads it again", () => {
  for (const spelling of unitSpellings) {
    const once = unit(spelling);
    expect(unit(once.symbol), spelling).toEqual(once);
  }
});

test("no spelling names two units", () => {
  const seen = new Map<string, string>();
  for (const { symbol, names } of unitTable) {
    for (const name of [symbol.toLowerCase(), ...names]) {
      expect(seen.get(name) ?? symbol, name).toBe(symbol);
      seen.set(name, symbol);
    }
  }
});

const spellings: readonly (readonly [text: string, kind: Kind, symbol: string])[] = [
  ["pounds", "mass", "lb"],
  ["LBS.", "mass", "lb"],
  ["#", "mass", "lb"],
  ["Fl. Oz.", "volume", "fl oz"],
  ["fl  oz", "volume", "fl oz"],
  ["floz", "volume", "fl oz"],
  ["oz", "mass", "oz"],
  ["oz", "water", "fl oz"],
  ["ounces", "volume", "fl oz"],
  ["oz/min", "water flow", "fl oz/min"],
  ["Litres", "volume", "l"],
  ["L", "volume", "l"],
  ["c", "volume", "cup"],
  ["c", "temperature", "°C"],
  ["m", "length", "m"],
  ["m", "time", "min"],
  ["deg F", "temperature", "°F"],
  ["degrees f", "temperature", "°F"],
  ["ºF", "temperature", "°F"],
  ["℉", "temperature", "°F"],
  ["F", "temperature", "°F"],
  ['"', "length", "in"],
  ["”", "length", "in"],
  ["'", "length", "ft"],
  ['" Hg', "pressure", "inHg"],
  ["in. of mercury", "pressure", "inHg"],
  ["BTU/hr", "power", "BTU/h"],
  ["btu per hour", "power", "BTU/h"],
  ["BTU/h ft2", "heat flux", "BTU/(h ft²)"],
  ["BTU/(h ft^2)", "heat flux", "BTU/(h ft²)"],
  ["BTU/h/ft²", "heat flux", "BTU/h/ft²"],
  ["fl oz per minute", "volume flow", "fl oz/min"],
  ["lbs per gallon", "density", "lb/gal"],
  ["F/min", "temperature rate", "°F/min"],
  ["1/h", "rate", "1/h"],
  ["kg/kg", "number", "kg/kg"],
  ["kW h", "energy", "kW h"],
  ["kg·m^2/s^2", "energy", "kg m²/s²"],
  ["m s^-1", "number", "m s^-1"],
];

test.each(spellings)("unit(%s) of %s is %s", (text, kind, symbol) => {
  expect(unit(text, kind).symbol).toBe(symbol);
  expect(unit(symbol, kind).factor).toBeCloseTo(unit(text, kind).factor, 15);
});

const none = [
  "",
  " ",
  "mJ",
  "k",
  "constructor",
  "__proto__",
  "toString",
  "lb/",
  "/lb",
  "(lb",
  "lb)",
  "lb^",
  "gal 1 qt",
  "5",
  "1",
  "x",
  "°",
  "lb//gal",
  "💧",
];

test.each(none)("findUnit(%j) is undefined", (text) => {
  expect(findUnit(text)).toBeUndefined();
});

test("findUnit answers any text, quickly", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary", maxLength: 400 }), (text) => {
      const found = findUnit(text);
      if (found) expect(Number.isFinite(found.factor) && found.factor > 0).toBe(true);
    }),
  );
  const began = performance.now();
  for (const text of ["(".repeat(60), "lb/".repeat(20), "lb ".repeat(20), "in".repeat(30), "((((lb))))".repeat(6)])
    findUnit(text);
  expect(performance.now() - began).toBeLessThan(250);
});

test("unit names the text that is none", () => {
  expect(() => unit("galons")).toThrow("unknown unit: galons");
});
