import { expect, test } from "vitest";
import { readLog } from "../../lib/log/index.ts";
import { addedRow } from "../../notebooks/page/addedRow.ts";

const log = readLog("time,temp F\n0:00,284\n10:00,288\n").run;
const row = (remark: string, more = {}) => ({
  time: "12:00",
  temperature: "",
  water: "",
  waterUnit: "fl oz",
  remark,
  ...more,
});

test.each([
  ["burner to 3/4", "burner", 0.75],
  ["burner to 70 %", "burner", 0.7],
  // 1 lb is 0.45359237 kg exactly (international yard and pound, 1959).
  ["parts in 4 lb", "parts in", 4 * 0.45359237],
  ["parts out", "parts out", undefined],
  ["boils", "remark", undefined],
  ["lid off", "remark", undefined],
])("the remark %j below a log from elsewhere becomes %j, as it would in a log", (remark, kind, si) => {
  const { run, problems } = addedRow(log, row(remark), "°F");
  const added = run.entries.filter(({ line }) => line === 0);
  expect(added).toHaveLength(1);
  expect(added[0]).toMatchObject({ kind, text: remark, time: 720, clock: "12:00", struck: false });
  if (si === undefined) expect(added[0]?.quantity).toBeUndefined();
  else expect(added[0]?.quantity?.si).toBeCloseTo(si, 9);
  expect(problems).toEqual([]);
});

test("a burner that is turned without a number is an event, and what is missing is told", () => {
  const { run, problems } = addedRow(log, row("burner down"), "°F");
  expect(run.entries.at(-1)).toMatchObject({ kind: "burner", text: "burner down" });
  expect(problems.map(({ expected }) => expected)).toEqual(["how far the burner is open"]);
});

test("reading, water and remark of one typed row stand at one time with ids of their own", () => {
  const { run } = addedRow(log, row("burner to 1/2", { temperature: "289", water: "24 fl oz" }), "°F");
  const added = run.entries.filter(({ line }) => line === 0);
  expect(added.map(({ kind }) => kind).sort()).toEqual(["addition", "burner", "reading"]);
  expect(new Set(run.entries.map(({ id }) => id)).size).toBe(run.entries.length);
});
