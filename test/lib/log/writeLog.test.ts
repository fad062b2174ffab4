import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import Papa from "papaparse";
import { expect, test } from "vitest";
import { addEntry, correct, readLog, strikeOut, writeLog } from "../../../lib/log/index.ts";
import type { Entry, EntryKind, Run } from "../../../lib/log/types.ts";
import { isUnread, type Kind, readQuantity, type Written } from "../../../lib/measure/index.ts";

const folder = new URL("./examples/", import.meta.url);

test.each(readdirSync(folder))("what writeLog writes of %s, readLog reads back equal", (file) => {
  const { run } = readLog(readFileSync(new URL(file, folder), "utf8"));
  const again = readLog(writeLog(run));
  expect(again).toEqual({ run, problems: [], questions: [] });
});

test("writeLog keeps what was struck out, corrected and added by hand", () => {
  const { run } = readLog("7:40 pm 284 F boils\n7:46 219 F\n7:51 3 cups\n");
  const ids = run.entries.map(({ id }) => id);
  const corrected = correct(strikeOut(run, ids[0] ?? "", 'misread, "maybe"'), ids[2] ?? "", "291");
  if (!("run" in corrected)) throw new Error("not corrected");
  const added = addEntry(corrected.run, { time: 30, kind: "addition", text: "2 cups", clock: "7:40:30 pm" });
  if (!("run" in added)) throw new Error("not added");
  expect(readLog(writeLog(added.run)).run).toEqual(added.run);
});

// RFC 4180 (2005), section 2: records end in CRLF (1); a heading with as many fields (3, 4); quotes doubled (7).
test("writeLog writes the form of RFC 4180", () => {
  const text = writeLog(readLog('7:40 pm 284 F, says "good"\n7:46 285 F').run);
  expect(text.endsWith("\r\n")).toBe(true);
  expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  const { data, errors } = Papa.parse<string[]>(text.trimEnd(), { delimiter: ",", newline: "\r\n" });
  expect(errors).toEqual([]);
  expect(new Set(data.map((row) => row.length)).size).toBe(1);
  expect(text).toContain('""good""');
});

test.each(["=1+1", "@now", "+1+cmd", "-2*3", "\t=1"])(
  "writeLog writes %j so that no spreadsheet takes it for a formula",
  (words) => {
    const added = addEntry(readLog("7:40 pm 284 F").run, { time: 60, kind: "remark", text: words });
    if (!("run" in added)) throw new Error("not added");
    const cells = Papa.parse<string[]>(writeLog(added.run)).data.flat();
    expect(cells.filter((cell) => /^[=@\t]|^[+-](?!\d+ oz)/.test(cell))).toEqual([]);
    expect(readLog(writeLog(added.run)).run).toEqual(added.run);
  },
);

test("writeLog of a run without entries reads back empty", () => {
  expect(readLog(writeLog({ entries: [] })).run).toEqual({ entries: [] });
});

const amounts: readonly (readonly [EntryKind, Kind, string])[] = [
  ["reading", "temperature", "°F"],
  ["addition", "water", "fl oz"],
  ["salt in", "mass", "lb"],
  ["depth", "length", "in"],
  ["cylinder", "mass", "kg"],
];

function written(text: string, kind: Kind, unit: string): Written {
  const read = readQuantity(text, { kind, unit });
  if (isUnread(read)) throw new Error(read.expected);
  return read;
}

const words = fc.oneof(
  fc.string({ unit: "binary", maxLength: 20 }),
  fc.constantFrom("", "'", '"', "=1", "a\r\nb", " ", ",", "\ufeff"),
);
const maybe = <Name extends string>(name: Name) =>
  fc.oneof(
    fc.constant({}),
    words.map((text) => ({ [name]: text })),
  );
const one = fc
  .tuple(
    fc.double({ min: 0, max: 1e6, noNaN: true }),
    fc.oneof(
      fc
        .tuple(fc.constantFrom(...amounts), fc.double({ min: 1, max: 500, noNaN: true }))
        .map(([[kind, measured, unit], number]) => ({
          kind,
          quantity: written(String(Number(number.toPrecision(6))), measured, unit),
        })),
      fc.constant({ kind: "remark" as const }),
    ),
    maybe("text"),
    maybe("clock"),
    maybe("reason"),
    fc.oneof(
      fc.constant({}),
      fc.array(words, { maxLength: 3 }).map((before) => ({ before })),
    ),
    fc.boolean(),
    fc.nat(9999),
  )
  .map(([time, what, text, clock, reason, before, struck, line]) => ({
    time,
    ...what,
    ...text,
    ...clock,
    ...reason,
    ...before,
    struck,
    line,
  }));

test("what writeLog writes of any run, readLog reads back equal", () => {
  fc.assert(
    fc.property(fc.array(one, { maxLength: 8 }), (list) => {
      const entries = list.map((entry, index): Entry => ({ id: `${index}`, ...entry })).sort((a, b) => a.time - b.time);
      const run: Run = { entries };
      const again = readLog(writeLog(run));
      expect(again.run).toEqual(run);
      expect(again.problems).toEqual([]);
    }),
    { numRuns: 1000 },
  );
});

test("readLog of a written log with a changed amount takes the amount and says so", () => {
  const text = writeLog(readLog("7:40 pm 284 F\n7:46 291 F").run).replace("291 F", "289 F");
  const { run, problems } = readLog(text);
  expect(run.entries[1]?.quantity?.si).toBeCloseTo((289 + 459.67) / 1.8, 9);
  expect(problems).toEqual([expect.objectContaining({ expected: "the same as the amount, 289 F °F" })]);
});

test.each([
  ["an unknown kind", "reading", "temperture"],
  ["a time that is none", "\r\n360,", "\r\nlater,"],
])("readLog of a written log with %s keeps the row and reports it", (_, what, instead) => {
  const { run } = readLog("7:40 pm 284 F\n7:46 291 F");
  const again = readLog(writeLog(run).replace(what, instead));
  expect(again.run.entries.length).toBe(2);
  expect(again.problems.length).toBe(1);
});

test("readLog of a mutilated written log never throws and keeps sound numbers", () => {
  const text = writeLog(readLog('7:40 pm 284 F, "boils"\n7:46 291 F\n7:51 3 cups').run);
  fc.assert(
    fc.property(fc.nat(text.length), fc.nat(60), fc.string({ unit: "binary", maxLength: 6 }), (at, length, put) => {
      const { run } = readLog(text.slice(0, at) + put + text.slice(at + length));
      expect(run.entries.every(({ time }) => Number.isFinite(time))).toBe(true);
    }),
    { numRuns: 1000 },
  );
});
