import { expect, test } from "vitest";
import { functions, given, type Lines, namesOf, notebook, openLines, worked } from "../../../lib/lines/index.ts";
import { exact, measuredValue } from "../../../lib/measure/index.ts";
import { checked } from "../../../notebooks/page/inHand/checked.ts";
import { keepFormula, keepGiven, knownOf, setKnown, setUnit } from "../../../notebooks/page/inHand/edits.ts";
import { feedsOf } from "../../../notebooks/page/inHand/feedsOf.ts";
import { holdOn } from "../../../notebooks/page/inHand/hold.ts";
import { offers, taken, takesFirst } from "../../../notebooks/page/inHand/offers.ts";
import { sources } from "../../../notebooks/page/inHand/sources.ts";
import { widthWords } from "../../../notebooks/page/inHand/widthWords.ts";
import { withNumbers } from "../../../notebooks/page/inHand/withNumbers.ts";
import { knownTrial, triedTrial } from "../../../notebooks/page/trials/known.ts";

/** Round numbers, so that each answer below can be worked out by hand. */
const book = notebook({
  asks: "Gas for each blade?",
  lines: {
    "gas for the run": given("9 lb ± 0.9 lb", "weighed", { unit: "lb" }),
    blades: given("9", undefined, { exact: true }),
    "blade length": given("12", "measured", { unit: "in" }),
    "gas for each blade": worked("gas for the run / blades", "lb", { metricUnit: "kg" }),
    "gas price": given("$2/lb", undefined, { exact: true, unit: "$/lb" }),
    "cost for each blade": worked("gas for each blade * gas price", "$"),
    spare: given(""),
    "with spare": worked("blades + spare"),
  },
  cases: { "small tank": {}, "longer tank": { blades: "18" } },
});
const names = namesOf(Object.keys(book.lines), functions);

async function opened(): Promise<Lines> {
  const open = openLines(book);
  await open.settled();
  return open;
}

const plain = (text: string): string => text.replaceAll("\u00a0", " ");

test("the formula with numbers put in, and what it comes to in its case", async () => {
  const open = await opened();
  const base = withNumbers(open, "gas for each blade", "small tank", names, "US");
  expect(plain(base.formula)).toBe("9.0 lb ÷ 9");
  // 9 / 9 and 0.9 / 9; the page shows a half-width to one figure where that is not 1 or 2.
  expect(base.is).toMatchObject({ state: "settled" });
  expect(plain(base.is.state === "settled" ? base.is.words : "")).toBe("1.00 ±0.10 lb");
  const longer = withNumbers(open, "gas for each blade", "longer tank", names, "US");
  expect(plain(longer.formula)).toBe("9.0 lb ÷ 18");
  expect(withNumbers(open, "with spare", "small tank", names, "US")).toEqual({
    formula: "9 + (spare: not given)",
    is: open.result("with spare").state === "waits" ? { state: "waits", for: "spare" } : expect.anything(),
  });
  open.close();
});

test("what is worked and what was stopped is said in place of a number", async () => {
  const open = await opened();
  open.set("gas for each blade", { worked: "gas for the run + blades" });
  await open.settled();
  const own = withNumbers(open, "gas for each blade", "small tank", names, "US");
  expect(own.is).toMatchObject({ state: "stopped", says: expect.stringContaining("blades") });
  expect(withNumbers(open, "cost for each blade", "small tank", names, "US").is).toEqual({
    state: "waits",
    for: "gas for each blade",
  });
  open.close();
});

test.each([
  [
    new Map([
      ["cup", 3],
      ["scale", 4],
    ]),
    "scale 64 %, cup 36 %",
  ],
  [new Map([["scale", -2]]), "scale 100 %"],
  [
    new Map([
      ["a", 10],
      ["b", 0.1],
    ]),
    "a over 99 %, the rest under 1 %",
  ],
  [
    new Map([
      ["a", 2],
      ["b", 2],
      ["c", 2],
      ["d", 2],
      ["e", 1],
      ["f", 1],
    ]),
    "a 22 %, b 22 %, c 22 %, d 22 %, the rest 11 %",
  ],
  [new Map(), "none: it is exact"],
])("what a width comes from, by the squares of its parts (JCGM 100:2008, 5.1.2)", (components, wanted) => {
  expect(plain(widthWords({ value: 1, dimension: {}, components }))).toBe(wanted);
});

