import { expect, test } from "vitest";
import {
  type Answer,
  type BalanceGivens,
  boilingPoint,
  brineDensity,
  brineHeatCapacity,
  type Entry,
  evaporationHeat,
  readLog,
  saturationPressure,
  saturationTemperature,
  standardPressure,
  type WaterBalance,
  waterBalance,
  writeLog,
} from "../../lib/index.ts";

// The library as another program calls it: through lib/index.ts alone, in Node, without a page.

const kelvin = (fahrenheit: number) => (fahrenheit + 459.67) / 1.8;
const givens: BalanceGivens = { salts: { sodiumHydroxide: 8, sodiumNitrate: 3 }, pressure: 101_325 };
const balance = (text: string, other: Partial<BalanceGivens> = {}) =>
  waterBalance(readLog(text).run, { ...givens, ...other });

/** Every 5 min for an hour at 290 °F, 8 fl oz after each reading but the last. */
const steady = [
  "time (min),temp F,water (fl oz)",
  ...Array.from({ length: 13 }, (_, i) => `${5 * i},290,${i < 12 ? 8 : ""}`),
].join("\n");

const answers = [
  "boilOff",
  "makeUp",
  "drift",
  "salts",
  "waterStart",
  "waterEnd",
  "ratioStart",
  "ratioEnd",
  "poured",
  "pouredRate",
] as const;

/** What every balance keeps, whatever the log. */
function expectSound(found: WaterBalance): void {
  const all: [string, Answer | undefined][] = [
    ...answers.map((name): [string, Answer] => [name, found[name]]),
    ["inBand", found.inBand],
    ["unwritten", found.unwritten],
  ];
  for (const [name, answer] of all) {
    if (answer === undefined) continue;
    const { value, standardUncertainty, interval95 } = answer;
    expect(interval95, name).toHaveLength(2);
    const [low, high] = interval95;
    expect([value, standardUncertainty, low, high].every(Number.isFinite), name).toBe(true);
    expect(standardUncertainty, name).toBeGreaterThanOrEqual(0);
    expect(low, name).toBeLessThanOrEqual(value);
    expect(high, name).toBeGreaterThanOrEqual(value);
  }
  for (const row of found.course) expect(Object.values(row).every(Number.isFinite)).toBe(true);
}

test.each([
  // IAPWS R7-97(2012), tables 35 and 36.
  ["saturationPressure(300 K), Pa", () => saturationPressure(300), 3536.58941, 1e-5],
  ["saturationPressure(500 K), Pa", () => saturationPressure(500), 2_638_897.76, 1e-2],
  ["saturationTemperature(0.1 MPa), K", () => saturationTemperature(1e5), 372.755919, 1e-6],
  // ICAO standard atmosphere at 3,000 m (ISO 2533:1975; from memory).
  ["standardPressure(3,000 m), Pa", () => standardPressure(3000), 70_108.5, 1],
  // Steam tables: water at 100 °C and one atmosphere, from memory.
  ["boilingPoint of plain water at 101,325 Pa, K", () => boilingPoint({}, 101_325), 373.124, 1e-3],
  ["evaporationHeat of plain water, J/kg", () => evaporationHeat({}, 101_325), 2_256_500, 1000],
  ["brineHeatCapacity of plain water at 80 °C, J/(kg K)", () => brineHeatCapacity({}, 353.15), 4197, 5],
  // International Critical Tables III, p. 79: sodium hydroxide, 50 % by weight, 1.5253 kg/l at 20 °C.
  ["brineDensity of 50 % hydroxide at 20 °C, kg/m³", () => brineDensity({ sodiumHydroxide: 1 }, 293.15), 1525.3, 3],
])("%s is the published figure", (_, work, published, within) => {
  expect(Math.abs(work() - published)).toBeLessThanOrEqual(within);
});

test("readLog gives entries of one shape: time in s, kind, quantity with its text, SI, unit and doubt", () => {
  const { run, problems } = readLog(steady);
  expect(problems).toEqual([]);
  expect(run.entries).toHaveLength(13 + 12);
  const [first, pour] = run.entries as [Entry, Entry];
  expect(first).toMatchObject({
    time: 0,
    kind: "reading",
    quantity: { text: "290", unit: "°F" },
    line: 2,
    struck: false,
  });
  // 290 °F = (290 + 459.67)/1.8 K; 8 fl oz = 8/128 of 231 cubic inches (Handbook 44), 0.9982 kg/l at 20 °C (CRC).
  expect(first.quantity?.si).toBeCloseTo(416.48333, 5);
  expect(pour).toMatchObject({ time: 0, kind: "addition", quantity: { text: "8", unit: "fl oz" }, line: 2 });
  expect(pour.quantity?.si).toBeCloseTo(((8 / 128) * 231 * 16.387064 * 0.9982) / 1000, 4);
  expect(run.entries.at(-1)).toMatchObject({ time: 3600, kind: "reading", line: 14 });
  for (const entry of run.entries) {
    const { quantity } = entry;
    expect(Object.keys(entry)).toEqual(expect.arrayContaining(["id", "time", "kind", "line", "struck"]));
    expect(Number.isFinite(quantity?.si)).toBe(true);
    expect(quantity?.standardUncertainty).toBeGreaterThan(0);
  }
  expect(new Set(run.entries.map(({ id }) => id)).size).toBe(run.entries.length);
});

