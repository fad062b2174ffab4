import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { readLog } from "../../../lib/log/index.ts";
import { inUnit } from "../../../lib/measure/index.ts";

/** Every entry as "s kind amount", amounts in their own unit, struck ones between tildes. */
function said(text: string): string[] {
  return readLog(text).run.entries.map(({ time, kind, quantity, struck, text: words }) => {
    const number = quantity && Math.round(inUnit(quantity.si, quantity.dimension, quantity.unit) * 1000) / 1000;
    const what = `${time} ${kind} ${quantity ? `${number} ${quantity.unit}` : words}`;
    return struck ? `~${what}~` : what;
  });
}

// What a maker means by each scrap. Common practice, no source.
const scraps = [
  [
    "an amount under the readings where a row has none",
    "6:10 pm  281          boils\n6:19     288          parts in\n6:23          2 cups\n6:26     286",
    ["0 reading 281 °F", "0 remark boils", "540 reading 288 °F", "540 parts in parts in", "780 addition 2 cup"],
  ],
  [
    "long dashes between time, reading and words",
    "7:46 PM — 291°F — parts in\n7:51 PM — added 3 cups water\n8:02 PM – 290°F",
    ["0 reading 291 °F", "0 parts in parts in", "300 addition 3 cup", "960 reading 290 °F"],
  ],
  ["thousands in seconds", 'seconds,temp F\n"1,000",284\n"1,060",285', ["0 reading 284 °F", "60 reading 285 °F"]],
  ["a unit with full stops", "0:00 284\n4:00 12 fl. oz.", ["0 reading 284 °F", "240 addition 12 fl oz"]],
  ["water named, its unit not", "0:00 284\n4:00 water 300", ["0 reading 284 °F", "240 addition 300 ml"]],
  ["water named behind the number", "0:00 284\n4:00 16 water", ["0 reading 284 °F", "240 addition 16 fl oz"]],
  ["a cylinder of a hundred", "0:00 284\n4:00 cylinder 120", ["0 reading 284 °F", "240 cylinder 120 lb"]],
  ["a clock with a point", "19.40 284\n19.46 291\n20.05 290", ["0 reading 284 °F", "360 reading 291 °F"]],
  ["a stroke for minutes", "0' 284\n5' 286\n12' 288", ["0 reading 284 °F", "300 reading 286 °F"]],
  [
    "a reading crossed out and written anew",
    "0:00 284\n5:00 ~~386~~ 286\n10:00 288",
    ["0 reading 284 °F", "~300 reading 386 °F~", "300 reading 286 °F"],
  ],
  [
    "cells crossed out and written anew",
    "time,temp F,water\n0:00,284,\n5:00,~~386~~ 286,~~9 oz~~ 8 oz",
    [
      "0 reading 284 °F",
      "~300 reading 386 °F~",
      "300 reading 286 °F",
      "~300 addition 9 fl oz~",
      "300 addition 8 fl oz",
    ],
  ],
  [
    "a reading behind words",
    "0:00 boiling hard 291°F\n1:00 285",
    ["0 remark boiling hard", "0 reading 291 °F", "60 reading 285 °F"],
  ],
  [
    "a table by hand with amounts in cells",
    "time\t°F\twater\tremark\n6:10 pm\t281\t\tboils\n6:23\t\t2 cups\t\n6:40\t\t1 1/2 cups\tburner to 3/4",
    ["0 reading 281 °F", "0 remark boils", "780 addition 2 cup", "1800 addition 1.5 cup", "1800 burner 0.75 "],
  ],
  ["dates in words", "Nov 9, 7:40 pm 284\nNov 9, 7:46 pm 291", ["0 reading 284 °F", "360 reading 291 °F"]],
  ["dates without a year", "11/09 23:58,284\n11/10 0:04,291", ["0 reading 284 °F", "360 reading 291 °F"]],
  ["pounds and ounces of water", "0:00 284\n9:00 1 lb 4 oz water", ["0 reading 284 °F", "540 addition 1.25 lb"]],
  ["a weight alone as water", "0:00 284\n9:00 0.5 kg", ["0 reading 284 °F", "540 addition 0.5 kg"]],
  ["a stroke behind the time", "7:40/284\n7:46/291", ["0 reading 284 °F", "360 reading 291 °F"]],
  ["full stops behind readings", "7:40, 284.\n7:46, 291.", ["0 reading 284 °F", "360 reading 291 °F"]],
  [
    "words in place of a reading",
    "7:40,284 F,boils\n7:46,291 F\n7:51,end",
    ["0 reading 284 °F", "0 remark boils", "360 reading 291 °F", "660 remark end"],
  ],
  ["blanks round the colon", "7 : 40 pm 284\n7 : 46 pm 291", ["0 reading 284 °F", "360 reading 291 °F"]],
  ["a clock without a colon", "740pm 284\n1246 am 291", ["0 reading 284 °F", "18360 reading 291 °F"]],
  ["hours of four digits", "1940h 284\n1946h 291", ["0 reading 284 °F", "360 reading 291 °F"]],
  [
    "a cup and more cups",
    "0:00 284\n1:00 cup of water\n2:00 3 more cups",
    ["0 reading 284 °F", "60 addition 1 cup", "120 addition 3 cup"],
  ],
  ["a ratio sign for a colon", "7\u223640 284\n7\u223646 291", ["0 reading 284 °F", "360 reading 291 °F"]],
] as const;

