import { expect, test } from "vitest";
import { checkName, given, namesOf, openLines, parseFormula, worked } from "../../../lib/lines/index.ts";
import { isUnit } from "../../../lib/lines/isUnit.ts";
import { renameIn } from "../../../lib/lines/renameIn.ts";
import { mentionsIn } from "../../../lib/lines/usesOf.ts";
import { func, shape } from "./shape.ts";

const names = [
  "salt",
  "water",
  "boil-off",
  "boil",
  "gas",
  "min pour",
  "feet of pipe",
  "h loss",
  "in hand",
  "c",
  "bath",
];

test.each([
  ["salt-water", "(<salt> - <water>)"],
  ["salt - water", "(<salt> - <water>)"],
  ["salt -water", "(<salt> - <water>)"],
  ["salt− water", "(<salt> - <water>)"],
  ["-salt-2", "((-<salt>) - 2)"],
  ["boil-off", "<boil-off>"],
  ["boil‑off", "<boil-off>"],
  ["boil-off-boil", "(<boil-off> - <boil>)"],
  ["boil-boil-off", "(<boil> - <boil-off>)"],
  ["boil - off", '7: no line is called "off": did you mean "boil-off", without blanks?'],
  ["2 * (gas - boil -off)", '17: no line is called "off": did you mean "boil-off", without blanks?'],
])("%s: a hyphen belongs to the longest name, else it is a minus", (text, wanted) => {
  expect(shape(text, names)).toBe(wanted);
});

test.each([
  ["30 fl oz", "30[fl oz]"],
  ["5 US gal", "5[US gal]"],
  ["2 fl oz/min", "2[fl oz/min]"],
  ["2 fl oz / min * 3", "(2[fl oz/min] * 3)"],
  ["4 sq ft + 2 cu in/in", "(4[sq ft] + 2[cu in/in])"],
  ["3 lb per gal", "3[lb per gal]"],
  ["30 lb / min pour", "(30[lb] / <min pour>)"],
  ["30 lb/h loss", "(30[lb] / <h loss>)"],
  ["30 lb / feet of pipe", "(30[lb] / <feet of pipe>)"],
  ["2 in/in hand", "(2[in] / <in hand>)"],
  ["30 lb / c", "(30[lb] / <c>)"],
  ["30 lb * c", "(30[lb] * <c>)"],
  ["30 lb/min", "30[lb/min]"],
  ["30 lb / min / h loss", "(30[lb/min] / <h loss>)"],
  ["2 BTU/(h ft2)", "2[BTU/(h ft2)]"],
  ["3 °F / min", "3[°F/min]"],
  ["3 deg f/min", "3[deg f/min]"],
])("%s: a unit of several words, and a line that begins like one", (text, wanted) => {
  expect(shape(text, names)).toBe(wanted);
});

test("a small letter alone is no unit inside a longer one either: 2 lb/c is not per °C", () => {
  for (const unit of ["c", "f", "lb/c", "lb/f", "lb c", "c/min", "lb/(c min)"]) expect(isUnit(unit), unit).toBe(false);
  for (const unit of ["lb/h", "g/l", "m/s", "lb/deg c", "lb/°c", "lb/day", "m2", "W/(m2 K)"])
    expect(isUnit(unit), unit).toBe(true);
  expect(shape("30 lb / f", names)).toBe('8: no line is called "f"');
});

test.each([
  ["2(3)", '1: nothing multiplies by standing side by side: write a sign between "2" and "("'],
  ["(2)(3)", '3: nothing multiplies by standing side by side: write a sign between "(2)" and "("'],
  ["(2) salt", '4: nothing multiplies by standing side by side: write a sign between "(2)" and "salt"'],
  ["2 gas", '2: nothing multiplies by standing side by side: write a sign between "2" and "gas"'],
  ["2 lb 8 oz", '5: nothing multiplies by standing side by side: write a sign between "2 lb" and "8 oz"'],
  ["gas min", '4: nothing multiplies by standing side by side: write a sign between "gas" and "min"'],
  ["2 sqrt(4)", '2: nothing multiplies by standing side by side: write a sign between "2" and "sqrt"'],
  ["1 1/2 lb", "2: a number with a fraction is written with a point, or (1 + 1/2)"],
  ["2 x 3", "2: to multiply, write * or ×"],
  ["salt per water", "5: to divide, write /"],
])("%s: nothing else multiplies by standing side by side", (text, wanted) => {
  expect(shape(text, names, [func("sqrt", 1, 1)])).toBe(wanted);
});

test.each([
  ["1 < 2 < 3", "6: one comparison at a time: write a < b and b < c"],
  ["salt == 2", "6: there is no == in a formula: one = is enough"],
  ["salt <> 2", '6: there is no <> in a formula: write "not (a = b)"'],
  ["salt != 2", '5: there is no != in a formula: write "not (a = b)"'],
  ["salt => 2", "6: there is no => in a formula: write >="],
  ["2 ** 3", "3: there is no ** in a formula: a power is written ^"],
  ["=salt", "0: a formula begins without a ="],
  ["if salt > 2 then 1 else 3", '0: a choice is written "a when c, otherwise b"'],
  ["1 if salt > 2", '2: a choice is written "a when c, otherwise b"'],
  ["2 ± 1", '2: there is no "±" in a formula: a give or take belongs to a given: give this amount a line of its own'],
  ["2:30", '1: there is no ":" in a formula: write a span of time with its unit, say 90 min'],
  ["[salt]", '0: there is no "[" in a formula: write ('],
  ["sqrt(salt; 2)", '9: there is no ";" in a formula: a comma parts what a function is given'],
  ['2 + "salt', "4: these quotes are never closed"],
  ["2⁴", "1: a power is written with ^: write ^4"],
])("%s: what is written otherwise here is told", (text, wanted) => {
  expect(shape(text, names, [func("sqrt", 1, 1)])).toBe(wanted);
});

