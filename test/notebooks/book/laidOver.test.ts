import { expect, test } from "vitest";
import { given, notebook, worked } from "../../../lib/lines/index.ts";
import type { KeptRun, NotebookData } from "../../../lib/record/index.ts";
import { laidOver } from "../../../notebooks/page/book/laidOver.ts";

const ours = notebook({
  name: "One run",
  asks: "How did it go?",
  lines: {
    log: given("", undefined, { takes: "log", hidden: true }),
    salt: given("", "weighed", { keptWith: "bath" }),
    length: given("", "measured", { keptWith: "setup" }),
    water: given("", "measured"),
    ratio: worked("salt / water", "lb/gal"),
  },
  figures: ["the hold"],
});

const run = (id: string, name: string, facts: KeptRun["facts"]): KeptRun => ({
  id,
  name,
  changed: "2026-11-20T10:00:00.000Z",
  setup: "s1",
  bath: "b1",
  facts,
  log: { entries: [] },
  source: "",
  hints: {},
});

const first = run("r1", "Tuesday", { salt: { text: "20 lb" }, water: { text: "2 gal" }, length: { text: "34 in" } });
const second = run("r2", "Tuesday", { salt: { text: "20 lb" }, water: { text: "2 gal" }, length: { text: "30 in" } });

test("one run: its facts stand in the lines, the maker's lines behind ours", () => {
  const own: NotebookData = { asks: "", lines: { twice: { kind: "worked", formula: "ratio * 2" } } };
  const { book, runs } = laidOver(ours, own, first, []);
  expect(Object.keys(book.lines)).toEqual(["log", "salt", "length", "water", "ratio", "twice"]);
  expect(book.lines.salt).toMatchObject({ text: "20 lb", known: "weighed" });
  expect(book.cases).toBe(undefined);
  expect([...runs.keys()]).toEqual([""]);
});

test("a line of the maker's that bears a name of ours does not take its place", () => {
  const own: NotebookData = {
    asks: "",
    lines: { Ratio: { kind: "given", text: "1" } },
    figures: ["mine", { draws: "a line across cases", line: "ratio" }],
  };
  const { book } = laidOver(ours, own, first, []);
  expect(book.lines.ratio).toMatchObject({ formula: "salt / water" });
  expect(book.lines["Ratio of mine"]).toMatchObject({ text: "1" });
  expect(book.figures).toEqual(["the hold", { draws: "a line across cases", line: "ratio" }]);
});

test("another run beside it: one reading for what belongs to one bath, two for what was read twice", () => {
  const { book, runs } = laidOver(ours, undefined, first, [second]);
  expect([...runs].map(([name, { id }]) => [name, id])).toEqual([
    ["Tuesday", "r1"],
    ["Tuesday, 2", "r2"],
  ]);
  const own = book.cases?.["Tuesday, 2"];
  // The salts are those of the same bath; the water was measured twice, though it came to the same.
  expect(own?.salt).toBe(undefined);
  expect(own?.water).toEqual({ text: "2 gal", known: "measured" });
  expect(own?.length).toEqual({ text: "30 in", known: "measured" });
});
