import { expect, test } from "vitest";
import { logsForFit } from "../../../data/generator/inventLogForFit.ts";
import { random } from "../../../data/generator/random.ts";
import { readLog } from "../../../lib/log/index.ts";
import { type AnswerName, figuresOf, judge, median, questions } from "./judge.ts";
import { givesForFit, oracleGivens, oracleRun } from "./judgeGivens.ts";
import { byKind, sorts, tableByKind, tableOfAnswers } from "./judgeTables.ts";

const logs = [...logsForFit(41, 25)];
const around = (value: number, low: number, high: number) => ({ value, interval95: [low, high] as const });
const names = Object.keys(questions) as AnswerName[];

test("judge(logs, fit): a fit that says the truth give or take 10 % covers all, errs by nothing and scores its width", () => {
  const { outcomes, refused } = judge(logs, ({ truth: { boilOff: b } }) => ({ boilOff: around(b, 0.9 * b, 1.1 * b) }));
  expect(refused).toEqual([]);
  const figures = figuresOf(outcomes);
  expect(figures.logs).toBe(logs.length);
  expect(figures.coverage).toBe(1);
  expect(figures.medianError).toBe(0);
  expect(figures.medianHalf).toBeCloseTo(0.1, 12);
  expect(figures.meanScore).toBeCloseTo(0.2, 12);
});

test("judge(logs, fit): a fit that is sure of 10 % too much covers none and pays 40 times what sticks out", () => {
  const sure = judge(logs, ({ truth: { boilOff: b } }) => ({ boilOff: around(1.1 * b, 1.1 * b, 1.1 * b) }));
  const { coverage, meanBias, medianBias, meanScore } = figuresOf(sure.outcomes);
  expect(coverage).toBe(0);
  expect(meanBias).toBeCloseTo(0.1, 12);
  expect(medianBias).toBeCloseTo(0.1, 12);
  expect(meanScore).toBeCloseTo(4, 10);
});

test("judge(logs, fit): normal errors under their own 95 % interval are covered in 95 %", () => {
  const r = random(5);
  const many = Array.from({ length: 40 }, () => logs).flat();
  const { outcomes } = judge(many, ({ truth: { waterAtEnd: w } }) => {
    const value = w * (1 + 0.05 * r.normal());
    return { waterEnd: around(value, value - 0.098 * w, value + 0.098 * w) };
  });
  const { coverage, medianError } = figuresOf(outcomes);
  expect(coverage).toBeGreaterThan(0.93);
  expect(coverage).toBeLessThan(0.97);
  // 0.6745 standard deviations, the quartile of the normal distribution.
  expect(medianError).toBeGreaterThan(0.03);
  expect(medianError).toBeLessThan(0.0375);
});

test("judge(logs, fit): answers that may be 0 are judged in fl oz and minutes, and a bath that stays is capped", () => {
  const { outcomes, refused } = judge(logs, ({ truth: { waterToTarget: w, untilOutOfBand: s } }) => ({
    waterToTarget: around(w + 0.0295735295625 * 0.9982, w - 1, w + 1),
    untilOutOfBand: around(s, Math.max(0, s - 60), s + 60),
  }));
  expect(refused).toEqual([]);
  const of = (name: AnswerName) => figuresOf(outcomes.filter((outcome) => outcome.name === name));
  expect(of("waterToTarget").meanBias).toBeCloseTo(1, 9);
  expect(of("untilOutOfBand").medianError).toBe(0);
  expect(of("untilOutOfBand").medianHalf).toBeLessThanOrEqual(1);
});

test("judge(logs, fit): errors, nonsense and values outside their own interval are refusals, not coverage", () => {
  const throwing = judge(logs, () => {
    throw new Error("missing readings");
  });
  expect(throwing.outcomes).toEqual([]);
  expect(throwing.refused).toHaveLength(logs.length);
  expect(throwing.refused[0]?.message).toBe("missing readings");
  const odd = judge(logs, () => ({ boilOff: around(Number.NaN, 0, 1), makeUp: around(2, 0, 1) }));
  expect(odd.outcomes).toEqual([]);
  expect(odd.refused).toHaveLength(2 * logs.length);
});

test("the tables count every log once in each sort that asks about it", () => {
  const judgement = judge(logs, ({ truth: { boilOff: b } }) => ({ boilOff: around(b, b, b) }));
  for (const sort of Object.values(sorts)) {
    const counted = [...byKind(judgement.outcomes, sort).values()].flat().length;
    expect(counted).toBe(logs.filter(({ kind }) => sort(kind) !== undefined).length);
  }
  expect(tableByKind(judgement, "boilOff")).toMatch(/^\| warm-up: from cold \| \d+ \| 100\.0 % \|/m);
  expect(tableOfAnswers(judgement).split("\n")).toHaveLength(4);
});

test("median([]) is not a number; of an even list it is the middle of the two", () => {
  expect(median([])).toBeNaN();
  expect(median([4, 1, 3, 2])).toBe(2.5);
  expect(median([9, 1, 5])).toBe(5);
});

test("oracleRun(log, run, everything): the log then holds all the water that truly went in, at its true times", () => {
  const everything = { cup: true, unwritten: true, times: true, misread: true };
  for (const log of logsForFit(61, 40)) {
    const run = oracleRun(log, readLog(log.text).run, everything);
    const poured = run.entries.flatMap((row) => (row.kind === "addition" ? [row] : []));
    const mass = poured.reduce((sum, row) => sum + (row.quantity?.si ?? 0), 0);
    expect(mass).toBeCloseTo(
      log.truth.poured.reduce((sum, pour) => sum + pour.mass, 0),
      9,
    );
    if (log.kind.habit !== "drip")
      expect(poured.map(({ time }) => time)).toEqual(log.truth.poured.map(({ time }) => time));
    const struck = run.entries.filter((row) => row.struck).length;
    expect(struck).toBeGreaterThanOrEqual(log.truth.misread.filter(({ by }) => Math.abs(by) >= 2).length);
  }
});

test("oracleGivens(log, oracle) tells the truth, givesForFit(log) what the maker believes", () => {
  const [log] = logs;
  if (!log) throw new Error("missing log");
  expect(givesForFit(log).salts.sodiumHydroxide).toBe(log.told.hydroxide);
  expect(oracleGivens(log, {})).toEqual(givesForFit(log));
  expect(oracleGivens(log, { givens: true }).thermometer?.offset).toBe(log.truth.thermometer.high);
  expect(names).toContain("boilOff");
});
