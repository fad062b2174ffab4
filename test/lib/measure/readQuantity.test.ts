import fc from "fast-check";
import { expect, test } from "vitest";
import {
  type Expected,
  formatQuantity,
  formatWithSpread,
  isUnread,
  type Kind,
  kindFacts,
  kinds,
  measuredValue,
  type ReadOptions,
  readQuantity,
  type Unread,
  unitTable,
  type Written,
  waterByVolume,
} from "../../../lib/measure/index.ts";

const lb = 0.45359237;
const oz = lb / 16;
const gal = 3.785411784e-3;
const flOz = (gal / 128) * waterByVolume;

function written(text: string, expected: Expected, options?: ReadOptions): Written {
  const result = readQuantity(text, expected, options);
  if (isUnread(result)) throw new Error(`${text}: ${result.remedy}`);
  return result;
}

function unread(text: string, expected: Expected, options?: ReadOptions): Unread {
  const result = readQuantity(text, expected, options);
  if (!isUnread(result)) throw new Error(`${text} was read as ${result.si}`);
  return result;
}

const read: readonly (readonly [text: string, kind: Kind, unit: string | undefined, si: number, symbol: string])[] = [
  ["24 lb", "mass", undefined, 24 * lb, "lb"],
  ["24lb", "mass", undefined, 24 * lb, "lb"],
  ["24", "mass", "lb", 24 * lb, "lb"],
  ["24 kg", "mass", "lb", 24, "kg"],
  ["24#", "mass", undefined, 24 * lb, "lb"],
  ["+24 lb", "mass", undefined, 24 * lb, "lb"],
  [" 24\u00a0lb ", "mass", undefined, 24 * lb, "lb"],
  ["7 lb 4 oz", "mass", undefined, 7.25 * lb, "lb"],
  ["7lb4oz", "mass", undefined, 7.25 * lb, "lb"],
  ["7 lb, 4 oz", "mass", undefined, 7.25 * lb, "lb"],
  ["7 lb and 4 1/2 oz", "mass", undefined, 7 * lb + 4.5 * oz, "lb"],
  ["1 lb 4 oz", "water", undefined, 1.25 * lb, "lb"],
  ["3 1/2 gal", "volume", undefined, 3.5 * gal, "gal"],
  ["3-1/2 gal", "volume", undefined, 3.5 * gal, "gal"],
  ["3½ gal", "volume", undefined, 3.5 * gal, "gal"],
  ["3 ½ gal", "volume", undefined, 3.5 * gal, "gal"],
  ["2 gal 1 qt", "volume", undefined, 2.25 * gal, "gal"],
  ["5' 6\"", "length", undefined, 66 * 0.0254, "ft"],
  ["5'6½\"", "length", undefined, 66.5 * 0.0254, "ft"],
  ["5′ 6″", "length", undefined, 66 * 0.0254, "ft"],
  ["18 3/16 in", "length", undefined, 18.1875 * 0.0254, "in"],
  ["2.5 ft2", "area", undefined, 2.5 * 0.3048 ** 2, "ft²"],
  ["1/2 cup", "water", undefined, 4 * flOz, "cup"],
  ["3 cups", "water", undefined, 24 * flOz, "cup"],
  ["24 fl oz", "water", undefined, 24 * flOz, "fl oz"],
  ["24 oz", "water", undefined, 24 * flOz, "fl oz"],
  ["24", "water", "fl oz", 24 * flOz, "fl oz"],
  ["1.5 lb", "water", undefined, 1.5 * lb, "lb"],
  ["700 ml", "water", undefined, 0.7e-3 * waterByVolume, "ml"],
  ["0.7 kg", "water", undefined, 0.7, "kg"],
  ["4.5 fl oz/min", "water flow", undefined, (4.5 * flOz) / 60, "fl oz/min"],
  ["2.1 gal/h", "hourly water flow", undefined, (2.1 * 128 * flOz) / 3600, "gal/h"],
  ["10 lb/gal", "salt to water", undefined, (10 * lb) / (128 * flOz), "lb/gal"],
  ["1.2 kg/kg", "salt to water", undefined, 1.2, "kg/kg"],
  ["1.2", "salt to water", undefined, 1.2, ""],
  ["292 °F", "temperature", undefined, 417.594444444, "°F"],
  ["292°", "temperature", "°F", 417.594444444, "°F"],
  ["292F", "temperature", "°C", 417.594444444, "°F"],
  ["144,4 °C", "temperature", undefined, 417.55, "°C"],
  ["−4 °F", "temperature", undefined, 253.15, "°F"],
  ["9 °F", "temperature difference", undefined, 5, "°F"],
  ["−9 °F", "temperature difference", undefined, -5, "°F"],
  ["3 °F/min", "temperature rate", undefined, 3 / 1.8 / 60, "°F/min"],
  ["29.4 inHg", "pressure", undefined, 29.4 * 3386.389, "inHg"],
  ['29.4" Hg', "pressure", undefined, 29.4 * 3386.389, "inHg"],
  ["995 hPa", "pressure", undefined, 99500, "hPa"],
  ["30,000 BTU/h", "power", undefined, (30000 * 1055.05585262) / 3600, "BTU/h"],
  ["25 min", "time", undefined, 1500, "min"],
  ["2 m", "time", undefined, 120, "min"],
  ["1 h 20 min", "time", undefined, 4800, "h"],
  ["1h20", "time", undefined, 4800, "h"],
  ["12:30", "time", undefined, 750, "min"],
  ["1:02:05", "time", "min", 3725, "h"],
  ["1:30", "time", "h", 5400, "h"],
  ["1:30 h", "time", "min", 5400, "h"],
  ["75 %", "share", undefined, 0.75, "%"],
  ["75", "share", "%", 0.75, "%"],
  ["3/4", "share", "%", 0.75, ""],
  ["$18.50", "money", undefined, 18.5, "$"],
  ["−$18.50", "money", undefined, -18.5, "$"],
  ["18.50", "money", "$", 18.5, "$"],
  ["$1.20/lb", "price by mass", undefined, 1.2 / lb, "$/lb"],
  ["4", "number", undefined, 4, ""],
  ["1e-3 kg", "mass", undefined, 0.001, "kg"],
  ["1.5E3 g", "mass", undefined, 1.5, "g"],
];

