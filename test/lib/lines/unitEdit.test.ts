import { expect, test } from "vitest";
import {
  functions,
  functionsIn,
  given,
  namesOf,
  notebook,
  openLines,
  parseFormula,
  worked,
} from "../../../lib/lines/index.ts";

const book = notebook({
  asks: "How much?",
  lines: { salt: given("24 lb", "weighed", { unit: "lb" }), half: worked("salt / 2", "lb", { metricUnit: "kg" }) },
  cases: { one: {}, two: { salt: "30 lb" } },
});

test("a line is shown in another unit in every case, and undo brings the old one back by name", async () => {
  const lines = openLines(book);
  lines.set("half", { unit: "oz", metricUnit: "g" }, "two");
  expect(lines.line("half")).toMatchObject({ unit: "oz", metricUnit: "g", formula: "salt / 2" });
  // 1 lb is 16 oz (NIST Handbook 44, appendix C).
  expect(await lines.value("half", "two")).toMatchObject({ text: expect.stringMatching(/^240\s/u) });
  expect(lines.undoName()).toBe("Undo: unit of half was lb or kg");
  lines.undo();
  expect(lines.line("half")).toMatchObject({ unit: "lb", metricUnit: "kg" });
  lines.set("half", { unit: "lb", metricUnit: "kg" });
  expect(lines.undoName()).toBeUndefined();
  lines.close();
});

test("a line without a unit takes the usual one; a unit of something else stops it in words", async () => {
  const lines = openLines(book);
  lines.set("half", { unit: undefined });
  expect(lines.line("half")).toEqual({ kind: "worked", formula: "salt / 2" });
  expect(lines.undoName()).toBe("Undo: unit of half was lb or kg");
  lines.set("half", { unit: "in" });
  expect(await lines.value("half")).toMatchObject({ stopped: expect.stringContaining('"in" was expected') });
  lines.close();
});

test("a thing that no text can hold stays when its line gets another unit", async () => {
  const lines = openLines(book, { givens: { salt: { weighed: true } } });
  lines.set("salt", { unit: "kg" });
  expect(await lines.value("salt")).toEqual({ thing: { weighed: true } });
  lines.close();
});

test.each([
  ["sqrt(abs(2)) + abs(sqrt(3))", ["sqrt", "abs"]],
  ["2 + 3", []],
  ["-(max(1, min(2, 3))) when exp(1) > 2, otherwise ln(2)", ["max", "min", "exp", "ln"]],
])("functionsIn(%s)", (formula, wanted) => {
  const parsed = parseFormula(formula, namesOf([], functions));
  if (!("tree" in parsed)) throw new Error(parsed.says);
  expect(functionsIn(parsed.tree).map(({ name }) => name)).toEqual(wanted);
});
