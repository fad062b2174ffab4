import { expect, test } from "vitest";
import { drySaltEnthalpy } from "../../lib/bath/drySalt.ts";
import { bathEnthalpy, simulateBath } from "../../lib/bath/index.ts";
import { waterEnthalpy } from "../../lib/physics/index.ts";

const room = 298.15;
const hydroxide = 0.039997;
const water = 0.01801528;
const inch = 0.0254;
const btu = 1055.056;

// Heat of solution of sodium hydroxide at 25 °C, kJ/mol, into so many mol of water: Felder and Rousseau, Elementary
// Principles of Chemical Processes, table B.11 (from memory). They fix what dilution gives off: only the difference of
// two rows is free of the zero of the solid. 0.3 kJ/mol is 0.7 % of the heat of solution.
const solution: readonly (readonly [moles: number, heat: number])[] = [
  [3, -28.87],
  [4, -34.43],
  [5, -37.74],
  [10, -42.51],
  [20, -42.84],
  [50, -42.51],
];

test.each(solution)("hydroxide into %f mol of water gives off %f kJ/mol", (moles, heat) => {
  const mass = moles * water;
  const dissolved = bathEnthalpy({ sodiumHydroxide: hydroxide }, mass, room);
  const apart = drySaltEnthalpy({ sodiumHydroxide: hydroxide }, room) + mass * waterEnthalpy(room);
  expect(Math.abs((dissolved - apart) / 1000 - heat)).toBeLessThan(0.5);
});

test("diluting strong lye gives off what the table's rows differ by: 13.6 kJ/mol from 3 to 10 of water", () => {
  const of = (moles: number) => bathEnthalpy({ sodiumHydroxide: hydroxide }, moles * water, room);
  const gives = of(10) - of(3) - 7 * water * waterEnthalpy(room);
  expect(Math.abs(gives / 1000 - (-42.51 + 28.87))).toBeLessThan(0.3);
});

// Enthalpy of solution in much water, kJ/mol at 25 °C: CRC Handbook, enthalpy of solution of electrolytes (from memory).
test.each([
  ["sodiumNitrate", 0.084994, 20.5],
  ["sodiumNitrite", 0.068995, 13.89],
  ["potassiumNitrate", 0.101102, 34.89],
] as const)("%s of %f kg/mol takes up %f kJ/mol as it dissolves", (salt, mole, heat) => {
  const lots = 100 * water;
  const dissolved = bathEnthalpy({ [salt]: mole }, lots, room) - lots * waterEnthalpy(room);
  expect(Math.abs((dissolved - drySaltEnthalpy({ [salt]: mole }, room)) / 1000 - heat)).toBeLessThan(0.05);
});

// Superheated steam of 0.1 MPa and 150 °C: 1.9367 m³/kg (IAPWS steam tables, from memory), carried the little way to
// 1 atm and 292 °F in proportion to T/p.
test("the steam of one US cup of water in a bath of 292 °F is 15.7 to 15.9 cubic feet", () => {
  const cup = 0.2366 * 0.999;
  const setup = { tank: { length: 0.965, width: 0.203, depth: 0.2 }, burner: { heat: 6000 } };
  const charge = {
    water: 5.955,
    salts: { sodiumHydroxide: 5.3, sodiumNitrate: 2.65 },
    temperature: "boiling",
  } as const;
  const events = [{ kind: "slug", time: 0, water: cup, temperature: 288.7 }] as const;
  const run = simulateBath(setup, charge, { end: 0, events });
  const published = (cup * 1.9367 * (100 / 101.325) * (417.6 / 423.15)) / 0.3048 ** 3;
  const volume = (run.slugs[0]?.couldFlash.volume ?? 0) / 0.3048 ** 3;
  expect(volume).toBeGreaterThan(published);
  expect(volume).toBeLessThan(1.01 * published);
});