test.each(read)("readQuantity(%j) as %s (%s) is %d in SI, in %j", (text, kind, unit, si, symbol) => {
  const result = written(text, unit === undefined ? { kind } : { kind, unit });
  expect(result.si).toBeCloseTo(si, 9);
  expect(result.unit).toBe(symbol);
  expect(result.text).toBe(text.trim());
  expect(result.dimension).toEqual(kindFacts(kind).dimension);
});

const doubts: readonly (readonly [text: string, kind: Kind, unit: string | undefined, half: number])[] = [
  ["24 ± 0.5 lb", "mass", "kg", 0.5 * lb],
  ["24 ±0.5", "mass", "lb", 0.5 * lb],
  ["24 lb ± 2 oz", "mass", "lb", 2 * oz],
  ["24 lb ± 5 %", "mass", "lb", 1.2 * lb],
  ["24 lb ± 5%", "mass", "lb", 1.2 * lb],
  ["24 lb +/- 1 lb", "mass", "lb", lb],
  ["24 lb +- 1", "mass", "lb", lb],
  ["24 lb give or take 1", "mass", "lb", lb],
  ["7 lb 4 oz ± 1", "mass", "lb", oz],
  ["292 ± 2 °F", "temperature", "°C", 2 / 1.8],
  ["144 °C ± 2 °F", "temperature", "°C", 2 / 1.8],
  ["292 ± 2", "temperature", "°F", 2 / 1.8],
  ["24 ± 1 oz", "water", "fl oz", flOz],
  ["2 lb ± 1 oz", "water", "fl oz", oz],
  ["3 cups ± 1/4 cup", "water", "fl oz", 2 * flOz],
  ["50 ± 5 %", "share", "%", 0.05],
  ["50 % ± 5 %", "share", "%", 0.05],
  ["4 ± 5 %", "number", undefined, 0.2],
  ["10 ± 1 lb/gal", "salt to water", "kg/kg", lb / (128 * flOz)],
  ["12:30 ± 10 s", "time", "min", 10],
  ["24 lb ± 0", "mass", "lb", 0],
  ["24 lb exactly", "mass", "lb", 0],
];