test("readLog asks what a weight is that stands behind parts", () => {
  const { run, problems } = readLog("0:00 284 F\n9:00 parts in, 4 lb");
  expect(run.entries.some(({ kind }) => kind === "addition")).toBe(false);
  expect(problems).toEqual([expect.objectContaining({ line: 2, read: "4 lb", expected: "what was weighed" })]);
});

test.each(scraps)("readLog reads %s", (_, text, expected) => {
  expect(said(text).slice(0, expected.length)).toEqual(expected);
  expect(readLog(text).problems).toEqual([]);
});

const lines = fc.constantFrom(
  "7:46 291",
  "7:46 291 parts in",
  "291",
  "parts in",
  "7:50 ???",
  "7:51 3 cups",
  "12:99 4",
  "-- --",
  "x 7:52 300",
  "~~7:53~~ 288",
  "jug 1 gal",
  "7:60",
  "end",
  "7:55 -3 oz",
  "a,b,c",
  "1;2;3",
  "284 285 286",
  "no time at all",
  "0x10",
  "½",
);
const shared = [
  "scrap-clock-pm.txt",
  "scrap-events.txt",
  "no-heading.csv",
  "blanks-no-heading.txt",
  "bad-cells.csv",
].map((file) => readFileSync(new URL(`./examples/${file}`, import.meta.url), "utf8"));
const mutilated = fc
  .tuple(
    fc.constantFrom(...shared),
    fc.nat(400),
    fc.nat(12),
    fc.constantFrom("", "7", " ", ",", "oz", "\n", "-", "x", "°"),
  )
  .map(([text, at, length, put]) => {
    const from = text.indexOf("\n") + at;
    return text.slice(0, from) + put + text.slice(from + length);
  });
const logs = fc.oneof(
  fc.array(lines, { minLength: 1, maxLength: 12 }).map((list) => list.join("\n")),
  mutilated,
);

test("every line that says something is an entry's, a problem's or the heading's", () => {
  fc.assert(
    fc.property(logs, (text) => {
      const { run, problems } = readLog(text);
      const told = new Set([...run.entries, ...problems].map(({ line }) => line));
      const headings = (run.columns ?? []).map(({ heading }) => heading);
      const heading = (line: string) => headings.some((words) => line.replace(/\s+/g, " ").includes(words));
      const dropped = text.split("\n").filter((line, index) => {
        return /[\p{L}\p{N}]/u.test(line) && !told.has(index + 1) && !heading(line);
      });
      expect(dropped).toEqual([]);
    }),
    { numRuns: 1500 },
  );
});

test("readLog never takes one row after another for milliseconds", () => {
  const text = `time temp\n${Array.from({ length: 3000 }, (_, second) => `${second} 284`).join("\n")}`;
  const { run, questions } = readLog(text);
  expect(run.entries.at(-1)?.time).toBe(2999);
  expect(questions.flatMap(({ answers }) => answers.map(({ answer }) => answer))).not.toContain("milliseconds");
});

test("readLog puts a clock time that steps back where it says, and reports it", () => {
  const { run, problems } = readLog("7:40 pm 284 F\n7:46 285 F\n7:43 286 F\n7:55 286 F");
  expect(run.entries.map(({ time }) => time)).toEqual([0, 180, 360, 900]);
  expect(problems).toEqual([expect.objectContaining({ line: 3, read: "7:43" })]);
});

test("readLog keeps the words of a line without a time whole, at the time of the row before", () => {
  const { run, problems } = readLog("7:40 284 F\n7:46 285 F\nstirred, 3 cups I think; 290\n7:50 286 F");
  expect(run.entries[2]).toMatchObject({ time: 360, kind: "remark", text: "stirred, 3 cups I think; 290", line: 3 });
  expect(problems).toEqual([expect.objectContaining({ line: 3 })]);
});
