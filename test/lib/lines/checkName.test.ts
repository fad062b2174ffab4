import { expect, test } from "vitest";
import { checkName, given, namesOf, notebook } from "../../../lib/lines/index.ts";
import { func } from "./shape.ts";

const names = namesOf(["salt", "water", "boil", "water balance", "a b"], [func("fit of run")]);

test.each([
  "salt in the bath",
  "boil-off",
  "make-up water",
  "water at the start",
  "ratio at the start",
  "burner 2",
  "maker's mark",
  "No. 2 tank",
  "Wärme",
  "constructor",
  "__proto__",
  "status",
  "log",
  "sqrt",
  "c",
  "not written down",
  "width of tank",
])("checkName(%s) lets a good name pass", (name) => {
  expect(checkName(name, names)).toBeUndefined();
});

test.each([
  ["", /empty/],
  ["min", /is a unit/],
  ["lb", /is a unit/],
  ["h", /is a unit/],
  ["fl oz", /is a unit/],
  ["Pounds", /is a unit/],
  ["kg m", /is a unit/],
  ["5", /read as a number/],
  ["2nd bath", /read as a number/],
  ["1e3", /read as a number/],
  ["when", /word of formulas/],
  ["of", /word of formulas/],
  ["Otherwise", /word of formulas/],
  ["salt/water", /has "\/" in it/],
  ["salt + water", /has "\+" in it/],
  ["salt (dry)", /has "\(" in it/],
  ["{salt}", /has "\{" in it/],
  ["½ batch", /has "½" in it/],
  ["𝒳", /has "𝒳" in it/],
  ["-salt", /does not begin with a letter/],
  ["salt-", /does not end with a letter/],
  ["salt-water", /read as a formula/],
  ["salt - water", /read as a formula/],
  ["boil-off of water balance", /read as a formula/],
  ["salt when water, otherwise boil", /has "," in it/],
  ["not salt", /read as a formula/],
  ["salt is given", /read as a formula/],
  ["x".repeat(61), /too long/],
])("checkName(%s) says why it is refused", (name, why) => {
  expect(checkName(name, names)).toMatch(why);
});

test("notebook refuses names that could be read two ways, whichever came first", () => {
  const book =
    (...lines: string[]) =>
    () =>
      notebook({ asks: "?", lines: Object.fromEntries(lines.map((name) => [name, given("1")])) });
  expect(book("boil-off", "boil")).not.toThrow();
  expect(book("boil-off", "boil", "off")).toThrow(
    "invalid line name: boil-off; it could be read as a formula over other lines",
  );
  expect(book("salt", "Salt")).toThrow("ambiguous line name: Salt; each line needs a name of its own");
  expect(book("min")).toThrow("invalid line name: min; it is a unit: a formula could not tell them apart");
});

test("notebook keeps lines under any word, and their order", () => {
  const lines = JSON.parse(
    '{"__proto__": {"kind": "given", "text": "1"}, "constructor": {"kind": "given", "text": "2"}}',
  );
  expect(Object.keys(notebook({ asks: "?", lines }).lines)).toEqual(["__proto__", "constructor"]);
});