// Steam tables (from memory): steam of 1 atm and 292 °F (144.4 °C) 2,765 kJ/kg, water of 60 °F (15.6 °C) 65.4 kJ/kg.
// A bath that is fed just what it boils off keeps its strength: the heat of each kg is the difference, brine or not.
test("a bath kept at 292 °F by a feed of 60 °F takes 2,700 kJ (1,161 BTU/lb) for each kg boiled off", () => {
  const heat = 5000;
  const rate = heat / 2.6996e6;
  const setup = { tank: { length: 0.965, width: 0.203, depth: 0.2 }, burner: { heat }, losses: "none" } as const;
  const charge = {
    water: 5.955,
    salts: { sodiumHydroxide: 5.3, sodiumNitrate: 2.65 },
    temperature: "boiling",
  } as const;
  const events = [{ kind: "feed", from: 0, to: 7200, rate, temperature: 288.7 }] as const;
  const run = simulateBath(setup, charge, { end: 7200, events });
  const start = run.course[0]?.T ?? Number.NaN;
  expect(Math.abs(start - 417.594)).toBeLessThan(0.2);
  expect(Math.abs(run.end.T - start)).toBeLessThan(0.15);
  expect(Math.abs((7200 * heat) / run.totals.steam / 1000 - 2700)).toBeLessThan(5);
});

// Heat of evaporation out of hydroxide at its boil, kJ/kg: the same as plain water's where no salt is (2,257, steam
// tables), and the enthalpy-concentration chart's difference for 50 wt% (Geankoplis' evaporator examples work with
// about 2,640; Clapeyron's equation on the boiling curve gives it within 1.3 %).
test.each([
  [{}, 2257, 5],
  [{ sodiumHydroxide: 12 }, 2640, 40],
] as const)("out of a bath of %j in 12 kg of water the first steam takes %f kJ/kg", (salts, published, within) => {
  const setup = { tank: { length: 0.965, width: 0.203, depth: 0.2 }, burner: { heat: 5000 }, losses: "none" } as const;
  const run = simulateBath(setup, { water: 12, salts, temperature: "boiling" }, { end: 10 }, { step: 10 });
  const rise = (run.course.at(-1)?.T ?? 0) - (run.course[0]?.T ?? 0);
  // The bath itself warms with its boiling point: 24 kg of 3.18 kJ/(kg K) (Laliberte 2009 gives 3.2).
  const warming = Object.keys(salts).length > 0 ? 24 * 3180 * rise : 0;
  expect(Math.abs((50_000 - warming) / run.totals.steam / 1000 - published)).toBeLessThan(within);
});

// 38 x 8 in of surface, 60,000 BTU/h at an efficiency of 0.35, walls losing 600 BTU/(h ft²) over 322 in² and the top 392:
// (21,000 - 1,342 - 828) / 1,161 = 16.2 lb/h, worked by hand.
test("a long tank by hand: 18,830 BTU/h left boil 16.2 lb/h off, made up at 60 °F", () => {
  const tank = { length: 38 * inch, width: 8 * inch, depth: 8 * inch };
  const hour = 3600;
  const [wall, top] = [1342, 828].map((loss) => (loss * btu) / hour / (417.6 - 293.15));
  const setup = {
    tank,
    burner: { power: (60_000 * btu) / hour, efficiency: 0.35 },
    losses: { wall: wall ?? 0, top: top ?? 0 },
  };
  const charge = {
    water: 5.955,
    salts: { sodiumHydroxide: 5.3, sodiumNitrate: 2.65 },
    temperature: "boiling",
  } as const;
  const rate = (16.2 * 0.45359237) / hour;
  const events = [{ kind: "feed", from: 0, to: hour, rate, temperature: 288.7 }] as const;
  const run = simulateBath(setup, charge, { end: hour, events });
  expect(run.totals.steam / 0.45359237).toBeCloseTo(16.2, 0);
  expect(run.end.state).toBe("boiling");
});