test("an exact value says so; one that only has an interval says that its sources are not known", () => {
  expect(widthWords(exact(3, {}))).toBe("none: it is exact");
  expect(plain(widthWords(measuredValue(3, 0.1, {}, "scale")))).toBe("scale 100 %");
  expect(widthWords({ ...exact(3, {}), interval95: [2, 5] })).toBe("not told apart by source");
});

test("what feeds a line and what it feeds; nothing for a line that is no more", async () => {
  const open = await opened();
  expect(feedsOf(open, "Gas for each blade")).toEqual({
    feeds: ["gas for the run", "blades"],
    fed: ["cost for each blade"],
  });
  expect(feedsOf(open, "no such line")).toEqual({ feeds: [], fed: [] });
  open.close();
});

test.each([
  ["gas for the run / blads", { at: 18, meant: { word: "blades", text: "gas for the run / blades" } }],
  ["gas for the run /", { at: 17 }],
  ["gas for each blade", { says: "gas for each blade cannot be worked from itself" }],
  [
    "cost for each blade / gas price",
    {
      says: "this goes round: gas for each blade needs cost for each blade, cost for each blade needs gas for each blade",
    },
  ],
])("a formula is looked at while it is written: %s", async (formula, wanted) => {
  const open = await opened();
  expect(checked(open, "gas for each blade", formula, names)).toMatchObject(wanted);
  open.close();
});

test("a formula that can be worked has nothing wrong", async () => {
  const open = await opened();
  expect(checked(open, "gas for each blade", "gas for the run / (2 * blades)", names)).toBeUndefined();
  open.close();
});

test("what could be written comes with its kind and its value in this case, never the line itself", async () => {
  const open = await opened();
  const place = { line: "gas for each blade", system: "US" } as const;
  const text = "gas for the run / bla";
  const inBase = offers(open, { ...place, inCase: "small tank" }, text, text.length, names);
  expect(inBase.map(({ name, says }) => [name, plain(says)])).toEqual([
    ["blades", "given: 9"],
    ["blade length", "given: 12 in"],
  ]);
  const longer = offers(open, { ...place, inCase: "longer tank" }, text, text.length, names);
  expect(longer[0]?.says).toBe("given: 18");
  const near = offers(open, { ...place, inCase: "small tank" }, "gas for e", 9, names).map(({ name }) => name);
  expect(near).not.toContain("gas for each blade");
  const around = offers(open, { ...place, inCase: "small tank" }, "cos", 3, names).map(({ name }) => name);
  expect(around).not.toContain("cost for each blade");
  const [first] = inBase;
  if (!first) throw new Error("nothing was offered");
  expect(taken(text, first)).toEqual({ text: "gas for the run / blades", caret: 24 });
  open.close();
});

test("Enter writes the first completion only where the formula cannot be kept as it is", async () => {
  const open = await opened();
  const place = { line: "with spare", inCase: "small tank", system: "US" } as const;
  const at = (text: string) => {
    const found = offers(open, place, text, text.length, names);
    return takesFirst(found, text.length, checked(open, place.line, text, names) !== undefined);
  };
  expect(at("bla")).toBe(true);
  expect(at("gas for the run")).toBe(false);
  expect(at("2 * ")).toBe(false);
  expect(at("zzz")).toBe(false);
  open.close();
});

test("the functions that a formula calls, each with what it does", () => {
  expect(sources("sqrt(blades) + abs(blades)", names).map(({ call }) => call)).toHaveLength(2);
  expect(sources("sqrt(blades", names)).toEqual([]);
});

test("a formula is kept in every case, and a fitted line stays fitted", async () => {
  const open = await opened();
  expect(keepFormula(open, "with spare", "small tank", "blades * 2")).toBe(
    "kept in every case: with spare is blades * 2",
  );
  expect(await open.value("with spare", "longer tank")).toMatchObject({ value: 36 });
  open.set("with spare", { fitted: "blades" });
  keepFormula(open, "with spare", "small tank", "blades * 3");
  expect(open.line("with spare")).toMatchObject({ kind: "fitted", formula: "blades * 3" });
  open.close();
});

