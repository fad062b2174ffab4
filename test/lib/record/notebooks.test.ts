import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import {
  changeNotebook,
  differences,
  type KeptNotebook,
  merge,
  type NotebookData,
  readRecord,
  type ShopRecord,
  sayRecordProblem,
  stampChanges,
  takeBack,
  writeRecord,
} from "../../../lib/record/index.ts";
import { book, record } from "./example.ts";

const [early, late] = ["2026-11-25T12:00:00.000Z", "2026-11-25T13:00:00.000Z"];

const json = (name: string) => readFileSync(new URL(name, import.meta.url), "utf8");

function read(text: string): ShopRecord {
  const reading = readRecord(text);
  if ("problem" in reading) throw new Error(sayRecordProblem(reading.problem));
  return reading.record;
}

const only = ({ notebooks }: ShopRecord): KeptNotebook => {
  const [one] = notebooks;
  if (!one) throw new Error("no notebook");
  return one;
};

const edited = (change: (data: NotebookData) => NotebookData, now: string, from = record): ShopRecord =>
  changeNotebook(from, "n1", ({ notebook }) => ({ notebook: change(notebook) }), now);

const given = (line: string, text: string, now: string, from = record): ShopRecord =>
  edited((data) => ({ ...data, lines: { ...data.lines, [line]: { kind: "given", text } } }), now, from);

const own = (text: string, now: string): ShopRecord =>
  edited((data) => ({ ...data, cases: { ...data.cases, "Longer tank": { blades: text } } }), now);

test("the demo shop that schema 1 wrote still opens, nothing of it changed but the number", () => {
  const text = json("./demoShop-schema-1.json");
  const old = JSON.parse(text);
  const published = new Ajv2020({ strict: true }).compile(JSON.parse(json("../../../data/schema/shop-record-1.json")));
  expect(published(old)).toBe(true);
  expect(readRecord(text)).toMatchObject({ upgradedFrom: 1 });
  expect(JSON.parse(writeRecord(read(text)))).toEqual({ ...old, schema: 2 });
});

test("what schema 1 took for a notebook and is none becomes a note of one: nothing vanishes", () => {
  const odd = { id: "n1", changed: early, name: "Odd", notebook: { lines: ["salt"], mine: "kept" } };
  const good = { ...odd, id: "n2", notebook: { asks: "?", lines: {} } };
  const { notebooks } = read(JSON.stringify({ ...record, schema: 1, notebooks: [odd, good] }));
  expect(notebooks[0]?.notebook).toEqual({ asks: "Odd", lines: {}, notes: ['{"lines":["salt"],"mine":"kept"}'] });
  expect(notebooks[1]?.notebook).toEqual(good.notebook);
});

test("merge() puts a notebook together line by line", () => {
  const [mine, theirs] = [given("gas price", "5 $/lb", early), given("blades", "8", late)];
  for (const merged of [merge(mine, theirs, record), merge(theirs, mine, record)]) {
    expect(merged.overwritten).toEqual([]);
    const { lines } = only(merged.record).notebook;
    expect([lines["gas price"], lines.blades]).toEqual([
      { kind: "given", text: "5 $/lb" },
      { kind: "given", text: "8" },
    ]);
    expect(Object.keys(lines)).toEqual(Object.keys(book.notebook.lines));
  }
});

test("merge() lets the later edit of one line stand and says which text was lost", () => {
  const [mine, theirs] = [given("blades", "7", early), given("blades", "8", late)];
  const merged = merge(mine, theirs, record);
  expect(only(merged.record).notebook.lines.blades).toEqual({ kind: "given", text: "8" });
  expect(merged.overwritten).toMatchObject([
    { list: "notebooks", what: "blades", gaveUp: "mine", lost: { text: "7" } },
  ]);
  expect(only(merged.record).history).toContainEqual({ at: early, what: "blades", was: "7" });
});

test("merge() puts what cases have of their own together given by given, and says whose was lost", () => {
  const price = edited(
    (data) => ({
      ...data,
      cases: { ...data.cases, "Longer tank": { ...data.cases?.["Longer tank"], "gas price": "6 $/lb" } },
    }),
    late,
  );
  const both = only(
    merge(
      edited(
        (data) => ({
          ...data,
          cases: { ...data.cases, "Longer tank": { ...data.cases?.["Longer tank"], blades: "12" } },
        }),
        early,
      ),
      price,
      record,
    ).record,
  );
  expect(both.notebook.cases?.["Longer tank"]).toEqual({ blades: "12", "gas price": "6 $/lb" });
  expect(merge(own("10", early), own("11", late), record).overwritten).toMatchObject([
    { what: "blades of Longer tank", stands: "11", lost: "10" },
  ]);
});

