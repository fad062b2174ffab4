import { expect, test } from "vitest";
import { inventLoggerLog } from "../../../data/generator/inventLoggerLog.ts";
import { fitRun } from "../../../lib/fit/run/fitRun.ts";
import { readLog } from "../../../lib/log/index.ts";

// Invented logger files in which the fire was turned down by half, and no row says so.
for (const seed of [72_032, 72_053, 72_105]) {
  const log = inventLoggerLog(seed);
  const { told, truth } = log;
  const fit = fitRun(readLog(log.text).run, {
    salts: { sodiumHydroxide: told.hydroxide, sodiumNitrate: told.nitrate },
    pressure: told.pressure,
    ...(told.water && {
      water: { value: told.water.value, standardUncertainty: told.water.share * told.water.value },
    }),
    target: truth.boilingPointAtEnd,
    band: 1.1,
    tank: told.tank,
  });
  const [change] = truth.burner;
  const remark = fit.remarks.find((text) => text.includes("turned down without a word"));

  test(`fitRun(run, givens): a fire turned down to ${change?.share.toFixed(2)} at ${Math.round((change?.time ?? 0) / 60)} min is found though file ${seed} does not tell of it`, () => {
    expect(truth.burner).toHaveLength(1);
    const minutes = Number(/some (\d+) min/.exec(remark ?? "")?.[1]);
    expect(Math.abs(minutes - (change?.time ?? 0) / 60)).toBeLessThan(10);
  });

  test(`fitRun(run, givens): file ${seed} has every pour, and none is thought of instead`, () => {
    expect(fit.probablyUnwritten).toEqual([]);
    const [low, high] = fit.boilOff.interval95;
    expect(low).toBeLessThan(truth.boilOff);
    expect(high).toBeGreaterThan(truth.boilOff);
  });
}

test("fitRun(run, givens): a file that a hand wrote is not thought to keep silent about the fire", () => {
  const { run } = readLog(inventLoggerLog(72_105).text);
  let readings = 0;
  const thin = { ...run, entries: run.entries.filter(({ kind }) => kind !== "reading" || readings++ % 200 === 0) };
  const { remarks } = fitRun(thin, {
    salts: { sodiumHydroxide: 8, sodiumNitrate: 3 },
    pressure: 101_325,
    target: 415,
    band: 1.1,
  });
  expect(remarks.some((text) => text.includes("without a word"))).toBe(false);
});
