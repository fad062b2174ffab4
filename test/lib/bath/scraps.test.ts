import { expect, test } from "vitest";
import { waterBalance } from "../../../lib/bath/index.ts";
import { boilingPoint } from "../../../lib/physics/index.ts";
import { entry, reading } from "./logs.ts";

const salts = { sodiumHydroxide: 8, sodiumNitrate: 3 };
const pressure = 101_325;
const givens = { salts, pressure };
/** K at which the bath of these tests boils with so many kg of water. */
const boils = (water: number) => boilingPoint({ sodiumHydroxide: 8 / water, sodiumNitrate: 3 / water }, pressure);
/** 9 kg of water leaving at 1 g/s, a reading every 4 min. */
const drift = (minutes: number, rate = 0.001) =>
  Array.from({ length: minutes / 4 + 1 }, (_, i) => reading(i * 240, boils(9 - rate * i * 240)));

test("waterBalance(run, givens) with exact readings finds the rate that made them, to the doubt of the curve", () => {
  // Worked by hand: 1 g/s for 40 min takes 2.4 kg of 9. The curve is the same one, so this checks the balance alone.
  const { boilOff, waterStart, waterEnd } = waterBalance(
    { entries: drift(40) },
    { ...givens, water: { value: 9, standardUncertainty: 0.1 } },
  );
  expect(boilOff.value).toBeGreaterThan(0.00094);
  expect(boilOff.value).toBeLessThan(0.00106);
  expect(waterStart.value - waterEnd.value).toBeCloseTo(2400 * boilOff.value, 1);
});

test("waterBalance(run, givens) steady hold: the boil-off is what was poured", () => {
  const pours = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((i) => entry("addition", i * 240 + 60, 0.24));
  const flat = Array.from({ length: 11 }, (_, i) => reading(i * 240, boils(9)));
  const { boilOff } = waterBalance({ entries: [...flat, ...pours] }, givens);
  expect(boilOff.interval95[0]).toBeLessThan(0.001);
  expect(boilOff.interval95[1]).toBeGreaterThan(0.001);
});

test.each([
  ["high", 20],
  ["low", -20],
  ["ten times too high", 3700],
])("waterBalance(run, givens) is not spoilt by one reading misread %s", (_, by) => {
  const plain = drift(40);
  const spoilt = plain.map((row, i) =>
    i === 5 && row.quantity ? { ...row, quantity: { ...row.quantity, si: row.quantity.si + by } } : row,
  );
  const right = waterBalance({ entries: plain }, givens).boilOff;
  const { boilOff, misread } = waterBalance({ entries: spoilt }, givens);
  expect(Math.abs(boilOff.value / right.value - 1)).toBeLessThan(0.05);
  expect(misread).toHaveLength(1);
});

test("waterBalance(run, givens) leaves the warm-up out", () => {
  const later = drift(40).map((row) => ({ ...row, time: row.time + 1500 }));
  const cold = [
    [0, 295],
    [600, 345],
    [1200, 395],
  ] as const;
  const { firstBoil, boilOff, points } = waterBalance(
    { entries: [...cold.map(([time, T]) => reading(time, T)), ...later] },
    givens,
  );
  expect(firstBoil).toBeGreaterThan(1200);
  expect(firstBoil).toBeLessThanOrEqual(1500);
  expect(boilOff.interval95[0]).toBeLessThan(0.001);
  expect(boilOff.interval95[1]).toBeGreaterThan(0.001);
  expect(points.filter(({ because }) => because === "before the bath boiled")).toHaveLength(3);
});

test("waterBalance(run, givens) counts the time to a bare remark at the end", () => {
  const entries = [...drift(40), entry("remark", 2520, undefined, "end")];
  expect(waterBalance({ entries }, givens).hold.end).toBe(2520);
});

test("waterBalance(run, givens) does not take told water that the boiling point contradicts, and says so", () => {
  const { boilOff, remarks } = waterBalance({ entries: drift(40) }, { ...givens, water: 20 });
  expect(boilOff.value).toBeLessThan(0.0013);
  expect(remarks.join(" ")).toContain("doesn't fit");
});

test("waterBalance(run, givens) tells what the jug lost beyond the pours", () => {
  const flat = Array.from({ length: 11 }, (_, i) => reading(i * 240, boils(9)));
  const pours = [1, 2, 3, 5, 6, 7, 8, 9].map((i) => entry("addition", i * 240 + 60, 0.24));
  const { unwritten } = waterBalance(
    { entries: [...flat, ...pours, entry("level", 0, 4), entry("level", 2400, 1.84)] },
    givens,
  );
  expect(unwritten?.value).toBeCloseTo(0.24, 6);
});

test("waterBalance(run, givens) takes a ready mix, wider than weighed salts", () => {
  const width = (known: Parameters<typeof waterBalance>[1]["salts"]) => {
    const { interval95, value } = waterBalance({ entries: drift(40) }, { salts: known, pressure }).boilOff;
    return (interval95[1] - interval95[0]) / value;
  };
  expect(
    width({ readyMix: { mass: 11, shares: { sodiumHydroxide: [0.6, 0.85], sodiumNitrate: [0.15, 0.4] } } }),
  ).toBeGreaterThan(width(salts));
});

test("waterBalance(run, givens) takes salts known only by depth and tank", () => {
  const { boilOff } = waterBalance(
    { entries: drift(40) },
    { salts: { seen: { depth: 0.1, length: 0.8, width: 0.17 } }, pressure },
  );
  expect(boilOff.interval95[0]).toBeGreaterThan(0.0003);
  expect(boilOff.interval95[1]).toBeLessThan(0.003);
});

test("waterBalance(run, givens) with target and band gives the time inside, within the hold", () => {
  const target = (boils(9) + boils(8.2)) / 2;
  const { inBand, hold } = waterBalance(
    { entries: drift(40) },
    { ...givens, target, band: (boils(8.2) - boils(9)) / 2 },
  );
  // 0.8 kg at 1 g/s is 800 s; the thermometer's own doubt widens the rest.
  expect(inBand?.value).toBeGreaterThan(720);
  expect(inBand?.value).toBeLessThan(880);
  expect(inBand?.interval95[0]).toBeGreaterThanOrEqual(0);
  expect(inBand?.interval95[1]).toBeLessThanOrEqual(hold.end - hold.start);
});