test("merge() keeps the cases that either side added, in an order that holds both", () => {
  const with_ = (name: string, now: string) =>
    edited(
      (data) => ({ ...data, cases: { ...data.cases, [name]: {} }, caseOrder: [...(data.caseOrder ?? []), name] }),
      now,
    );
  const merged = merge(with_("A", early), with_("B", late), record);
  expect(merged.overwritten).toEqual([]);
  const { cases, caseOrder } = only(merged.record).notebook;
  expect(Object.keys(cases ?? {}).sort()).toEqual(["A", "B", "Longer tank", "as it is"]);
  expect(caseOrder).toEqual(["Longer tank", "as it is", "B", "A"]);
});

test("stampChanges() sees that cases were put in another order", () => {
  const after = edited((data) => ({ ...data, caseOrder: ["as it is", "Longer tank"] }), late);
  expect(stampChanges(record, after, late)).not.toBe(record);
});

test("takeBack() takes one line back and leaves what another tab wrote since", () => {
  const after = given("blades", "7", early);
  const since = given("gas price", "5 $/lb", late, after);
  const { lines } = only(takeBack(since, record, after, late)).notebook;
  expect(lines.blades).toEqual(book.notebook.lines.blades);
  expect(lines["gas price"]).toEqual({ kind: "given", text: "5 $/lb" });
});

test("differences() names lines, formulas and what a case has of its own", () => {
  const formula = edited(
    (data) => ({ ...data, lines: { ...data.lines, "gas cost": { kind: "worked", formula: "gas price * 4 lb" } } }),
    late,
  );
  expect(differences(record, formula)).toMatchObject([
    { list: "notebooks", what: "gas cost", was: "gas price * 3 lb", now: "gas price * 4 lb" },
  ]);
  expect(differences(record, own("10", late))).toContainEqual({
    list: "notebooks",
    id: "n1",
    name: "My question",
    what: "blades of Longer tank",
    was: "9",
    now: "10",
  });
});

const put = (change: (data: Record<string, unknown>) => void): string => {
  const copy = JSON.parse(writeRecord(record));
  change(copy.notebooks[0].notebook);
  return JSON.stringify(copy);
};
const many = (n: number, value: unknown) => Object.fromEntries(Array.from({ length: n }, (_, i) => [`x${i}`, value]));

test.each([
  ["a line without a kind", put((data) => Object.assign(data, { lines: { salt: { text: "1 lb" } } })), "/lines/salt"],
  ["a line that is a list", put((data) => Object.assign(data, { lines: { salt: [] } })), "/lines/salt"],
  [
    "a formula that is an object",
    put((data) => Object.assign(data, { lines: { a: { kind: "worked", formula: {} } } })),
    "/lines/a/formula",
  ],
  [
    "a formula that is too long",
    put((data) => Object.assign(data, { lines: { a: { kind: "worked", formula: "1+".repeat(9999) } } })),
    "/lines/a/formula",
  ],
  ["too many lines", put((data) => Object.assign(data, { lines: many(1001, { kind: "given", text: "" }) })), "/lines"],
  ["too many cases", put((data) => Object.assign(data, { cases: many(61, {}) })), "/cases"],
  [
    "a name that is too long",
    put((data) => Object.assign(data, { lines: { ["x".repeat(2001)]: { kind: "given", text: "" } } })),
    "/lines/x",
  ],
  ["a case that is a number", put((data) => Object.assign(data, { cases: { a: { blades: 5 } } })), "/cases/a/blades"],
  [
    "a figure of no kind",
    put((data) => Object.assign(data, { figures: [{ draws: "a pie", line: "x" }] })),
    "/figures/0",
  ],
  ["a note that is no text", put((data) => Object.assign(data, { notes: [{ html: "<b>" }] })), "/notes/0"],
])("readRecord() refuses a notebook with %s, and says where", (_, text, pointer) => {
  const reading = readRecord(text);
  if (!("problem" in reading)) throw new Error("this notebook was read");
  expect(reading.problem.pointer).toContain(`/notebooks/0/notebook${pointer}`);
});

test("readRecord() lends nothing to lines and cases called like an object's own things", () => {
  const odd = '{"__proto__": {"kind": "given", "text": "1"}, "constructor": {"kind": "given", "text": "2"}}';
  const text = put((data) => Object.assign(data, { lines: "HERE", cases: { __proto__: null } })).replace('"HERE"', odd);
  const { lines, cases } = only(read(text)).notebook;
  expect(Object.keys(lines)).toEqual(["__proto__", "constructor"]);
  expect([Object.getPrototypeOf(lines), Object.getPrototypeOf(cases)]).toEqual([null, null]);
  expect(lines.toString).toBe(undefined);
});