test.each(doubts)("readQuantity(%j) as %s (%s) has a 95 %% half-width of %d", (text, kind, unit, half) => {
  const result = written(text, unit === undefined ? { kind } : { kind, unit }, { known: "guessed" });
  expect(result.standardUncertainty).toBeCloseTo(half / 1.96, 12);
  expect(result.known).toBe("guessed");
});

test("readQuantity takes the default of the way of knowing where no ± is written", () => {
  expect(written("10 kg", { kind: "mass" }, { known: "weighed" }).standardUncertainty).toBeCloseTo(0.1, 12);
  expect(written("10 kg", { kind: "mass" }).known).toBe("measured");
  expect(written("about 10 kg", { kind: "mass" })).toMatchObject({ known: "guessed", si: 10, text: "about 10 kg" });
  expect(written("~10 kg", { kind: "mass" }, { known: "weighed" }).known).toBe("weighed");
  const doubts = [{ known: "weighed", share: 0.5, floor: 0, says: "a bad scale" }] as const;
  expect(written("10 kg", { kind: "mass" }, { known: "weighed", doubts }).standardUncertainty).toBe(5);
});

const refused: readonly (readonly [text: string, kind: Kind, at: number, remedy: string])[] = [
  ["", "mass", 0, "Write a number and its unit."],
  ["   ", "mass", 0, "Write a number and its unit."],
  ["lots", "mass", 0, "Begin with a number"],
  ["24", "mass", 2, "Write the unit too."],
  ["24 galons", "volume", 3, "Is it gal?"],
  ["  24 galons", "volume", 5, "Is it gal?"],
  ["24 constructor", "mass", 3, "no unit known here"],
  ["24 __proto__", "mass", 3, "no unit known here"],
  ["24 lb", "volume", 3, '"lb" is a weight. Write a volume'],
  ["24 fl oz", "mass", 3, '"fl oz" is a volume. Write a weight'],
  ["7 lb 4", "mass", 5, "Write the unit of 4 too."],
  ["4 oz 7 lb", "mass", 5, "from the larger unit to the smaller"],
  ["7 lb −4 oz", "mass", 5, "from the larger unit to the smaller"],
  ["10-12 lb", "mass", 0, "Two numbers stand here."],
  ["10 to 12 lb", "mass", 0, "Two numbers stand here."],
  ["1/0 lb", "mass", 0, "no number that can be used"],
  ["1,23,4 lb", "mass", 0, "no number that can be used"],
  ["1e400 lb", "mass", 0, "no number that can be used"],
  ["1e308 inHg", "pressure", 0, "no number that can be used"],
  ["24 lb ±", "mass", 7, "Write behind ±"],
  ["24 lb ± −2", "mass", 7, "without a sign of its own"],
  ["24 lb ± 2 s", "mass", 10, '"s" is a time'],
  ["292 °F ± 2 %", "temperature", 8, "in degrees"],
  ["−500 °F", "temperature", 0, "too low"],
  ["12:75", "time", 0, "at most 59"],
  ["1".repeat(201), "mass", 0, "at most 200 characters"],
];

test.each(refused)("readQuantity(%j) as %s is refused at character %d: %s", (text, kind, at, remedy) => {
  const result = unread(text, { kind });
  expect(result.at).toBe(at);
  expect(result.remedy).toContain(remedy);
  expect(result.expected).toContain(kindFacts(kind).says);
});

