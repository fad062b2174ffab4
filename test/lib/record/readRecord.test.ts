import fc from "fast-check";
import { expect, test } from "vitest";
import {
  newRecord,
  type RecordProblem,
  readRecord,
  recordLimits,
  type ShopRecord,
  sayRecordProblem,
  type Upgrade,
  upgrades,
  writeRecord,
} from "../../../lib/record/index.ts";
import { record, run } from "./example.ts";

function read(text: string, steps?: readonly Upgrade[]): ShopRecord {
  const reading = readRecord(text, steps);
  if ("problem" in reading) throw new Error(sayRecordProblem(reading.problem));
  return reading.record;
}

function refused(text: string): RecordProblem {
  const reading = readRecord(text);
  if (!("problem" in reading)) throw new Error("this text was read, though it should not be");
  return reading.problem;
}

test("readRecord(writeRecord(record)) gives the record back", () => {
  expect(read(writeRecord(record))).toEqual(record);
  const empty = newRecord();
  expect(read(writeRecord(empty))).toEqual(empty);
});

test("readRecord(text) keeps fields that this version does not know, wherever they stand", () => {
  const text = writeRecord({
    ...record,
    runs: [{ ...run, colour: "blue", facts: { altitude: { text: "0 ft", seen: true } } } as never],
    later: { anything: [1, null] },
  } as never);
  expect(JSON.parse(writeRecord(read(text)))).toEqual(JSON.parse(text));
  expect(writeRecord(read(text))).toBe(text);
});

test("readRecord(text) keeps lines called __proto__, constructor and toString, and lends none to other facts", () => {
  const facts = '{"__proto__": {"text": "1 lb"}, "constructor": {"text": "2 lb"}, "toString": {"text": "3 lb"}}';
  const text = writeRecord({ ...record, runs: [{ ...run, facts: {} }] }).replace('"facts": {}', `"facts": ${facts}`);
  const back = read(text);
  const found = back.runs[0]?.facts ?? {};
  expect(Object.keys(found)).toEqual(["__proto__", "constructor", "toString"]);
  expect(found.constructor).toEqual({ text: "2 lb" });
  expect(Object.getPrototypeOf(found)).toBe(null);
  expect(back.setups[0]?.facts.constructor).toBe(undefined);
  expect(JSON.stringify(JSON.parse(writeRecord(back)).runs[0].facts)).toBe(
    facts.replaceAll(": ", ":").replaceAll(", ", ","),
  );
});

test("readRecord(text) checks a fact whatever its line is called", () => {
  const text = writeRecord({ ...record, runs: [{ ...run, facts: {} }] });
  for (const name of ["__proto__", "constructor", "prototype", "altitude"]) {
    const { pointer } = refused(text.replace('"facts": {}', `"facts": {"${name}": {"text": 5}}`));
    expect(pointer).toBe(`/runs/0/facts/${name}/text`);
  }
});

interface Loose {
  [field: string]: object[];
}

const edit = (change: (copy: Loose) => void): string => {
  const copy = JSON.parse(writeRecord(record));
  change(copy);
  return JSON.stringify(copy);
};

// Each row: what is wrong, and where and what the maker is told.
const wrong: readonly (readonly [string, string, string, string])[] = [
  ["an empty file", "", "the whole file", "nothing"],
  ["a blank file", " \n", "the whole file", "nothing"],
  ["a table of readings", "time,temp\n0:00,285\n", "the whole file", "time,temp"],
  ["a list", "[]", "the whole file", "a list of 0"],
  ["null", "null", "the whole file", "null"],
  ["another kind of file", '{"kind": "recipe"}', "the whole file", '"recipe"'],
  ["a file cut short", writeRecord(record).slice(0, 700), "the end of the file", "cut short"],
  ["a schema that is no number", edit((r) => Object.assign(r, { schema: "1" })), "schema", '"1"'],
  ["a schema that is half a number", edit((r) => Object.assign(r, { schema: 0.5 })), "schema", "0.5"],
  ["an older schema without a way up", edit((r) => Object.assign(r, { schema: 0 })), "schema", "schema 0"],
  ["runs that are no list", edit((r) => Object.assign(r, { runs: {} })), "runs", "an object"],
  ["no runs at all", edit((r) => Reflect.deleteProperty(r, "runs")), "runs", "nothing"],
  [
    "units nobody knows",
    edit((r) => Object.assign(r.settings ?? {}, { units: "imperial" })),
    'settings, "units"',
    "imperial",
  ],
  [
    "a stamp that is no date",
    edit((r) => Object.assign(r.runs?.[0] ?? {}, { changed: "soon" })),
    'runs, 1st ("Tuesday"), "changed"',
    "soon",
  ],
  ["an empty id", edit((r) => Object.assign(r.setups?.[0] ?? {}, { id: "" })), 'setups, 1st ("Long tank"), id', '""'],
  [
    "a day that does not exist",
    edit((r) => Object.assign(r, { saved: "2026-13-45T10:00:00Z" })),
    "saved",
    "2026-13-45",
  ],
];