test.each([
  [
    "1 when salt > 2, 2 when salt > 1, 3 when salt > 0, otherwise 4",
    "(1 when (<salt> > 2), 2 when (<salt> > 1), 3 when (<salt> > 0), otherwise 4)",
  ],
  ["(1 when salt > 2, otherwise 2) * 3", "((1 when (<salt> > 2), otherwise 2) * 3)"],
  [
    "1 when (2 when gas > 1, otherwise 3) > 2, otherwise 4",
    "(1 when ((2 when (<gas> > 1), otherwise 3) > 2), otherwise 4)",
  ],
  [
    "1 when salt is not water and not (gas = c), otherwise 2",
    "(1 when ((not (<salt> = <water>)) and (not (<gas> = <c>))), otherwise 2)",
  ],
  ["boil-off of bath - boil-off", "({boil-off}<bath> - <boil-off>)"],
])("%s: choices in choices, parts beside lines", (text, wanted) => {
  expect(shape(text, names)).toBe(wanted);
});

// Look-alikes by the Unicode code charts (Cyrillic 0400, Halfwidth and Fullwidth Forms FF00, General Punctuation 2000), from memory.
test.each([
  ["s\u0430lt", '0: "s\u0430lt" only looks like "salt": its a is a letter of another alphabet, write it again'],
  ["2 * sa\u200blt", "6: an invisible character stands here: take it out"],
  ["salt\ufe0f", "4: an invisible character stands here: take it out"],
  ["2\u200b * 3", "1: an invisible character stands here: take it out"],
  ["\u202esalt", "0: an invisible character stands here: take it out"],
  ["salt \uff0b water", '5: "\uff0b" only looks like +: write +'],
  ["\uff082\uff09", '0: "\uff08" only looks like (: write ('],
  ["salt \u2014 water", '5: there is no "\u2014" in a formula: a minus is written -'],
  ["salt \ud83d\ude00", '5: "\ud83d\ude00" has no meaning in a formula'],
  ["\u0662 * 3", '0: no line is called "\u0662"'],
])("%j: a sign that only looks like another is told", (text, wanted) => {
  expect(shape(text, names)).toBe(wanted);
});

test("a name that only looks like another is refused when it is made", () => {
  const known = namesOf([]);
  expect(checkName("s\u0430lt", known)).toMatch(/looks like a but is a letter of another alphabet/u);
  expect(checkName("sa\u200blt", known)).toMatch(/invisible character/u);
  expect(checkName("sa\ufe0flt", known)).toMatch(/invisible character/u);
  for (const good of ["соль", "θ of salt", "Wärme", "ΔT", "salt α"])
    expect(checkName(good, known), good).toBeUndefined();
});

test("a single letter is no slip of another", () => {
  expect(shape("d * 2", names)).toBe('0: no line is called "d"');
});

test.each([
  ["boil-off - boil-off of bath + boil", "boil-off", "loss", "loss - boil-off of bath + boil"],
  ['1 when gas is "gas", otherwise gas', "gas", "fuel", '1 when fuel is "gas", otherwise fuel'],
  ["SALT  / salt-salt", "salt", "$& lye", "$& lye  / $& lye-$& lye"],
  ["30 lb / min pour", "min pour", "pour", "30 lb / pour"],
])("renaming in %s touches the line %s alone", (formula, old, next, wanted) => {
  const parsed = parseFormula(formula, namesOf(names));
  if (!("tree" in parsed)) throw new Error(parsed.says);
  const mentions = mentionsIn(parsed.tree).filter((mention) => mention.name === old);
  expect(renameIn(formula, mentions, next)).toBe(wanted);
});

test("a rename that would make a formula read another way is refused, and nothing changes", async () => {
  const lines = openLines({
    asks: "?",
    lines: { a: given("3"), b: given("2"), "lye-b rate": given("5"), answer: worked("a-b") },
  });
  lines.rename("a", "salt");
  lines.rename("b", "b rate");
  expect(await lines.value("answer")).toMatchObject({ value: 1 });
  expect(() => lines.rename("salt", "lye")).toThrow(/could be read/u);
  expect(await lines.value("answer")).toMatchObject({ value: 1 });
  lines.close();
});

test.each([
  ["10,000 brackets", "(".repeat(10_000)],
  ["10,000 closed brackets", `${"(".repeat(5000)}1${")".repeat(5000)}`],
  ["a name of 2,000 characters", "n".repeat(2000)],
  ["parts of parts", "boil-off of ".repeat(166)],
  ["numbers with commas", "1,2,3,4,5,".repeat(200)],
  ["comparisons", "1<".repeat(1000)],
  ["choices", "1 when ".repeat(285)],
  ["quotes", '"'.repeat(1999)],
  ["a unit of units", `1 ${"lb/min*".repeat(280)}`],
  ["marks", "a\u0301".repeat(1000)],
  ["blanks in a name", `salt${" ".repeat(1990)}in`],
])("%s is read or refused soon, in words", (_, formula) => {
  const known = namesOf(Array.from({ length: 300 }, (__, i) => `boil-off of a bath, number ${i}`));
  const parsed = parseFormula(formula, known);
  // The test's own time-out is the guard: work without bounds would not end.
  if (!("tree" in parsed)) expect(parsed.says.length).toBeLessThan(400);
});