test("waterBalance of a steady hold: what boils off is what was poured", () => {
  const found = balance(steady, { target: kelvin(290), band: 3 / 1.8 });
  // By hand: 96 fl oz are 0.75 gal, 2.839 l, 2.834 kg; in 3,600 s that is 0.787 g/s. The bath ends as it began.
  expect(found.poured.value).toBeCloseTo(2.834, 3);
  expect(found.boilOff.value).toBeCloseTo(0.000787, 5);
  expect(found.pouredRate.value).toBeCloseTo(2.834 / 3600, 6);
  expect(found.hold).toEqual({ start: 0, end: 3600, from: "first reading in the band or above" });
  expect(found.inBand?.value).toBeCloseTo(3600, 0);
  // 96 fl oz in an hour, each pour 5 %, the cup 3 %: no width below the cup's own, none so wide that it says nothing.
  const width = found.boilOff.standardUncertainty / found.boilOff.value;
  expect(width).toBeGreaterThan(0.03);
  expect(width).toBeLessThan(0.08);
  expectSound(found);
});

test("the accounts of a balance close: start and pours less what boiled off is the end", () => {
  // The first row's pour is one of those poured, so it is not in the water at the start.
  const { waterStart, waterEnd, poured, pouredRate, boilOff, makeUp, ratioStart, ratioEnd } = balance(steady);
  expect(waterStart.value + poured.value - 3600 * boilOff.value).toBeCloseTo(waterEnd.value, 1);
  expect(ratioStart.value / ratioEnd.value).toBeCloseTo(1, 2);
  // A bath that ended as it began was given exactly its make-up water.
  expect(makeUp.value / pouredRate.value).toBeCloseTo(1, 2);
});

test("waterBalance gives each answer as value, doubt, 95 % interval and a measured value", () => {
  const found = balance(steady);
  for (const name of answers) {
    expect(Object.keys(found[name]).sort()).toEqual(["interval95", "measured", "standardUncertainty", "value"]);
  }
  expect(found.inBand).toBeUndefined();
  expect(found.points).toHaveLength(13);
  expect(found.misread).toEqual([]);
});

test("waterBalance of the same night in °C and ml is the same", () => {
  const celsius = [
    "time (min);temp C;water (ml)",
    ...Array.from({ length: 13 }, (_, i) => `${5 * i};143,33;${i < 12 ? "236,6" : ""}`),
  ].join("\n");
  const metric = balance(celsius);
  const us = balance(steady);
  expect(metric.boilOff.value / us.boilOff.value).toBeCloseTo(1, 3);
  expect(metric.waterStart.value / us.waterStart.value).toBeCloseTo(1, 2);
});

test("waterBalance at 3,000 m takes a stronger brine for the same boil", () => {
  // Water boils there at 90 °C, so 278 °F is further above it, and the brine stronger, than at sea level.
  const high = readLog(steady.replaceAll("290", "278")).run;
  const there = waterBalance(high, { ...givens, pressure: standardPressure(3000) });
  expectSound(there);
  expect(there.ratioEnd.value).toBeGreaterThan(waterBalance(high, givens).ratioEnd.value);
  expect(there.boilOff.value).toBeCloseTo(0.000787, 5);
});

test("writeLog(run) is read back equal and gives the same balance", () => {
  const { run } = readLog(steady);
  const again = readLog(writeLog(run));
  expect(again.problems).toEqual([]);
  expect(again.run).toEqual(run);
  expect(waterBalance(again.run, givens).boilOff.value).toBe(balance(steady).boilOff.value);
});

test.each([
  ["an empty log", "", "missing readings: the log has no temperature"],
  ["a log of pours alone", "7:46 3 cups\n7:51 2 cups", "missing readings: the log has no temperature"],
  ["one reading", "7:46 291", "the log has one reading at the boil"],
  ["two readings at one time", "7:46 290\n7:46 291", "readings at one time only"],
  ["a bath that never boils", "7:40 150\n7:50 180\n8:00 200\n8:10 210", "the hottest reading, 210 °F, is not above"],
])("waterBalance of %s says what is missing", (_, text, message) => {
  expect(() => balance(text)).toThrow(message);
});

