import { expect, test } from "vitest";
import { checkName, given, namesOf, notebook, openLines, type Worked, worked } from "../../lib/lines/index.ts";
import { correlation, standardUncertainty, type Value } from "../../lib/measure/index.ts";
import { vocabulary } from "../../notebooks/vocabulary.ts";

type Lines = Readonly<Record<string, string>>;

/** Formulas as a maker would write them on a notebook of their own; what they come to, by line. */
async function amounts(formulas: Lines): Promise<ReadonlyMap<string, Value>> {
  const lines: Record<string, Worked | ReturnType<typeof given>> = {};
  for (const [name, formula] of Object.entries(formulas))
    lines[name] = /^[\d.]+( |$|%)[^(*]*$/.test(formula)
      ? given(formula, undefined, { takes: "anything", exact: true })
      : worked(formula);
  const open = openLines(notebook({ asks: "?", lines }), { vocabulary });
  await open.settled();
  const found = new Map<string, Value>();
  for (const name of open.names()) {
    const result = open.result(name);
    if (result.state !== "settled") throw new Error(`${name}: ${JSON.stringify(result)}`);
    found.set(name, result.value as Value);
  }
  open.close();
  return found;
}

async function amount(formula: string): Promise<Value> {
  const value = (await amounts({ found: `(${formula})` })).get("found");
  if (!value) throw new Error("no line");
  return value;
}

async function refusal(formula: string): Promise<string> {
  const open = openLines(notebook({ asks: "?", lines: { found: worked(formula) } }), { vocabulary });
  const answer = await open.value("found");
  open.close();
  return "stopped" in answer ? answer.stopped : JSON.stringify(answer);
}

const number = async (formula: string): Promise<number> => (await amount(formula)).value;
/** Factors of NIST SP 811. */
const btuPerHour = 1055.05585262 / 3600;
const celsius = (kelvin: number): number => kelvin - 273.15;

test("every function has a name of its own, two words or more, that no line could be taken for, a doc and a source", () => {
  const names = vocabulary.functions.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  for (const func of vocabulary.functions) {
    expect(checkName(func.name, namesOf([])), func.name).toBeUndefined();
    expect(func.name.split(" ").length, func.name).toBeGreaterThan(1);
    expect(func.says.length, func.name).toBeGreaterThan(40);
    if (!func.numbers) continue;
    expect(func.source, func.name).toBeDefined();
    expect(func.gives, func.name).toBeDefined();
    for (const taken of func.takes) expect(taken.kind, `${func.name}: ${taken.name}`).toBeDefined();
  }
});

// IAPWS R7-97(2012), table 36: 0.1 MPa.
test("boiling point of water at 0.1 MPa is the release's 372.755919 K", async () => {
  expect(await number("boiling point of water(100 kPa)")).toBeCloseTo(372.755919, 6);
});

// ISO 2533:1975 (from memory): 794.952 hPa at 2,000 m, whose slope there is that between its 1,900 and 2,100 m.
test("air pressure at altitude is the standard atmosphere's, give or take the weather", async () => {
  const value = await amount("air pressure at altitude(2000 m)");
  expect(value.value / 100).toBeCloseTo(794.952, 2);
  expect(standardUncertainty(value)).toBe(800);
  const found = await amounts({
    altitude: "2000 ± 100 m",
    high: "air pressure at altitude(2100 m)",
    low: "air pressure at altitude(1900 m)",
    here: "air pressure at altitude(altitude)",
  });
  const slope = ((found.get("high")?.value ?? 0) - (found.get("low")?.value ?? 0)) / 200;
  expect((found.get("here")?.components.get("altitude") ?? 0) / ((slope * 100) / 1.96)).toBeCloseTo(1, 3);
});

// The standard atmosphere again: at its own sea-level pressure the two ways must meet.
test("air pressure from barometer at 1,013.25 hPa is the standard atmosphere's 898.746 hPa at 1,000 m", async () => {
  expect((await number("air pressure from barometer(1013.25 hPa, 1000 m)")) / 100).toBeCloseTo(898.746, 2);
});

// Dow, caustic soda physical properties (read): 50 wt% boils at about 293 °F, 145 °C. EP 1 284 309 A1 (read): 75 parts
// of hydroxide, 20 of sodium nitrite in 100 of water, about 138 °C.
test.each([
  ["boiling point of bath(1, 101.325 kPa, 100 %)", 145],
  ["boiling point of bath(0.95, 101.325 kPa, 78.947 %, 21.053 %)", 138],
])("%s is the published %d °C within 2 K, and its doubt holds it", async (formula, published) => {
  const value = await amount(formula);
  expect(Math.abs(celsius(value.value) - published)).toBeLessThan(2);
  expect(Math.abs(celsius(value.value) - published)).toBeLessThan(1.96 * standardUncertainty(value));
});

// Gerlach (Smithsonian Physical Tables, from memory): 17 g of hydroxide in 100 g of water raise the boil by 5 K. Plain
// water's own boiling point, 373.1243 K (IAPWS R7-97), is in no doubt.
test("the doubt of the boiling curve fades towards plain water", async () => {
  const weak = await amount("boiling point of bath(0.17, 101.325 kPa, 100 %)");
  expect(Math.abs(weak.value - (373.124 + 5))).toBeLessThan(0.7);
  expect(standardUncertainty(weak)).toBeLessThan(0.6);
  const water = await amount("boiling point of bath(0, 101.325 kPa, 100 %)");
  expect(water.value).toBeCloseTo(373.1243, 4);
  expect(standardUncertainty(water)).toBe(0);
});

test("salt to water at boil undoes boiling point of bath, and is off by the same curve", async () => {
  const found = await amounts({
    ratio: "1.2",
    boils: "boiling point of bath(ratio, 95 kPa, 70 %, 10 %, 5 %)",
    again: "salt to water at boil(boils, 95 kPa, 70 %, 10 %, 5 %)",
    "weak again": "salt to water at boil(boiling point of bath(0.4, 95 kPa, 70 %), 95 kPa, 70 %)",
    alone: "salt to water at boil(292 °F, 95 kPa, 70 %, 10 %, 5 %)",
  });
  expect(found.get("again")?.value).toBeCloseTo(1.2, 7);
  expect(found.get("weak again")?.value).toBeCloseTo(0.4, 7);
  // The curve's doubt cancels where it was put in and taken out again.
  const alone = found.get("alone");
  const again = found.get("again");
  if (!alone || !again) throw new Error("no line");
  expect(standardUncertainty(again)).toBeLessThan(0.01 * standardUncertainty(alone));
  const boils = found.get("boils");
  expect(boils && correlation(alone, boils)).toBeLessThan(-0.95);
});

// International Critical Tables III, by a trade table (read): 50 wt% hydroxide at 20 °C is 1.5253 kg/l.
test("density of bath is the tables' 1.5253 kg/l within its doubt, and volume of bath follows", async () => {
  const found = await amounts({
    dense: "density of bath(1, 20 °C, 100 %)",
    salt: "10 kg",
    water: "10 kg",
    volume: "volume of bath(salt, water, 20 °C, 100 %)",
    weight: "volume * dense",
  });
  expect(Math.abs((found.get("dense")?.value ?? 0) / 1525.3 - 1)).toBeLessThan(0.003);
  expect(Math.abs((found.get("volume")?.value ?? 0) * 1525.3 - 20)).toBeLessThan(0.06);
  expect(found.get("volume")?.dimension).toEqual({ length: 3 });
  const weight = found.get("weight");
  expect(weight && standardUncertainty(weight) / weight.value).toBeLessThan(1e-4);
});

// Steam tables (from memory): 2,257 kJ/kg at 100 °C; a litre of water of 20 °C weighs 0.9982 kg (CRC Handbook).
test("heat to boil off a litre of plain water is the steam tables' latent heat", async () => {
  const heat = await number("heat to boil off water(1 l, 0, 101.325 kPa, 100 %)");
  expect(Math.abs(heat / (2257e3 * 0.9982) - 1)).toBeLessThan(1e-3);
});

// ASM Handbook, vol. 1, 0.23 % carbon steel (from memory): 486 J/(kg K) from 50 to 100 °C.
test("heat to warm steel is the handbook's within 3 percent; its slopes are those of its curve", async () => {
  expect(Math.abs((await number("heat to warm steel(1 kg, 50 °C, 100 °C)")) / (50 * 486) - 1)).toBeLessThan(0.03);
  const found = await amounts({
    weight: "2 ± 0.1 kg",
    cold: "20 ± 2 °C",
    hot: "144 ± 3 °C",
    heat: "heat to warm steel(weight, cold, hot)",
    // Incropera and DeWitt, table A.1 (from memory): 434 J/(kg K) at 300 K, 487 at 400 K.
  });
  const parts = found.get("heat")?.components ?? new Map<string, number>();
  expect((parts.get("cold") ?? 0) / ((-2 * 434 * 2) / 1.96)).toBeCloseTo(1, 1);
  expect((parts.get("hot") ?? 0) / ((2 * 487 * 3) / 1.96)).toBeCloseTo(1, 1);
  expect((parts.get("weight") ?? 0) / (((found.get("heat")?.value ?? 0) / 2) * (0.1 / 1.96))).toBeCloseTo(1, 9);
});

// "Heat Loss from Open Water Tanks", The Engineering ToolBox (read), still air of 60 °F, BTU/(h ft²): at 180 °F a wall
// 1 ft high loses 260 bare and 46 under 1 in of insulation; the top loses 1,740 by evaporation and 260 besides.
test("heat loss of wall and of surface are the table's", async () => {
  const wall = await amount("heat loss of wall(180 °F, 60 °F, 1 ft, 2 ft)");
  expect(Math.abs(wall.value / btuPerHour / (2 * 260) - 1)).toBeLessThan(0.06);
  expect(standardUncertainty(wall) / wall.value).toBeCloseTo(0.35, 9);
  // Mineral wool, 0.065 W/(m K) (a judgement: the table does not name its insulation).
  const wool = await number("heat loss of wall(180 °F, 60 °F, 1 ft, 2 ft, 1 in, 0.065 W/(m K))");
  expect(Math.abs(wool / btuPerHour / (2 * 46) - 1)).toBeLessThan(0.1);
  const top = await number("heat loss of surface(180 °F, 60 °F, 3 ft, 1 ft, 0, 101.325 kPa, 100 %)");
  expect(Math.abs(top / btuPerHour / (3 * (1740 + 260)) - 1)).toBeLessThan(0.06);
});

// Property tables of propane (read): 21,548 to 21,591 BTU/lb. CRC Handbook (from memory): 46.33 MJ/kg net.
test("heat of propane lies among the published, and gross and net are off together", async () => {
  const found = await amounts({
    gross: "heat of propane(1 lb)",
    net: "net heat of propane(1 lb)",
    share: "net / gross",
  });
  const gross = (found.get("gross")?.value ?? 0) / 1055.05585262;
  expect(gross).toBeGreaterThanOrEqual(21_548);
  expect(gross).toBeLessThanOrEqual(21_592);
  expect(Math.abs((found.get("net")?.value ?? 0) / 0.45359237 / 46.33e6 - 1)).toBeLessThan(0.005);
  const share = found.get("share");
  expect(share && standardUncertainty(share)).toBeLessThan(1e-9);
});

// BCcampus, Plumbing 3E (read), worked example: drill 62 (0.038 in) at 11 inches of water feeds 11,405 BTU/h.
test("a low-pressure jet of drill 62 feeds the textbook's 11,405 BTU/h", async () => {
  const heat = await number("heat of propane(propane through low pressure jet(0.038 in, 11 inH2O) * 1 h) / 1 h");
  expect(Math.abs(heat / btuPerHour - 11_405)).toBeLessThan(5);
});

// No table of psi jets was found: where the low-pressure table reaches, both formulas give the same heat within 2 % once
// their coefficients (0.90 and 0.85) are taken off.
test("the jet behind a psi regulator meets the low-pressure table where both hold", async () => {
  const found = await amounts({
    high: "propane through jet(0.038 in, 20 inH2O)",
    low: "propane through low pressure jet(0.038 in, 20 inH2O)",
  });
  const ratio = (found.get("low")?.value ?? 0) / (found.get("high")?.value ?? 1);
  expect(Math.abs(ratio / (0.9 / 0.85) - 1)).toBeLessThan(0.02);
  const high = found.get("high");
  expect(high && standardUncertainty(high) / high.value).toBeCloseTo(0.05, 6);
});

// A burner maker's table of vaporization rates (read): 100 lb cylinder with 40 lb in it at 60 °F, 131,000 BTU/h.
test("cylinder vaporisation is the table's within 4 percent", async () => {
  const heat = await number("cylinder vaporisation(100 lb, 40 lb, 60 °F)");
  expect(Math.abs(heat / btuPerHour / 131_000 - 1)).toBeLessThan(0.04);
});

test("what is out of range says its range, and what is of the wrong kind says what was expected", async () => {
  expect(await refusal("boiling point of bath(1, 40 kPa, 70 %)")).toContain("65,000 to 105,000 Pa");
  expect(await refusal("boiling point of bath(1, 100 kPa, 70 %, 40 %)")).toContain("110 % together; at most 100 %");
  expect(await refusal("cylinder vaporisation(20 lb, 10 lb, 60 °F)")).toContain("45.359 kg (100 lb)");
  expect(await refusal("heat of propane(3 min)")).toBe(
    'heat of propane takes a weight as its weight of propane: "3 min" is a time',
  );
  expect(await refusal('burner efficiency("windy")')).toContain('"open" or "skirted"');
  expect(await refusal("heat loss of wall(180 °F, 60 °F, 1 ft, 2 ft, 1 in)")).toContain("both its thickness and");
});

// The range that the prior's own comment cites: gas rings under pans 0.25 to 0.50, brine pans 0.36 to 0.66.
test("burner efficiency covers the published ranges at 95 percent", async () => {
  const open = await amount('burner efficiency("open")');
  const skirted = await amount('burner efficiency("skirted")');
  expect(open.value - 1.96 * standardUncertainty(open)).toBeLessThan(0.25);
  expect(open.value + 1.96 * standardUncertainty(open)).toBeGreaterThan(0.5);
  expect(skirted.value + 1.96 * standardUncertainty(skirted)).toBeGreaterThan(0.66);
  expect(correlation(open, skirted)).toBe(0);
});
