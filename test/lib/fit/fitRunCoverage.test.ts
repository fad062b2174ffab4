import { expect, test } from "vitest";
import { logsForFit } from "../../../data/generator/inventLogForFit.ts";
import { fitRun } from "../../../lib/fit/run/fitRun.ts";
import { readLog } from "../../../lib/log/index.ts";
import { type AnswerName, type Fit, figuresOf, judge, type Outcome } from "./judge.ts";
import { givesForFit } from "./judgeGivens.ts";

// 600 invented logs that nothing was tuned on. The generator is richer than the fit and shares nothing with it but the
// type of a log, yet it is ours: a figure of regression and honesty, no proof of the physics.
const first = 91_001;
const count = 600;
const answersTo: Fit = (log) => {
  const { boilOff, makeUp, water, waterToTarget, untilOutOfBand } = fitRun(readLog(log.text).run, givesForFit(log));
  return { boilOff, makeUp, water, waterToTarget, untilOutOfBand };
};
const outcomes: Outcome[] = [];
const refused: string[] = [];
/** Logs whose bath is out of its band at the end: the time left is 0, and any interval from 0 on holds it. */
const outAlready = new Set<number>();
for (const log of logsForFit(first, count)) {
  const judged = judge([log], answersTo);
  outcomes.push(...judged.outcomes);
  refused.push(...judged.refused.map(({ seed, message }) => `${seed}: ${message}`));
  if (log.truth.untilOutOfBand === 0) outAlready.add(log.seed);
  // A worker that never pauses looks dead to its parent.
  await new Promise((resolve) => setImmediate(resolve));
}
const of = (name: AnswerName) => outcomes.filter((outcome) => outcome.name === name);
const percent = (share: number) => `${(100 * share).toFixed(1)} %`;

test(`fitRun(run, givens): answers ${count - refused.length} of ${count} invented logs`, () => {
  expect(refused).toEqual([]);
});

const boilOff = figuresOf(of("boilOff"));

test(`fitRun(run, givens): the 95 % interval of the boil-off holds the truth in ${percent(boilOff.coverage)} of ${boilOff.logs} invented logs`, () => {
  expect(boilOff.coverage).toBeGreaterThanOrEqual(0.92);
  expect(boilOff.coverage).toBeLessThanOrEqual(0.98);
});

// A bath that stood below its boil for most of the log boiled off next to nothing: there any error is many times the
// truth, and one such log would be the whole mean.
const boiling = figuresOf(of("boilOff").filter(({ log }) => log.kind.offBoil < 0.5));

test(`fitRun(run, givens): the boil-off is off by ${percent(boiling.meanBias)} on the mean of ${boiling.logs} logs, by ${percent(boilOff.meanBias)} with those whose bath stood below its boil for most of the time`, () => {
  expect(boilOff.logs - boiling.logs).toBeLessThan(0.01 * count);
  expect(Math.abs(boiling.meanBias)).toBeLessThanOrEqual(0.015);
  expect(Math.abs(boilOff.meanBias)).toBeLessThanOrEqual(0.015);
});

// What can be reached is held against an oracle in oracle.test.ts; these only keep what is reached.
test(`fitRun(run, givens): boil-off, median error ${percent(boilOff.medianError)}, median half-width ${percent(boilOff.medianHalf)}, mean interval score ${percent(boilOff.meanScore)}`, () => {
  expect(boilOff.medianError).toBeLessThanOrEqual(0.055);
  expect(boilOff.medianHalf).toBeLessThanOrEqual(0.155);
  expect(boilOff.meanScore).toBeLessThanOrEqual(0.6);
});

const others = ["makeUp", "water", "waterToTarget"] as const;
for (const name of others) {
  const { coverage, logs } = figuresOf(of(name));
  test(`fitRun(run, givens): the 95 % interval of ${name} holds the truth in ${percent(coverage)} of ${logs} invented logs`, () => {
    expect(coverage).toBeGreaterThanOrEqual(0.9);
    expect(coverage).toBeLessThanOrEqual(0.98);
  });
}

const inside = figuresOf(of("untilOutOfBand").filter(({ log }) => !outAlready.has(log.seed)));
const out = figuresOf(of("untilOutOfBand").filter(({ log }) => outAlready.has(log.seed)));

test(`fitRun(run, givens): the 95 % interval of untilOutOfBand holds the truth in ${percent(inside.coverage)} of the ${inside.logs} logs whose bath ends in its band`, () => {
  expect(inside.coverage).toBeGreaterThanOrEqual(0.9);
  expect(inside.coverage).toBeLessThanOrEqual(0.98);
});

test(`fitRun(run, givens): the 95 % interval of untilOutOfBand reaches to 0 in ${percent(out.coverage)} of the ${out.logs} logs whose bath ends out of its band`, () => {
  expect(out.coverage).toBeGreaterThanOrEqual(0.9);
});
