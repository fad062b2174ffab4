import { expect, test } from "vitest";
import { waterBalance } from "../../../lib/bath/index.ts";
import { readLog } from "../../../lib/log/index.ts";

/** A hold whose readings fall by `slope` °F a minute, every five minutes, with no water written; worked by hand. */
function falling(slope: number, rows: number): string {
  const line = (i: number): string => `${5 * i}:00,${(291 + slope * 5 * i + 0.3 * Math.sin(36.5 * i)).toFixed(1)}`;
  return ["time,temp F", ...Array.from({ length: rows }, (_, i) => line(i))].join("\n");
}

const givens = { salts: { sodiumHydroxide: 9.07, sodiumNitrate: 3.86 }, pressure: 93_000, target: 416, band: 1.67 };

test.each([
  [-0.05, 60],
  [-0.2, 20],
  [-0.2, 60],
  [-0.5, 6],
  [-0.5, 60],
])("waterBalance(run, givens) says that readings falling by %d °F a minute over %d rows tell little", (slope, rows) => {
  const { boilOff, remarks } = waterBalance(readLog(falling(slope, rows)).run, givens);
  expect(remarks[0]).toContain("The boiling point fell");
  const [low, high] = boilOff.interval95;
  // Whatever left as steam is hidden by water that nobody wrote: an ordinary boil-off, 0.6 % a minute, can't be ruled out.
  expect(high).toBeGreaterThan((0.006 / 60) * 8);
  expect(low).toBeGreaterThanOrEqual(0);
  expect(boilOff.value).toBeGreaterThanOrEqual(low);
  expect(boilOff.standardUncertainty).toBeGreaterThan((high - boilOff.value) / 2);
});

test("waterBalance(run, givens) has nothing against a steady hold, a rising one, or one that pours account for", () => {
  const rising = readLog(falling(0.1, 20)).run;
  const steady = readLog(falling(0, 20)).run;
  const poured = readLog("time,F,water oz\n0,291,\n10,293,\n11,,48\n15,287,\n20,288,\n25,290,\n30,291,").run;
  for (const run of [rising, steady, poured]) {
    expect(waterBalance(run, givens).remarks.filter((remark) => /fell|Most readings/.test(remark))).toEqual([]);
  }
});
