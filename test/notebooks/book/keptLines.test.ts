import { expect, test } from "vitest";
import { type Notebook, notebook } from "../../../lib/lines/index.ts";
import { keptLines } from "../../../notebooks/page/book/keptLines.ts";

const book = notebook({
  asks: "How much?",
  lines: {
    salt: { kind: "given", text: "20 lb", known: "weighed" },
    water: { kind: "given", text: "2 gal", known: "measured" },
    ratio: { kind: "worked", formula: "salt / water", unit: "lb/gal" },
    twice: { kind: "worked", formula: "salt * 2", unit: "lb" },
  },
  cases: { "as it is": {}, more: { salt: "24 lb" } },
});

function opened(from: Notebook = book) {
  const kept: { book: Notebook; undo: string; redo: string }[] = [];
  const lines = keptLines(from, {
    vocabulary: { functions: [] },
    inCases: () => ({}),
    asText: (_, thing) => (typeof thing === "number" ? `${thing} lb` : undefined),
    keep: (book, undo, redo) => kept.push({ book, undo, redo }),
    history: { undo: () => false, redo: () => false, undoName: () => undefined, redoName: () => undefined },
    told: () => {},
  });
  return { kept, lines, open: lines.open };
}

test("every edit is kept at once, under the names of its undo and redo", () => {
  const { kept, open } = opened();
  open.set("salt", { given: "21 lb" });
  open.set("salt", { given: "25 lb" }, "more");
  open.add("drag-out", { kind: "given", text: "1 lb" });
  open.rename("water", "water in it");
  open.setRest("the question was “How much?”", { asks: "How strong?" });
  expect(kept.map(({ undo, redo }) => [undo, redo])).toEqual([
    ["salt was 20 lb", "salt is 21 lb"],
    ["salt of more was 24 lb", "salt of more is 25 lb"],
    ["adding drag-out", "adding drag-out"],
    ["water in it was called water", "water is called water in it"],
    ["the question was “How much?”", "the question was “How much?”"],
  ]);
  expect(kept[3]?.book.lines.ratio).toMatchObject({ formula: "salt / water in it" });
});

test("what changes nothing and what is refused is not kept; all that is done together is kept once", () => {
  const { kept, open } = opened();
  open.set("salt", { given: "20 lb" });
  expect(() => open.add("min", { kind: "given", text: "1" })).toThrow("is a unit");
  expect(kept).toEqual([]);
  open.together("a table was not pasted", () => {
    open.set("salt", { given: "1 lb" });
    open.set("water", { given: "1 gal" });
  });
  expect(kept.map(({ undo }) => undo)).toEqual(["a table was not pasted"]);
});

test("an amount is kept as a text, so that it is there at the next opening", () => {
  const { kept, open } = opened();
  open.set("salt", { value: 22 });
  expect(kept[0]?.book.lines.salt).toMatchObject({ text: "22 lb" });
});

test("what another tab changed is taken up with only what hangs on it worked again", async () => {
  const { kept, lines, open } = opened();
  await open.settled();
  const before = open.worked();
  lines.show({ ...book, lines: { ...book.lines, water: { kind: "given", text: "3 gal", known: "measured" } } });
  await open.settled();
  // The ratio in both cases; "twice" stands.
  expect(open.worked() - before).toBe(2);
  expect(open.text("water")).toBe("3 gal");
  expect(kept).toEqual([]);
});

test("where lines or cases came or went the notebook is opened anew behind the same object", async () => {
  const { kept, lines, open } = opened();
  const { twice: _, ...fewer } = book.lines;
  lines.show({ ...book, lines: fewer, cases: { more: { salt: "24 lb" }, "as it is": {} } });
  expect(open.names()).toEqual(["salt", "water", "ratio"]);
  expect(open.cases().map(({ name }) => name)).toEqual(["more", "as it is"]);
  open.set("salt", { given: "30 lb" });
  expect(kept.map(({ undo }) => undo)).toEqual(["salt was 20 lb"]);
  expect(await open.value("ratio", "as it is")).toMatchObject({ text: expect.stringContaining("15") });
});