test.each(wrong)("readRecord(text) refuses %s and says where", (_, text, where, said) => {
  const problem = refused(text);
  expect(problem.where).toBe(where);
  expect(`${problem.read} ${problem.expected}`).toContain(said);
  expect(problem.remedy).toMatch(/not changed\.|Nothing was changed\./);
});

test("readRecord(text) refuses a newer schema, and says that nothing was changed", () => {
  const problem = refused(edit((r) => Object.assign(r, { schema: 3, runs: "in another way" })));
  expect(problem.read).toContain("schema 3");
  expect(problem.remedy).toContain("newer version");
  expect(problem.remedy).toContain("Nothing was changed.");
});

test("readRecord(text) names the entry of a log that cannot be right", () => {
  const text = writeRecord(record).replace('"si": 413.7055555555555', '"si": 1e999');
  expect(refused(text)).toMatchObject({
    where: 'runs, 1st ("Tuesday"), log, entries, 1st, "quantity", "si"',
    pointer: "/runs/0/log/entries/0/quantity/si",
    read: "Infinity",
  });
});

test("readRecord(text) refuses two runs with one id", () => {
  const problem = refused(writeRecord({ ...record, runs: [run, { ...run, name: "Wednesday" }] }));
  expect(problem.where).toBe('runs, 2nd ("Wednesday"), id');
  expect(problem.read).toBe('"r1" a second time');
});

test("readRecord(text) refuses nesting beyond the limit before it parses, with the line", () => {
  const deep = (n: number) => `\n{"kind": "shop record", "x": ${"[".repeat(n)}${"]".repeat(n)}}`;
  expect(refused(deep(recordLimits.depth)).where).toBe("line 2");
  expect(refused(deep(recordLimits.depth)).read).toContain("too many brackets");
  expect(refused(deep(recordLimits.depth - 1)).where).toBe("schema");
  expect(refused(`${"[".repeat(1e6)}`).read).toContain("too many brackets");
});

test("readRecord(text) takes brackets and quotes inside a text for what they are", () => {
  const name = '"\\'.concat("[{".repeat(100));
  expect(read(writeRecord({ ...record, runs: [{ ...run, name }] })).runs[0]?.name).toBe(name);
});

test("readRecord(text) passes over a byte-order mark", () => {
  expect(read(`\uFEFF${writeRecord(record)}`)).toEqual(record);
});

// A schema 0 that never was: it called runs firings.
const fromZero: Upgrade = {
  from: 0,
  to: 1,
  upgrade: ({ firings, ...rest }) => ({ ...rest, runs: firings }),
};

test("readRecord(text, upgrades) brings an older schema up to date, step by step", () => {
  const { runs, ...rest } = JSON.parse(writeRecord(record));
  const old = JSON.stringify({ ...rest, schema: 0, firings: runs });
  expect(read(old, [fromZero, ...upgrades])).toEqual(record);
  expect(readRecord(old, [fromZero, ...upgrades])).toMatchObject({ upgradedFrom: 0 });
  expect(readRecord(writeRecord(record), [fromZero, ...upgrades])).not.toHaveProperty("upgradedFrom");
});

test("readRecord(text, upgrades) does not go round in circles, nor past a step that is missing", () => {
  const old = edit((r) => Object.assign(r, { schema: 0 }));
  expect(readRecord(old, [{ ...fromZero, to: 0 }])).toHaveProperty("problem");
  expect(readRecord(old, [{ ...fromZero, from: 5 }])).toHaveProperty("problem");
});

test("readRecord(text, upgrades) checks what an upgrade gives like any other record", () => {
  const old = edit((r) => Object.assign(r, { schema: 0 }));
  expect(readRecord(old, [fromZero, ...upgrades])).toMatchObject({ problem: { where: "runs" } });
});

test("readRecord(text) never throws, and what it reads is written and read alike", () => {
  const base = writeRecord(record);
  const anywhere = fc.nat(base.length - 1);
  fc.assert(
    fc.property(anywhere, fc.nat(30), fc.string(), (at, cut, put) => {
      const text = base.slice(0, at) + put + base.slice(at + cut);
      const reading = readRecord(text);
      if ("problem" in reading) expect(sayRecordProblem(reading.problem).length).toBeGreaterThan(20);
      else expect(readRecord(writeRecord(reading.record))).toEqual({ record: reading.record });
    }),
    { numRuns: 500 },
  );
});