test("two readings give an answer that says how little it knows", () => {
  const found = balance("7:46 pm 289\n7:56 pm 291");
  expectSound(found);
  const [low, high] = found.boilOff.interval95;
  expect(high / low).toBeGreaterThan(5);
  expect(found.remarks.join(" ")).toContain("says little about the boil-off");
});

test("a log without a water column takes the boil-off from the rise alone, and says so", () => {
  const found = balance("time (min),temp F\n0,286\n10,287\n20,289\n30,290\n40,292");
  expectSound(found);
  expect(found.poured.value).toBe(0);
  expect(found.remarks.join(" ")).toContain("No water was written down");
});

test("29 °F in place of 290 is told, kept, and does not move the answer", () => {
  const text = steady.replace("\n30,290", "\n30,29");
  const { problems } = readLog(text);
  expect(problems.map(({ line, read }) => [line, read])).toEqual([[8, "29"]]);
  const found = balance(text);
  expectSound(found);
  expect(found.misread).toHaveLength(1);
  expect(found.points).toHaveLength(13);
  expect(found.boilOff.value / balance(steady).boilOff.value).toBeCloseTo(1, 2);
});

test("salts {} are refused with what to do; a tank's size and depth stand in for weights, at the cost of width", () => {
  expect(() => balance(steady, { salts: {} })).toThrow("missing salts: no weight is given; weigh the salts");
  const seen = balance(steady, { salts: { seen: { depth: 0.1, length: 0.8, width: 0.17 } } });
  expectSound(seen);
  const relative = ({ salts }: WaterBalance) => salts.standardUncertainty / salts.value;
  expect(relative(seen)).toBeGreaterThan(5 * relative(balance(steady)));
});

test.each([
  ["5 gal into a bath of two", 5, "gal"],
  ["a million litres", 1_000_000, "l"],
])("huge pours, %s, are told and still give finite answers", (_, amount, unit) => {
  const text = `time (min),temp F,water (${unit})\n0,290,${amount}\n5,290,${amount}\n10,290,${amount}\n15,290,`;
  expect(readLog(text).problems.length).toBeGreaterThan(0);
  expectSound(balance(text));
});

test.each([
  ["hardly any salt", { salts: { sodiumHydroxide: 1e-6 } }],
  ["a thermometer of great doubt", { thermometer: { standardUncertainty: 30 } }],
  ["told water that cannot be", { water: 1000 }],
  ["a target far above the curve", { target: 1000, band: 1 }],
  ["no doubt at all", { cup: { allNight: 0, eachPour: 0 }, thermometer: { standardUncertainty: 0 } }],
] satisfies [string, Partial<BalanceGivens>][])("waterBalance stays sound with %s", (_, other) => {
  expectSound(balance(steady, other));
});

test.each([
  ["invalid target: NaN", { target: Number.NaN, band: 1 }],
  ["invalid band: NaN", { target: 416, band: Number.NaN }],
  ["invalid band: -2", { target: 416, band: -2 }],
  ["invalid thermometer offset: NaN", { thermometer: { offset: Number.NaN, standardUncertainty: 1 } }],
  ["less the 90.0 °F that the thermometer reads high", { thermometer: { offset: 50, standardUncertainty: 1 } }],
  ["invalid doubt of the cup all night: NaN", { cup: { allNight: Number.NaN } }],
  ["invalid doubt of each pour: -1", { cup: { eachPour: -1 } }],
  ["invalid pressure: 500 Pa", { pressure: 500 }],
  ["invalid sodiumHydroxide: NaN", { salts: { sodiumHydroxide: Number.NaN } }],
  ["invalid sodiumHydroxide: -1 kg", { salts: { sodiumHydroxide: -1 } }],
  ["invalid boiling point: 300 K", { salts: { seen: { boil: 300, depth: 0.1, length: 0.8, width: 0.17 } } }],
  ["invalid depth: 0 m", { salts: { seen: { depth: 0, length: 0.8, width: 0.17 } } }],
] satisfies [string, Partial<BalanceGivens>][])("waterBalance refuses what cannot be: %s", (message, other) => {
  expect(() => balance(steady, other)).toThrow(message);
});

test("waterBalance refuses a salt of another name", () => {
  const salts = { sodiumHydroxide: 8, caustic: 3 };
  expect(() => waterBalance(readLog(steady).run, { salts, pressure: 101_325 })).toThrow("unknown salt: caustic");
});
