import { expect, test } from "vitest";
import { inventLog } from "../../../data/generator/inventLog.ts";
import { runOfRows } from "../../../data/generator/runOfRows.ts";
import { waterBalance } from "../../../lib/bath/index.ts";
import { entry, gives, reading } from "./logs.ts";

test("waterBalance(run, givens) finds a boil-off inside a finite interval", () => {
  const log = inventLog(1);
  const { boilOff } = waterBalance(runOfRows(log.rows), gives(log));
  const [low, high] = boilOff.interval95;
  expect(low).toBeGreaterThan(0);
  expect(low).toBeLessThan(boilOff.value);
  expect(high).toBeGreaterThan(boilOff.value);
  expect(Math.abs(boilOff.value / log.boilOff - 1)).toBeLessThan(0.15);
});

test("waterBalance(run, givens) without pours reads the boil-off from the drift", () => {
  const run = { entries: [0, 600, 1200, 1800, 2400].map((time, i) => reading(time, 415 + i)) };
  const { boilOff, remarks } = waterBalance(run, {
    salts: { sodiumHydroxide: 8, sodiumNitrate: 3 },
    pressure: 101_325,
  });
  expect(boilOff.value).toBeGreaterThan(0);
  expect(boilOff.interval95.every(Number.isFinite)).toBe(true);
  expect(remarks.join(" ")).toContain("No water was written down");
});

test("waterBalance(run, givens) ignores entries that are struck out", () => {
  const log = inventLog(2);
  const run = runOfRows(log.rows);
  const wrong = { ...reading(600, 500), struck: true };
  const other = { entries: [...run.entries, wrong, { ...entry("addition", 700, 20), struck: true }] };
  expect(waterBalance(other, gives(log)).boilOff.value).toBe(waterBalance(run, gives(log)).boilOff.value);
});

test.each([
  ["an empty log", [], /missing readings: the log has no temperature/],
  ["one reading", [reading(0, 415)], /missing readings: the log has one reading at the boil/],
  ["a bath that never boils", [reading(0, 330), reading(600, 350)], /missing boil: the hottest reading, 170 °F/],
])("waterBalance(run, givens) says what is missing in %s", (_, entries, message) => {
  expect(() => waterBalance({ entries }, { salts: { sodiumHydroxide: 8 }, pressure: 101_325 })).toThrow(message);
});
