import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { demoLogs, demoShop, demoShopText } from "../../data/generate.ts";
import { plans } from "../../data/generator/demoPlans.ts";
import { demoRun } from "../../data/generator/demoRuns.ts";
import { waterBalance } from "../../lib/bath/index.ts";
import { readLog } from "../../lib/log/index.ts";
import { readRecord } from "../../lib/record/index.ts";

const committed = (name: string) => readFileSync(new URL(`../../data/${name}`, import.meta.url), "utf8");
const pound = 0.45359237;

test("demoShopText() gives the committed file, byte for byte", () => {
  expect(demoShopText()).toBe(committed("demoShop.json"));
});

test.each(demoLogs())("demoLogs() gives %s as committed", (name, text) => {
  expect(text).toBe(committed(`demoLogs/${name}`));
});

test.each(demoLogs())("readLog(%s) reads without a problem", (_, text) => {
  expect(readLog(text).problems).toEqual([]);
});

test("readRecord(demoShopText()) takes the demo", () => {
  expect(readRecord(demoShopText())).toHaveProperty("record");
});

test("demoShop() says of every item that it is invented", () => {
  const { setups, baths, runs, notebooks } = demoShop();
  expect([...setups, ...baths, ...runs, ...notebooks].every(({ invented }) => invented === true)).toBe(true);
});

test("waterBalance(run, givens) of the demo's main run holds what the generator knows to be true", () => {
  const { truth } = demoRun(plans.campKnives);
  const run = readLog(committed("demoLogs/demo-run-knives.csv")).run;
  const { boilOff, misread } = waterBalance(run, {
    salts: { sodiumHydroxide: 20 * pound, sodiumNitrate: 8.5 * pound },
    water: { value: 10.2, standardUncertainty: 0.3 },
    pressure: plans.campKnives.pressure,
  });
  const [low, high] = boilOff.interval95;
  const rate = truth.steam / (truth.end - truth.firstBoil);
  expect(low).toBeLessThan(rate);
  expect(high).toBeGreaterThan(rate);
  expect(misread).toHaveLength(1);
});
