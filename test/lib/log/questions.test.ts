import { expect, test } from "vitest";
import { readLog } from "../../../lib/log/index.ts";

const times = (text: string, hints = {}) => readLog(text, hints).run.entries.map(({ time }) => time);

test.each([
  ["time", "0:00 284 F\n0:10 285 F\n0:20 286 F\n0:40 287 F\n1:00 288 F", "minutes and seconds", [0, 10, 20, 40, 60]],
  [
    "time",
    "0:00 284 F\n0:10 285 F\n0:20 286 F\n0:40 287 F\n1:00 288 F",
    "hours and minutes",
    [0, 600, 1200, 2400, 3600],
  ],
  ["time", "time,temp F\n0,284\n30,285\n60,286\n90,287", "seconds", [0, 30, 60, 90]],
  ["time", "time,temp F\n0,284\n30,285\n60,286\n90,287", "minutes", [0, 1800, 3600, 5400]],
] as const)("readLog with the answer to %j of %j is %s", (id, text, answer, expected) => {
  expect(times(text, { [id]: answer })).toEqual(expected);
});

test.each([
  ["°F", 413.15],
  ["°C", 557.15],
])("readLog takes a temperature nobody wrote a unit to in %s where that is the answer", (unit, kelvin) => {
  const { run } = readLog("0:00 284\n1:00 285", { "temperature unit": unit });
  expect(run.entries[0]?.quantity?.si).toBeCloseTo(kelvin, 9);
});

test("readLog takes the second temperature column where that is the answer", () => {
  const text = "min,left F,right F\n0,284,290\n1,285,291";
  const { questions } = readLog(text);
  expect(questions.map(({ id, answers }) => [id, answers.map(({ answer }) => answer)])).toEqual([
    ["temperature column", ["left F", "right F"]],
  ]);
  expect(readLog(text, { "temperature column": "right F" }).run.entries[0]?.quantity?.text).toBe("290");
});

test("readLog offers every one of several columns with the same heading", () => {
  const { questions } = readLog("time,temp F,temp F\n0:00,284,290\n1:00,285,291");
  expect(questions[0]?.answers.map(({ answer }) => answer)).toEqual(["temp F", "temp F (column 3)"]);
});

test("readLog puts a reading on a pour's row before the pour, or after it where that is the answer", () => {
  const text = "time,temp F,water fl oz\n0:00,284,\n1:00,285,8";
  const kinds = (hints = {}) => readLog(text, hints).run.entries.map(({ kind }) => kind);
  expect(kinds()).toEqual(["reading", "reading", "addition"]);
  expect(kinds({ "pour on a reading's row": "after the pour" })).toEqual(["reading", "addition", "reading"]);
});

test("readLog takes an amount of water as poured, as a flow since the row before, or as a total", () => {
  const text = "time,temp F,water fl oz\n0:00,284,\n1:00,285,8\n2:00,285,12\n3:00,285,16\n4:00,285,20";
  const water = (answer: string) =>
    readLog(text, { "water column": answer })
      .run.entries.filter(({ kind }) => kind === "addition")
      .map(({ time, duration, quantity }) => [time, duration, Number.parseFloat(quantity?.text ?? "")]);
  expect(water("poured at that time")).toEqual([
    [60, undefined, 8],
    [120, undefined, 12],
    [180, undefined, 16],
    [240, undefined, 20],
  ]);
  expect(water("since the row before")).toEqual([
    [0, 60, 8],
    [60, 60, 12],
    [120, 60, 16],
    [180, 60, 20],
  ]);
  expect(water("running total")).toEqual([
    [60, undefined, 8],
    [120, undefined, 4],
    [180, undefined, 4],
    [240, undefined, 4],
  ]);
});

test.each([
  ["month first", "2026-11-09T19:40"],
  ["day first", "2026-09-11T19:40"],
])("readLog of 11/9/2026 with the %s starts on %s", (answer, start) => {
  const text = "time,temp F\n11/9/2026 19:40,284\n11/9/2026 19:46,291";
  expect(readLog(text, { "day or month first": answer }).run.start).toBe(start);
});

test("readLog counts a feed that is never switched off until the last row, or not at all", () => {
  const text = "0:00 284 F\n1:00 drip on 6 fl oz/min\n11:00 285 F";
  const added = (hints = {}) => readLog(text, hints).run.entries.filter(({ kind }) => kind === "addition");
  expect(added()).toMatchObject([{ duration: 600, quantity: { text: "60 fl oz" } }]);
  expect(added({ "drip end": "not counted" })).toEqual([]);
});

const open = [
  "7:40 284 boils\n7:46 291 8\n7:51 289 12",
  "time,temp,more temp,water\n0:00,284,140,\n0:10,285,141,8\n0:20,286,141,12\n0:30,286,141,16\n0:40,286,141,19",
  "11/9/2026 7:40,138,3\n11/9/2026 7:46,139,4",
  "time,temp,depth,jug,cylinder,salt\n0,284,3,1,31,2\n10,285,3,0.5,30,\n",
];

test.each(open)("an answer to each question of %j is taken and not asked again", (text) => {
  const { questions, run } = readLog(text);
  expect(questions.length).toBeGreaterThan(1);
  for (const { id, taken, answers } of questions) {
    expect(answers.map(({ answer }) => answer)).toContain(taken);
    for (const { answer } of answers) {
      const again = readLog(text, { [id]: answer });
      expect(again.questions.map((question) => question.id)).not.toContain(id);
      if (answer === taken) expect(again.run).toEqual(run);
      else expect(again.run).not.toEqual(run);
    }
  }
});

test.each(open)("every answer to the questions of %j says in numbers what it changes", (text) => {
  const changes = readLog(text).questions.flatMap(({ id, answers }) =>
    id === "pour on a reading's row" ? [] : answers.map((answer) => answer.changes),
  );
  expect(changes.filter((words) => !/\d/.test(words))).toEqual([]);
});

test("readLog reports an answer to a question that it does not have, and names those that it has", () => {
  const { problems } = readLog("0:00 284 F\n1:00 285 F", { "air pressure": "high", __proto__: "x" });
  expect(problems).toEqual([
    expect.objectContaining({ line: 1, expected: expect.stringContaining("temperature unit") }),
  ]);
});

test("readLog reports an answer that a question does not have, and takes the likeliest", () => {
  const { problems, run } = readLog("0:00 284\n1:00 285", { "temperature unit": "°R" });
  expect(problems).toEqual([expect.objectContaining({ expected: "one of: °F; °C" })]);
  expect(run.entries[0]?.quantity?.unit).toBe("°F");
});

test("readLog leaves an answer unused where the log itself says it", () => {
  const { run, problems, questions } = readLog("7:40 pm 284 F\n7:46 285 F", { "temperature unit": "°C" });
  expect(run.entries[0]?.quantity?.unit).toBe("°F");
  expect([problems, questions]).toEqual([[], []]);
});
