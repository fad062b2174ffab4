import { expect, test } from "vitest";
import { inventLogForFit, type LogForFit } from "../../../data/generator/inventLogForFit.ts";
import { fitKnowing } from "../../../lib/fit/run/fitKnowing.ts";
import { fitRun } from "../../../lib/fit/run/fitRun.ts";
import { readLog } from "../../../lib/log/index.ts";
import { type Fit, figuresOf, judge, type Outcome } from "./judge.ts";
import { givesForFit, knownOf } from "./judgeGivens.ts";

// Every fourth of the logs of the coverage test, fitted twice: as always, and by the same fit when it is told the true
// lag, mixing, noise, fire and pouring habit. What the second cannot tell either is not to be had from such logs.
const seeds = Array.from({ length: 150 }, (_, i) => 90_001 + 4 * i);
const plainly: Fit = (log) => ({ boilOff: fitRun(readLog(log.text).run, givesForFit(log)).boilOff });
const knowing: Fit = (log) => ({
  boilOff: fitKnowing(readLog(log.text).run, givesForFit(log), knownOf(log)).boilOff,
});
const plain: Outcome[] = [];
const told: Outcome[] = [];
const refused: string[] = [];
for (const seed of seeds) {
  const log = inventLogForFit(seed);
  for (const [fit, list] of [
    [plainly, plain],
    [knowing, told],
  ] as const) {
    const judged = judge([log], fit);
    list.push(...judged.outcomes);
    refused.push(...judged.refused.map(({ message }) => `${seed}: ${message}`));
  }
  // A worker that never pauses looks dead to its parent.
  await new Promise((resolve) => setImmediate(resolve));
}
const fit = figuresOf(plain);
const oracle = figuresOf(told);
const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
const shared = <T>(value: (log: LogForFit) => T) => value(inventLogForFit(41));

test(`fitRun(run, givens): median error of the boil-off ${percent(fit.medianError)} in ${fit.logs} logs, ${percent(oracle.medianError)} when told lag, mixing, noise, fire and habit`, () => {
  expect(refused).toEqual([]);
  expect(fit.medianError).toBeLessThanOrEqual(Math.max(0.039, 1.3 * oracle.medianError));
});

test(`fitRun(run, givens): median half-width of the boil-off ${percent(fit.medianHalf)} in ${fit.logs} logs, ${percent(oracle.medianHalf)} when told lag, mixing, noise, fire and habit`, () => {
  expect(fit.medianHalf).toBeLessThanOrEqual(Math.max(0.11, 1.3 * oracle.medianHalf));
});

// Not the mean score: a first boil that both misjudge costs the surer one more.
test(`fitKnowing(run, givens, known): what it is told makes it surer: median half-width ${percent(oracle.medianHalf)} after ${percent(fit.medianHalf)}, median score ${percent(oracle.medianScore)} after ${percent(fit.medianScore)}`, () => {
  expect(oracle.medianHalf).toBeLessThan(fit.medianHalf);
  expect(oracle.medianScore).toBeLessThan(fit.medianScore);
  expect(oracle.coverage).toBeGreaterThan(0.8);
});

test("fitKnowing(run, givens, {}): is fitRun to the last digit", () => {
  for (const seed of [41, 42, 43]) {
    const log = inventLogForFit(seed);
    const run = readLog(log.text).run;
    expect(fitKnowing(run, givesForFit(log), {})).toEqual(fitRun(run, givesForFit(log)));
  }
});

test("fitKnowing(run, givens, known): parameters that are known are no longer asked for, others stay", () => {
  const found = shared((log) => fitKnowing(readLog(log.text).run, givesForFit(log), { lag: 12 }));
  const usual = shared((log) => fitRun(readLog(log.text).run, givesForFit(log)));
  const names = usual.parameters.map(({ name }) => name);
  expect(names).toContain("thermometer lag");
  expect(found.parameters.map(({ name }) => name)).toEqual(names.filter((name) => name !== "thermometer lag"));
  expect(found.covariance.matrix).toHaveLength(names.length - 1);
});

test("fitKnowing(run, givens, known): the noise that it is told is the noise that it finds", () => {
  const found = shared((log) => fitKnowing(readLog(log.text).run, givesForFit(log), { noise: 0.27 }));
  expect(found.residuals.noise).toBeCloseTo(0.27, 12);
});

test("fitKnowing(run, givens, known): half a fire from the middle on halves the water that boils off there", () => {
  const reading = (time: number, si: number) => ({
    id: `r${time}`,
    time,
    kind: "reading" as const,
    line: 1,
    struck: false,
    quantity: {
      text: "",
      si,
      dimension: { temperature: 1 },
      unit: "K",
      standardUncertainty: 0,
      known: "measured" as const,
    },
  });
  const run = {
    entries: Array.from({ length: 13 }, (_, i) =>
      reading(300 * i, 415 + 0.25 * Math.min(i, 6) + 0.1 * Math.max(0, i - 6)),
    ),
  };
  const givens = { salts: { sodiumHydroxide: 8, sodiumNitrate: 3 }, pressure: 101_325, target: 417, band: 1.1 };
  const water = (time: number, moments: ReturnType<typeof fitRun>["course"]) =>
    moments.reduce((a, b) => (Math.abs(b.time - time) < Math.abs(a.time - time) ? b : a)).water;
  const { course } = fitKnowing(run as Parameters<typeof fitRun>[0], givens, {
    fire: (time) => (time < 1800 ? 1 : 0.5),
  });
  const early = water(0, course) - water(1800, course);
  const late = water(1800, course) - water(3600, course);
  // Half the fire boils off less than half: 15 % of the first boil-off is lost all the same.
  expect(late / early).toBeCloseTo(0.5 - 0.15 * 0.5, 2);
});
