import { expect, test } from "vitest";
import { type Func, functionHelp, namesOf, numbersIn } from "../../../lib/lines/index.ts";
import { func } from "./shape.ts";

const values = new Map([
  ["gas for the run", "9.4 lb"],
  ["blades", "9"],
  ["boil-off", "12 fl oz/min"],
  ["drift", "-3 °F"],
  ["salt", "8 lb ± 0.1 lb"],
  ["count", "3"],
]);
const names = namesOf([...values.keys(), "fitted bath"], [func("station pressure"), func("min")]);
const put = (formula: string) => numbersIn(formula, names, (name) => values.get(name));

test.each([
  ["gas for the run / blades", "9.4 lb ÷ 9"],
  ["gas for the run ÷ blades", "9.4 lb ÷ 9"],
  ["2*boil-off * 30 min - 12 fl oz/min", "2×12 fl oz/min × 30 min − 12 fl oz/min"],
  ["blades - drift", "9 − (-3 °F)"],
  ["drift + blades", "-3 °F + 9"],
  ["-drift", "−(-3 °F)"],
  ["2 * (-count) - (blades - count)", "2 × (−3) − (9 − 3)"],
  ["blades^2 + count²", "9^2 + 3²"],
  ["gas for the run ^ 2", "(9.4 lb) ^ 2"],
  ["salt / blades", "(8 lb ± 0.1 lb) ÷ 9"],
  ["(salt) / blades", "(8 lb ± 0.1 lb) ÷ 9"],
  ["((blades + count)) / 2", "((9 + 3)) ÷ 2"],
  ["salt", "8 lb ± 0.1 lb"],
  ["blades when count >= 2, otherwise 2 * blades", "9 when 3 ≥ 2, otherwise 2 × 9"],
  ["boil-off of fitted bath / blades", "boil-off of fitted bath ÷ 9"],
  ["station pressure(blades, gas for the run)", "station pressure(9, 9.4 lb)"],
  ["min(blades,-count)", "min(9,−3)"],
  ["2 when blades is given and not (count = 3), otherwise 1", "2 when 9 is given and not (3 = 3), otherwise 1"],
])("numbersIn(%s)", (formula, wanted) => {
  expect(
    put(formula)
      .map((piece) => piece.text)
      .join(""),
  ).toBe(wanted);
});

test("numbersIn keeps who each number stands for, and what was written", () => {
  expect(put("GAS for  the run / 2")).toEqual([
    { text: "9.4 lb", line: "gas for the run", written: "GAS for  the run" },
    { text: " " },
    { text: "÷", written: "/" },
    { text: " 2" },
  ]);
  const pieces = put("(salt) - boil-off of fitted bath*min(count, 2 BTU/(h ft2))");
  expect(pieces.map((piece) => piece.written ?? piece.text).join("")).toBe(
    "(salt) - boil-off of fitted bath*min(count, 2 BTU/(h ft2))",
  );
});

test("numbersIn has nothing to say of a formula that cannot be read", () => {
  expect(put("gas for the")).toEqual([]);
  expect(put("(".repeat(5000))).toEqual([]);
});

test("numbersIn puts what the page says in as it is", () => {
  expect(numbersIn("blades / 2", names, () => "$& ($1)")[0]).toEqual({
    text: "$& ($1)",
    line: "blades",
    written: "blades",
  });
});

const takes = (...all: readonly string[]): Func["takes"] =>
  all.map((name) => (name.endsWith("?") ? { name: name.slice(0, -1), optional: true } : { name }));

test.each([
  [takes("barometer", "altitude"), "f(barometer, altitude)", undefined],
  [takes("barometer", "altitude?"), "f(barometer, altitude)", "altitude may be left out"],
  [takes("a?", "b?", "c?"), "f(a, b, c)", "any of them may be left out"],
  [takes("a", "b?", "c?"), "f(a, b, c)", "b and c may be left out"],
  [takes("a", "b?", "c?", "d?", "e?"), "f(a, b, c, d, e)", "all but a may be left out"],
  [takes("a?", "b"), "f(a, b)", "a may be a line that is not given"],
  [takes("a?", "b", "c?"), "f(a, b, c)", "a may be a line that is not given; c may be left out"],
  [takes("amount 1", "amount 2?", "amount 3?", "amount 4?"), "f(amount 1, amount 2, …)", "from 1 to 4 of them"],
  [takes(), "f()", undefined],
])("functionHelp of %j", (list, call, optional) => {
  const help = functionHelp({ name: "f", takes: list, says: "Does it.", source: "A book.", work: () => 1 });
  expect(help).toEqual({ name: "f", call, ...(optional && { optional }), says: "Does it.", source: "A book." });
});
