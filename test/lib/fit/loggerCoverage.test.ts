import { expect, test } from "vitest";
import { inventLoggerLog, type LoggerLog } from "../../../data/generator/inventLoggerLog.ts";
import { fitRun } from "../../../lib/fit/run/fitRun.ts";
import type { FitGivens } from "../../../lib/fit/run/types.ts";
import { readLog } from "../../../lib/log/index.ts";
import type { Run } from "../../../lib/log/types.ts";

// Two hours at 1 Hz with noise that is the same for some 20 s: seven thousand readings say hardly more than a hundred.
const first = 91_001;
const count = 60;

function givesForLogger({ told, truth }: LoggerLog): FitGivens {
  return {
    salts: { sodiumHydroxide: told.hydroxide, sodiumNitrate: told.nitrate },
    pressure: told.pressure,
    ...(told.water === undefined
      ? {}
      : { water: { value: told.water.value, standardUncertainty: told.water.share * told.water.value } }),
    target: truth.boilingPointAtEnd,
    band: 1.1,
    tank: told.tank,
    ...(told.burner === undefined
      ? {}
      : { burner: { power: { value: told.burner, standardUncertainty: 0.1 * told.burner } } }),
  };
}

/** The log with some hundred of its readings, evenly, and all else. */
function thinnedTo(readings: number, run: Run): Run {
  const all = run.entries.filter(({ kind }) => kind === "reading").length;
  let seen = 0;
  const entries = run.entries.filter(({ kind }) => {
    if (kind !== "reading") return true;
    seen++;
    return Math.floor((seen * readings) / all) > Math.floor(((seen - 1) * readings) / all);
  });
  return { ...run, entries };
}

const found: { readonly holds: boolean; readonly width: number; readonly readings: number }[] = [];
for (let i = 0; i < count; i++) {
  const log = inventLoggerLog(first + i);
  const { run } = readLog(log.text);
  const width = ([low, high]: readonly [number, number]) => high - low;
  const thin = thinnedTo(100, run);
  const whole = fitRun(run, givesForLogger(log)).boilOff.interval95;
  const part = fitRun(thin, givesForLogger(log)).boilOff.interval95;
  found.push({
    holds: whole[0] <= log.truth.boilOff && log.truth.boilOff <= whole[1],
    width: width(whole) / width(part),
    readings: thin.entries.filter(({ kind }) => kind === "reading").length,
  });
  // A worker that never pauses looks dead to its parent.
  await new Promise((resolve) => setImmediate(resolve));
}
const covered = found.filter(({ holds }) => holds).length;
const widths = found.map(({ width }) => width).sort((a, b) => a - b);
const middle = widths[Math.floor(count / 2)] ?? Number.NaN;

test(`fitRun(run, givens): the 95 % interval of the boil-off holds the truth in ${covered} of ${count} logger files`, () => {
  // Short of the 92 % that handwritten logs reach: a fire turned down unsaid is at times still taken for pours not written.
  expect(covered / count).toBeGreaterThanOrEqual(0.85);
});

test(`fitRun(run, givens): of a logger file it is ${middle.toFixed(2)} times as wide as of a hundred of its readings, the least ${(widths[0] ?? 0).toFixed(2)}, the tenth ${(widths[Math.floor(count / 10)] ?? 0).toFixed(2)}`, () => {
  expect(found.every(({ readings }) => readings === 100)).toBe(true);
  expect(middle).toBeGreaterThanOrEqual(0.9);
});