test("a given is kept for its case alone, or in every case at once with one undo", async () => {
  const open = await opened();
  const place = { line: "blade length", inCase: "longer tank", system: "US" } as const;
  expect(keepGiven(open, place, "14", false)).toBe("kept for longer tank alone: blade length is 14 in");
  expect([open.text("blade length", "small tank"), open.text("blade length", "longer tank")]).toEqual(["12", "14 in"]);
  keepGiven(open, place, "15", true);
  expect([open.text("blade length", "small tank"), open.text("blade length", "longer tank")]).toEqual([
    "15 in",
    "15 in",
  ]);
  expect(open.own("blade length", "longer tank")).toBeUndefined();
  open.undo();
  expect([open.text("blade length", "small tank"), open.text("blade length", "longer tank")]).toEqual(["12", "14 in"]);
  open.close();
});

test("how a given is known is said of the case's own text, or of the text that all share", async () => {
  const open = await opened();
  setKnown(open, "blade length", "longer tank", "guessed");
  expect(knownOf(open, "blade length", "small tank")).toBe("guessed");
  expect(open.own("blade length", "longer tank")).toBeUndefined();
  setKnown(open, "blades", "longer tank", "published");
  expect(open.own("blades", "longer tank")).toEqual({ text: "18", known: "published" });
  expect(knownOf(open, "blades", "small tank")).toBeUndefined();
  open.close();
});

test("a unit of something else is refused in words, one of the same kind is shown", async () => {
  const open = await opened();
  expect(setUnit(open, "gas for each blade", "in", "US")).toContain("measures something else");
  expect(setUnit(open, "gas for each blade", "bananas", "US")).toContain("no unit");
  expect(open.undoName()).toBeUndefined();
  expect(setUnit(open, "gas for each blade", "ounces", "US")).toBeUndefined();
  expect(open.line("gas for each blade")).toMatchObject({ unit: "oz", metricUnit: "kg" });
  expect(setUnit(open, "gas for each blade", "g", "metric")).toBeUndefined();
  expect(open.line("gas for each blade")).toMatchObject({ unit: "oz", metricUnit: "g" });
  open.close();
});

test("a bare number keeps what it meant when its line gets another unit", async () => {
  const open = await opened();
  expect(setUnit(open, "blade length", "cm", "US")).toBeUndefined();
  expect(open.text("blade length")).toBe("12 in");
  // 1 in is 25.4 mm exactly (NIST SP 811, appendix B).
  expect(await open.value("blade length")).toMatchObject({ value: expect.closeTo(0.3048, 12) });
  expect(open.undoName()).toBe("Undo: unit of blade length was in");
  open.undo();
  expect(open.text("blade length")).toBe("12");
  open.close();
});

test("what is being written lasts until another line or case is taken", async () => {
  const open = await opened();
  holdOn(open, "blades", "small tank").draft = "10";
  expect(holdOn(open, "Blades", "small tank").draft).toBe("10");
  expect(holdOn(open, "blades", "longer tank").draft).toBeUndefined();
  expect(holdOn(open, "blades", "small tank").draft).toBeUndefined();
  open.close();
});

test("a trial is said where the ± is not good enough, and made once for each amount", async () => {
  const open = openLines(
    notebook({
      asks: "?",
      lines: {
        x: given("0 ± 1"),
        sure: worked("2 * x"),
        bent: worked("x^2"),
        words: worked('"up" when x > 0, otherwise "down"'),
      },
    }),
  );
  await open.settled();
  expect(await triedTrial(open, "sure", "")).toBeUndefined();
  expect(await triedTrial(open, "words", "")).toBeUndefined();
  const first = triedTrial(open, "bent", "");
  expect(triedTrial(open, "bent", "")).toBe(first);
  expect(knownTrial(open, "bent", "")).toBeUndefined();
  expect((await first)?.says).toMatch(/not good enough here.*95 % of them lie at/u);
  expect(knownTrial(open, "bent", "")?.trial).toBe(await first);
  open.set("x", { given: "100 ± 0.01" });
  await open.settled();
  expect(await triedTrial(open, "bent", "")).toBeUndefined();
  open.close();
});
