import { expect, test } from "vitest";
import type { FittedRun } from "../../lib/fit/index.ts";
import { type Job, openLines } from "../../lib/lines/index.ts";
import { readLog } from "../../lib/log/index.ts";
import { fitWork } from "../../notebooks/givensOf.ts";
import oneRun from "../../notebooks/oneRun.ts";
import { partsOfFit } from "../../notebooks/partsOfFit.ts";
import { vocabulary } from "../../notebooks/vocabulary.ts";

/** A hold with pours, invented for these tests. */
const hold = `time,temp F,water fl oz,remark
0:00,287,,boils
4:00,289,,
8:00,291,,
9:00,,24,
12:00,288,,
16:00,290,,
20:00,292,,
21:00,,24,
24:00,289,,
28:00,291,,
32:00,292,,end
`;

const givens = {
  log: readLog(hold).run,
  "sodium hydroxide": "20 lb",
  "sodium nitrate": "9 lb",
  altitude: "2000 ft",
};

test("every line of One run that is shown comes to a number, a word, or to something not known", async () => {
  const lines = openLines(oneRun, { vocabulary, givens });
  await lines.settled();
  const wrong = lines.names().filter((name) => {
    const line = lines.line(name);
    if (line.kind === "given" || line.hidden || line.rare) return false;
    return lines.result(name).state !== "settled";
  });
  expect(wrong).toEqual([]);
  lines.close();
});

test("a fitted line carries what the log told of it", async () => {
  const lines = openLines(oneRun, { vocabulary, givens });
  await lines.settled();
  const fitted = lines.names().filter((name) => {
    const line = lines.line(name);
    return line.kind === "fitted" && !line.hidden && lines.result(name).state === "settled";
  });
  expect(fitted.length).toBeGreaterThanOrEqual(7);
  for (const name of fitted)
    expect(lines.result(name)).toMatchObject({
      value: { told: { word: expect.stringMatching(/^(nothing|some|much)$/) } },
    });
  lines.close();
});

test("without a target nothing is said of coming back to it, and the boil-off stays", async () => {
  const lines = openLines(oneRun, { vocabulary, givens: { ...givens, target: "" } });
  await lines.settled();
  expect(lines.result("boil-off").state).toBe("settled");
  expect(lines.result("water to come back to target").state).toBe("stopped");
  lines.close();
});

test("where the fit fails the water balance still stands, and the words of the error are there", async () => {
  const failing = {
    functions: vocabulary.functions.map((func) =>
      func.work && func.name === "fit of run"
        ? { ...func, slow: (_: Job) => Promise.reject(new Error("it came to nothing")) }
        : func,
    ),
  };
  const lines = openLines(oneRun, { vocabulary: failing, givens });
  await lines.settled();
  expect(lines.result("fitted bath")).toMatchObject({ state: "stopped", says: "it came to nothing" });
  expect(lines.result("boil-off")).toEqual({ state: "waits", for: "fitted bath" });
  expect(lines.result("boil-off by water balance").state).toBe("settled");
  lines.close();
});

test("fitWork is plain data that a worker can be sent", async () => {
  const lines = openLines(oneRun, { vocabulary, givens: { ...givens, "tank length": "30 in", "tank width": "6 in" } });
  await lines.settled();
  const settled = (name: string): unknown => {
    const result = lines.result(name);
    return result.state === "settled" ? result.value : undefined;
  };
  const names = ["log", "salts known", "water at the start", "pressure at the tank", "target", "band"];
  const work = fitWork([...names.map(settled), undefined, "scale", settled("tank length"), settled("tank width")]);
  expect(structuredClone(work)).toEqual(work);
  expect(work.aims).toBe(true);
  // 1 in is 0.0254 m exactly (international yard and pound, 1959).
  expect(work.givens.tank?.length).toMatchObject({ value: expect.closeTo(30 * 0.0254, 12) });
  lines.close();
});

const amount = (value: number, low: number, high: number) => ({
  value,
  standardUncertainty: (high - low) / 3.92,
  interval95: [low, high] as const,
  measured: { value, dimension: { mass: 1 }, components: new Map([["x", (high - low) / 3.92]]) },
});

/** A fit with nothing in it but what the water to come back hangs on. */
const withWater = (waterToTarget: ReturnType<typeof amount>): FittedRun =>
  ({
    parameters: [],
    boilOff: amount(1, 0.9, 1.1),
    makeUp: amount(1, 0.9, 1.1),
    untilOutOfBand: amount(60, 50, 70),
    waterToTarget,
    firstBoil: 0,
  }) as unknown as FittedRun;

test("water to come back is a pour where its spread is above 0, too much where below, neither where it reaches 0", () => {
  const sure = (low: number, high: number) => {
    const parts = partsOfFit(withWater(amount((low + high) / 2, low, high)), true);
    return [parts.has("pour to come back"), parts.has("too much water")];
  };
  expect(sure(0.1, 0.5)).toEqual([true, false]);
  expect(sure(-0.5, -0.1)).toEqual([false, true]);
  expect(sure(-0.1, 0.5)).toEqual([false, false]);
  const tooMuch = partsOfFit(withWater(amount(-0.3, -0.5, -0.1)), true).get("too much water");
  expect(tooMuch).toMatchObject({ value: 0.3, interval95: [0.1, 0.5] });
});
