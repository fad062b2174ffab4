import { expect, test } from "vitest";
import { given, notebook, openLines, type Result, readGiven, worked } from "../../../lib/lines/index.ts";
import { exact, measuredValue } from "../../../lib/measure/index.ts";
import { amountShown, differenceShown } from "../../../notebooks/page/grid/amounts.ts";
import { givenShown } from "../../../notebooks/page/grid/givenShown.ts";
import { mended } from "../../../notebooks/page/grid/mended.ts";
import { kindWord, notesOf } from "../../../notebooks/page/grid/notes.ts";
import { ownIn, ownWords } from "../../../notebooks/page/grid/ownWords.ts";
import { columnsOf, groupsOf } from "../../../notebooks/page/grid/rows.ts";
import { steppedText } from "../../../notebooks/page/grid/stepped.ts";

// By hand, digit by digit.
test.for([
  ["24 lb", "25 lb", "23 lb"],
  ["4.60", "4.61", "4.59"],
  ["9.99 in", "10.00 in", "9.98 in"],
  ["0", "1", "-1"],
  ["-1 °F", "0 °F", "-2 °F"],
  ["1,999 ft", "2,000 ft", "1,998 ft"],
  ["2100 ft", "2101 ft", "2099 ft"],
  ["3,5 kg", "3,6 kg", "3,4 kg"],
  ["1,234.5 g", "1,234.6 g", "1,234.4 g"],
  ["3 1/2 gal", "4 gal", "3 gal"],
  ["5/8 in", "3/4 in", "1/2 in"],
  ["24 lb ± 0.5 lb", "25 lb ± 0.5 lb", "23 lb ± 0.5 lb"],
  ["$3.20/lb", "$3.21/lb", "$3.19/lb"],
  ["about 3 cups", "about 4 cups", "about 2 cups"],
] as const)("one step of %s is %s or %s", ([text, up, down]) => {
  expect(steppedText(text, true)).toBe(up);
  expect(steppedText(text, false)).toBe(down);
});

test.for(["", "one ring", "=1+1", "1/0"])("%j has no step", (text) => {
  expect(steppedText(text, true)).toBeUndefined();
});

test("a difference has its sign, and is 0 exactly where nothing differs", () => {
  const one = measuredValue(4.6, 0.15, {}, "a");
  expect(differenceShown(one, one, "", "US")).toMatchObject({ number: "0", exactly: true, spread: "" });
  expect(differenceShown(measuredValue(9.1, 0.5, {}, "b"), one, "", "US")?.number).toBe("+4.5");
  expect(differenceShown(measuredValue(1.1, 0.5, {}, "b"), one, "", "US")?.number).toBe("−3.5");
  expect(differenceShown(exact(25, {}), exact(9, {}), "", "US")).toMatchObject({ number: "+16", exactly: true });
  expect(differenceShown(exact(25, {}), exact(9, { mass: 1 }), "", "US")).toBeUndefined();
});

test("the same number is written once", () => {
  const one = measuredValue(4.6, 0.15, {}, "a");
  expect(amountShown(one, "", "US")).toBe(amountShown(one, "", "US"));
});

test("a given stands on its blank without a unit that its line names", () => {
  const line = given("24 in", "measured", { unit: "in" });
  const read = (text: string): Result => readGiven("a", { ...line, text });
  const shown = (text: string) => givenShown(line, text, read(text), "in");
  expect(shown("24 in")).toEqual({ text: "24", unit: "in", inItsUnit: true });
  expect(shown("24 inches")).toMatchObject({ text: "24", inItsUnit: true });
  expect(shown("24")).toMatchObject({ text: "24", inItsUnit: true });
  expect(shown("61 cm")).toMatchObject({ text: "61 cm", unit: "cm", inItsUnit: false });
  expect(shown("6 in ± 1/8 in")).toMatchObject({ text: "6 in ± 1/8 in", inItsUnit: true });
  expect(shown("24 parsecs")).toMatchObject({ text: "24 parsecs" });
});

test("an error's suggestion takes the place of the wrong words, and of nothing else", () => {
  const says = 'no line is called "salt prise": did you mean "salt price"?';
  expect(mended("salt for each blade * salt prise", says, 22)).toEqual({
    word: "salt price",
    text: "salt for each blade * salt price",
  });
  expect(mended("salt prise + salt prise", says, 13)?.text).toBe("salt prise + salt price");
  expect(mended("something else", says, 0)).toBeUndefined();
  expect(mended("salt prise", "a number was expected", 0)).toBeUndefined();
});

const columns = ["A", "B"].map((name, mark) => ({ name, mark, base: mark === 0, hidden: false }));

test("the same words of two cases are said once, with their cases where they differ", () => {
  const stopped = { state: "stopped", says: "no" } as const;
  expect(notesOf([stopped, { ...stopped }], columns)).toMatchObject([{ everywhere: true }]);
  const two = notesOf([{ state: "waits", for: "a" }, stopped], columns);
  expect(two.map(({ everywhere, cases }) => [everywhere, cases[0]?.name])).toEqual([
    [false, "A"],
    [false, "B"],
  ]);
  expect(notesOf([{ state: "settled", value: 1 }, { state: "not given" }], columns)).toEqual([]);
  expect(
    kindWord("worked", [
      { state: "settled", value: 1 },
      { state: "waits", for: "a" },
    ]),
  ).toBe("waits");
});

test("lines stand under their headings, hidden lines and cases are left out, marks stay", () => {
  const open = openLines(
    notebook({
      asks: "?",
      lines: {
        a: given("1 lb", undefined, { unit: "lb", group: "One" }),
        b: given("2 lb", undefined, { unit: "lb" }),
        c: given("3 lb", undefined, { unit: "lb", hidden: true }),
        d: worked("a + b", "lb", { group: "Two" }),
      },
      cases: { x: {}, y: {}, z: { a: "5 lb" } },
      hiddenCases: ["y"],
    }),
  );
  const cases = columnsOf(open);
  expect(cases.map(({ name, mark, base }) => [name, mark, base])).toEqual([
    ["x", 0, true],
    ["z", 2, false],
  ]);
  expect(groupsOf({ open }, cases).map(({ name, rows }) => [name, rows.map((row) => row.name)])).toEqual([
    ["One", ["a", "b"]],
    ["Two", ["d"]],
  ]);
  expect(groupsOf({ open, lines: ["d", "c"] }, cases).flatMap(({ rows }) => rows.map((row) => row.name))).toEqual([
    "d",
    "c",
  ]);
  expect(ownWords(ownIn(open, "a", cases))).toBe("own in");
  expect(ownWords(ownIn(open, "b", cases))).toBe("one for all");
  expect(ownWords([true, true])).toBe("own in each");
  expect(ownWords([false])).toBe("");
});
