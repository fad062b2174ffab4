import fc from "fast-check";
import { expect, test } from "vitest";
import {
  afterDragOut,
  bathEnthalpy,
  boilElsewhere,
  boilingPoint,
  chargeFor,
  departedBoilingPoint,
  simulateBath,
  standardPressure,
  strengthen,
  weaken,
} from "../../../../lib/index.ts";

const pressure = 101_325;
const mix = { sodiumHydroxide: 2, sodiumNitrate: 1 };
const bath = { water: 4.5, salts: { sodiumHydroxide: 4, sodiumNitrate: 2 } };

// Dow, Caustic soda solution, physical properties (read): 50 wt% boils at approximately 293 °F (145 °C).
test("lye that boils at 145 °C is charged at about equal weights of lye and water", () => {
  expect(chargeFor({ salts: { sodiumHydroxide: 1 }, target: 418.15, pressure, water: 1 }).ratio).toBeCloseTo(1, 1);
});

// Evaporators under vacuum, half lye, half water: 89.5 °C at 11.7 kPa (Geankoplis, example 8.4-3), 91.7 °C at 100 mmHg
// (McCabe and Smith, evaporator example); both from memory.
test.each([
  [11_700, 362.65, 1, 0.06],
  [13_332, 364.85, 1, 0.06],
])("lye under %f Pa that boils at %f K is charged at %f of lye to one of water", (thin, target, ratio, within) => {
  const charge = chargeFor({ salts: { sodiumHydroxide: 1 }, target, pressure: thin, water: 1 });
  expect(Math.abs(charge.ratio / ratio - 1)).toBeLessThan(within);
});

// EP 1 284 309 A1 (2003), read: 75 % hydroxide, 20 % nitrite, rest unnamed, 1:1 with water by weight, boils at about 138 °C.
test("hydroxide and nitrite that boil at 138 °C are charged at about equal weights of mix and water", () => {
  const salts = { sodiumHydroxide: 75, sodiumNitrite: 20 };
  const charge = chargeFor({ salts, target: 411.15, pressure, water: 1 });
  expect(charge.saltTotal / 0.95).toBeGreaterThan(0.95);
  expect(charge.saltTotal / 0.95).toBeLessThan(1.05);
  expect(Math.abs(charge.expected.boilingPoint - 411.15)).toBeLessThan(1.96 * charge.expected.standardUncertainty);
});

test("liquid, water and salt are three ways to ask for one charge", () => {
  const byWater = chargeFor({ salts: mix, target: 417.6, pressure, water: 4.5 });
  const byLiquid = chargeFor({ salts: mix, target: 417.6, pressure, liquid: byWater.liquidVolume });
  const bySalt = chargeFor({ salts: mix, target: 417.6, pressure, salt: byWater.saltTotal });
  for (const other of [byLiquid, bySalt]) {
    expect(other.water).toBeCloseTo(4.5, 9);
    expect(other.salt.sodiumHydroxide).toBeCloseTo(byWater.salt.sodiumHydroxide ?? 0, 9);
  }
});

test("a charge boils where it should, in the curve and in the bath simulated", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 405, max: 425, noNaN: true }),
      fc.double({ min: 78_000, max: 104_000, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: -3, max: 2, noNaN: true }),
      (target, p, nitrate, offset) => {
        const departure = { offset, scale: 1.03 };
        const salts = { sodiumHydroxide: 1, sodiumNitrate: nitrate };
        const { salt, water } = chargeFor({ salts, target, pressure: p, liquid: 0.01, departure });
        const each = Object.fromEntries(Object.entries(salt).map(([kind, kg]) => [kind, kg / water]));
        expect(departedBoilingPoint(each, p, departure)).toBeCloseTo(target, 6);
        const setup = { tank: { length: 1, width: 0.2, depth: 0.2 }, burner: { heat: 6000 }, air: { pressure: p } };
        const { course } = simulateBath(setup, { water, salts: salt, temperature: "boiling", departure }, { end: 1 });
        expect(course[0]?.T).toBeCloseTo(target, 2);
      },
    ),
    { numRuns: 25 },
  );
});

test("no lot warms the bath by more than 10 K, by the bath's own enthalpy against published heat of solution", () => {
  const { steps, salt, water } = chargeFor({ salts: mix, target: 417.6, pressure, water: 4.5 });
  expect(steps.map(({ put }) => put)).toEqual(["water", "sodiumHydroxide", "sodiumNitrate"]);
  const lye = steps[1];
  expect(lye?.lot).toBeCloseTo((salt.sodiumHydroxide ?? 0) / (lye?.lots ?? 1), 9);
  // 44.5 kJ/mol of heat of solution into much water at 25 °C (CRC Handbook, from memory): into plain water no lot of
  // lye can warm it by more than that over its heat capacity.
  const heat = ((lye?.lot ?? 0) / 0.0399971) * 44_500;
  const capacity = bathEnthalpy({}, water, 299) - bathEnthalpy({}, water, 298);
  expect(heat / capacity).toBeLessThan(10.6);
  for (const { warms } of steps) expect(warms).toBeLessThanOrEqual(10);
});