test("readQuantity refuses what is outside the limits of the field", () => {
  const limits = { kind: "pressure", atLeast: 60e3, atMost: 110e3 } as const;
  expect(unread("2.9 inHg", limits).remedy).toContain("too low");
  expect(unread("299 inHg", limits).remedy).toContain("too high");
  expect(written("29.9 inHg", limits).unit).toBe("inHg");
});

test("readQuantity throws for a field that is made wrongly", () => {
  expect(() => readQuantity("1", { kind: "mass", unit: "min" })).toThrow(
    "invalid default unit: min; a unit of a weight expected",
  );
  expect(() => readQuantity("1", { kind: "weight" as Kind })).toThrow("unknown kind: weight");
});

const manyKinds = fc.constantFrom(...kinds.keys());
const usualUnit = (kind: Kind) => ({ kind, unit: kindFacts(kind).US });

test("readQuantity reads its own text again to the same value, whatever it was", () => {
  const words = fc.constantFrom(
    "24",
    "1/2",
    "3½",
    "1,234.5",
    "1,5",
    "−",
    "±",
    " ",
    "lb",
    "oz",
    "fl oz",
    "gal",
    "°F",
    "min",
    ":",
    "%",
    "e3",
    "about ",
    "$",
    "/",
    "2",
    "'",
    '"',
  );
  const texts = fc.oneof(
    fc.array(words, { maxLength: 8 }).map((parts) => parts.join("")),
    fc.string({ unit: "binary", maxLength: 250 }),
  );
  fc.assert(
    fc.property(texts, manyKinds, fc.boolean(), (text, kind, decimalComma) => {
      const result = readQuantity(text, usualUnit(kind), { decimalComma });
      if (isUnread(result)) {
        expect(result.at).toBeLessThanOrEqual(text.length);
        expect(result.remedy).not.toBe("");
        return;
      }
      expect(Number.isFinite(result.si) && result.standardUncertainty >= 0).toBe(true);
      expect(readQuantity(result.text, usualUnit(kind), { decimalComma })).toEqual(result);
    }),
    { numRuns: 3000 },
  );
});

test("readQuantity answers hostile texts quickly", () => {
  const began = performance.now();
  for (const part of ["1", "1 ", "1,", "1/", "±", "lb1", "a1", "(", "\u00a0", "1 lb ", "°", "−", "1:", "$"]) {
    for (const kind of kinds.keys()) readQuantity(part.repeat(Math.floor(200 / part.length)), { kind });
  }
  expect(performance.now() - began).toBeLessThan(3000);
});

test("readQuantity reads what formatQuantity writes, for every unit", () => {
  const named = unitTable.filter(({ symbol }) => symbol !== "$").map(({ symbol }) => symbol);
  const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(number, fc.constantFrom(...named), (value, symbol) => {
      const kind =
        [...kinds.keys()].find(
          (each) => each !== "number" && !isUnread(readQuantity(`300 ${symbol}`, { kind: each })),
        ) ?? "number";
      const { dimension } = kindFacts(kind);
      const si = kind === "temperature" ? Math.abs(value) : value;
      const text = formatQuantity(si, symbol, { dimension, decimals: 12 });
      const again = written(text, { kind });
      expect(Math.abs(again.si - si)).toBeLessThan(1e-6 * Math.max(1, Math.abs(si)));
    }),
  );
});

test("readQuantity reads what formatWithSpread writes, metric thousands included", () => {
  for (const system of ["US", "metric"] as const) {
    const shown = formatWithSpread(measuredValue(12345, 100, { mass: 1 }, "scale"), "kg", { system });
    const again = written(shown.text, { kind: "mass" });
    expect(again.si).toBe(12300);
    expect(again.standardUncertainty).toBeCloseTo(200 / 1.96, 9);
  }
});
