import fc from "fast-check";
import { expect, test } from "vitest";
import { inventLog } from "../../../data/generator/inventLog.ts";
import { runOfRows } from "../../../data/generator/runOfRows.ts";
import { type Answer, type BalanceGivens, waterBalance } from "../../../lib/bath/index.ts";
import type { Run } from "../../../lib/log/types.ts";
import { widthFrom } from "../../../lib/measure/index.ts";
import { entry, gives, reading } from "./logs.ts";

const seeds = fc.integer({ min: 7001, max: 7200 });
const few = { numRuns: 10 };
const sound = ({ value, standardUncertainty, interval95: [low, high] }: Answer) =>
  [value, standardUncertainty, low, high].every(Number.isFinite) && low <= value && value <= high;

test("waterBalance(run, givens) doubles with a tank, a fire and pours twice as large", () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const log = inventLog(seed);
      const one = gives(log);
      const run = runOfRows(log.rows.filter(({ note }) => note !== "parts in"));
      const larger: Run = {
        entries: run.entries.map((row) =>
          row.kind === "addition" && row.quantity
            ? { ...row, quantity: { ...row.quantity, si: 2 * row.quantity.si } }
            : row,
        ),
      };
      const twice: BalanceGivens = {
        pressure: one.pressure,
        salts: { sodiumHydroxide: 2 * log.told.hydroxide, sodiumNitrate: 2 * log.told.nitrate },
        ...(log.told.water === undefined
          ? {}
          : { water: { value: 2 * log.told.water, standardUncertainty: 0.1 * log.told.water } }),
      };
      const small = waterBalance(run, one).boilOff;
      const large = waterBalance(larger, twice).boilOff;
      expect(large.value / small.value).toBeCloseTo(2, 2);
      expect(large.interval95[1] / small.interval95[1]).toBeCloseTo(2, 2);
    }),
    few,
  );
});

test("waterBalance(run, givens) does not hang on the order of kinds on one time", () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const log = inventLog(seed);
      const run = runOfRows(log.rows);
      const remarksFirst = [...run.entries].sort(
        (a, b) => a.time - b.time || Number(b.kind === "remark") - Number(a.kind === "remark"),
      );
      expect(waterBalance({ entries: remarksFirst }, gives(log)).boilOff).toEqual(
        waterBalance(run, gives(log)).boilOff,
      );
    }),
    few,
  );
});

test("waterBalance(run, givens) is finite, ordered and inside for whatever a log of readings and pours may say", () => {
  const rows = fc.array(
    fc.record({
      time: fc.integer({ min: 0, max: 7200 }),
      T: fc.integer({ min: 395, max: 425 }),
      pour: fc.double({ min: 0, max: 1, noNaN: true }),
    }),
    { minLength: 1, maxLength: 25 },
  );
  fc.assert(
    fc.property(rows, (list) => {
      const entries = list.flatMap(({ time, T, pour }) => [
        reading(time, T),
        ...(pour > 0.6 ? [entry("addition", time, pour)] : []),
      ]);
      let balance: ReturnType<typeof waterBalance>;
      try {
        balance = waterBalance(
          { entries },
          { salts: { sodiumHydroxide: 8, sodiumNitrate: 3 }, pressure: 101_325, target: 416, band: 2 },
        );
      } catch (error) {
        expect(String(error)).toMatch(/missing (readings|boil):/);
        return;
      }
      const { boilOff, makeUp, waterStart, waterEnd, ratioStart, ratioEnd, inBand, poured } = balance;
      const answers = [
        boilOff,
        makeUp,
        waterStart,
        waterEnd,
        ratioStart,
        ratioEnd,
        poured,
        ...(inBand ? [inBand] : []),
      ];
      expect(answers.filter((answer) => !sound(answer))).toEqual([]);
      expect(balance.points.length).toBe(list.length);
    }),
    { numRuns: 60 },
  );
});

test("waterBalance(run, givens).boilOff.measured says what its width comes from", () => {
  const log = inventLog(7001);
  const { boilOff } = waterBalance(runOfRows(log.rows), gives(log));
  const sources = widthFrom(boilOff.measured).map(({ source }) => source);
  expect(sources).toContain("cup");
  expect(sources).toContain("readings");
});

test("waterBalance(run, givens) with a cup weighed exactly is narrower", () => {
  const log = inventLog(7003);
  const run = runOfRows(log.rows);
  const width = (givens: BalanceGivens) => {
    const [low, high] = waterBalance(run, givens).boilOff.interval95;
    return high - low;
  };
  expect(width({ ...gives(log), cup: { allNight: 0.005, eachPour: 0.005 } })).toBeLessThan(width(gives(log)));
});