test("a strengthened bath boils at its target, a weakened one too", () => {
  const weak = { ...bath, water: 5 };
  const more = strengthen({ bath: weak, target: 417.6, pressure });
  const hydroxide = (4 + (more.salt.sodiumHydroxide ?? 0)) / 5;
  const nitrate = (2 + (more.salt.sodiumNitrate ?? 0)) / 5;
  expect(boilingPoint({ sodiumHydroxide: hydroxide, sodiumNitrate: nitrate }, pressure)).toBeCloseTo(417.6, 6);
  expect(more.cautions[0]).toContain("cold");
  const { water } = weaken({ bath: { ...bath, water: 4 }, target: 417.6, pressure });
  const thin = { sodiumHydroxide: 4 / (4 + water), sodiumNitrate: 2 / (4 + water) };
  expect(boilingPoint(thin, pressure)).toBeCloseTo(417.6, 6);
  const lye = strengthen({ bath: weak, target: 417.6, pressure, salts: { sodiumHydroxide: 1 } });
  expect(lye.saltTotal).toBeLessThan(more.saltTotal);
});

test.each([
  ["nothing said of how much", () => chargeFor({ salts: mix, target: 417.6, pressure }), "invalid amount: none"],
  [
    "two amounts",
    () => chargeFor({ salts: mix, target: 417.6, pressure, water: 1, salt: 2 }),
    "water and salt; just one",
  ],
  [
    "a target below water's boil",
    () => chargeFor({ salts: mix, target: 360, pressure, water: 1 }),
    "invalid temperature",
  ],
  ["no salts", () => chargeFor({ salts: {}, target: 417.6, pressure, water: 1 }), "missing salts"],
  [
    "a new bath of nitrate alone",
    () => chargeFor({ salts: { sodiumNitrate: 1 }, target: 417.6, pressure, water: 1 }),
    "not known well enough to advise",
  ],
  [
    "nitrate alone",
    () => strengthen({ bath: { ...bath, water: 5 }, target: 418, pressure, salts: { sodiumNitrate: 1 } }),
    "not known well enough to advise",
  ],
  [
    "a share below 0",
    () => strengthen({ bath: { ...bath, water: 5 }, target: 418, pressure, salts: { ...mix, sodiumNitrate: -1 } }),
    "invalid share of sodiumNitrate: -1",
  ],
  [
    "water without end",
    () => strengthen({ bath, target: 418, pressure, water: Number.POSITIVE_INFINITY }),
    "invalid water: Infinity",
  ],
  ["a bath strong enough", () => strengthen({ bath, target: 410, pressure }), "weaken it with water"],
  ["a bath weak enough", () => weaken({ bath, target: 425, pressure }), "let it boil"],
  ["more drag-out than bath", () => afterDragOut({ bath, dragOut: 9, target: 417, pressure }), "invalid drag-out"],
])("%s is refused in words", (_, work, message) => {
  expect(work).toThrow(message);
});

// Altitude and boiling point of plain water, handbook table (from memory): 5,000 ft 202.9 °F, 8.9 °F lower than at sea
// level in a table of a published altitude chart; a brine moves by about 1.1 times as much.
test("a bath moves with the barometer a little more than plain water does, and comes back", () => {
  const high = standardPressure(1524);
  const there = boilElsewhere({ salts: mix, boils: 417.6, from: pressure, to: high });
  const plainWater = boilingPoint({}, high) - boilingPoint({}, pressure);
  expect(1.8 * plainWater).toBeCloseTo(-9.1, 0);
  expect(there.change / plainWater).toBeGreaterThan(1.05);
  expect(there.change / plainWater).toBeLessThan(1.25);
  const back = boilElsewhere({ salts: mix, boils: there.boilingPoint, from: high, to: pressure });
  expect(back.boilingPoint).toBeCloseTo(417.6, 6);
  expect(there.leaves).toBeGreaterThan(0);
});

test("drag-out leaves the boil alone; water alone lowers it; salt and water restore weight and boil", () => {
  const target = boilingPoint({ sodiumHydroxide: 4 / 4.5, sodiumNitrate: 2 / 4.5 }, pressure);
  const after = afterDragOut({ bath, dragOut: 0.6, sludge: 0.2, target, pressure });
  expect(after.boilingPoint).toBeCloseTo(target, 9);
  expect(after.withWaterAlone).toBeLessThan(target - 1);
  expect((after.restore.salt.sodiumHydroxide ?? 0) + (after.left.salts.sodiumHydroxide ?? 0)).toBeCloseTo(4, 6);
  expect(after.restore.water + after.left.water).toBeCloseTo(4.5, 6);
  expect(after.waterLost).toBeCloseTo((0.7 * 4.5) / 10.5, 9);
});
