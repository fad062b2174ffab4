import fc from "fast-check";
import { expect, test } from "vitest";
import { type CompletionOptions, completions, functions, namesOf, parseFormula } from "../../../lib/lines/index.ts";
import { func } from "./shape.ts";

const lines = [
  "gas",
  "gas for the run",
  "gas for the heat-up",
  "blades",
  "boil",
  "boil-off",
  "salt",
  "water at the start",
  "fitted bath",
  "water balance",
  "not written down",
  "oven time",
  "min pour",
];
const parts = new Map([
  ["fitted bath", ["boil-off", "makeUpWater"]],
  ["water balance", ["boil-off", "time in band"]],
]);
const names = namesOf(lines, [...functions, func("station pressure", 1, 2), func("now", 0, 0)]);
const options: CompletionOptions = { partsOf: (line) => parts.get(line) ?? [] };

/** Offers at the bar in a text, each as the text would then be. */
function offered(marked: string, most?: number): readonly string[] {
  const caret = marked.indexOf("|");
  const text = marked.replace("|", "");
  return completions(text, caret, names, { ...options, ...(most !== undefined && { most }) }).map(
    ({ from, to, insert }) => `${text.slice(0, from)}${insert}${text.slice(to)}`,
  );
}

test.each([
  ["ga|", ["gas", "gas for the run", "gas for the heat-up"]],
  ["GAS FOR THE|", ["gas for the run", "gas for the heat-up"]],
  ["gas for the r|", ["gas for the run"]],
  ["2 * gas for the r| / blades", ["2 * gas for the run / blades"]],
  ["2*gas|", ["2*gas for the run", "2*gas for the heat-up"]],
  ["gas fo| the run", ["gas for the run", "gas for the heat-up the run"]],
  [
    "(gas + boil-o|",
    ["(gas + boil-off", "(gas + boil-oven time", "(gas + boil-off of fitted bath", "(gas + boil-off of water balance"],
  ],
  ["gas-boil-of|f", ["gas-boil-off", "gas-boil-off of fitted bath", "gas-boil-off of water balance"]],
  ["not wr|", ["not written down"]],
])("completions at %s: by the start of a name, several words and all", (marked, wanted) => {
  expect(offered(marked)).toEqual(wanted);
});

test.each([
  ["the run|", ["gas for the run"]],
  ["bath|", ["fitted bath", "boil-off of fitted bath", "make up water of fitted bath"]],
  ["2 / start|", ["2 / water at the start"]],
  ["gas run|", ["gas for the run"]],
  ["boil off|", ["boil-off", "boil-off of fitted bath", "boil-off of water balance"]],
])("completions at %s: by the start of any word", (marked, wanted) => {
  expect(offered(marked)).toEqual(wanted);
});

test.each([
  ["blaeds|", ["blades"]],
  ["2 * fited b|", ["2 * fitted bath"]],
  ["gaz for th|", ["gas for the run", "gas for the heat-up"]],
  ["fited|", ["fitted bath"]],
  ["boil-ogf|", ["boil-off"]],
  ["sqr(2) + sallt|", ["sqr(2) + salt"]],
])("completions at %s: by a slip of the hand", (marked, wanted) => {
  expect(offered(marked)).toEqual(wanted);
});

test.each([
  ["30 mi|", ["30 min"]],
  ["30mi|", ["30 min"]],
  ["30 fl|", ["30 fl oz"]],
  ["30 FL o|", ["30 fl oz"]],
  ["30 poun|", ["30 lb", "30 psi"]],
  ["2 fl oz/m|", ["2 fl oz/min", "2 fl oz/m", "2 fl oz/ml"]],
  ["292 deg f|", []],
  ["30 min|", []],
  ["30 min |", ["30 min when ", "30 min is given", "30 min is not given", "30 min and ", "30 min or "]],
])("completions at %s: a unit behind a number", (marked, wanted) => {
  const found = offered(marked);
  if (marked.startsWith("2 fl")) expect(found[0]).toBe(wanted[0]);
  else expect(found).toEqual(wanted);
});

test("completions behind a number without a letter: what a shop uses most", () => {
  expect(offered("30 |", 4)).toEqual(["30 lb", "30 gal", "30 min", "30 °F"]);
  expect(offered("30|", 2)).toEqual(["30 lb", "30 gal"]);
  expect(offered("2 lb/|", 2)[0]).toBe("2 lb/min");
});

test("completions never offers a unit behind a name, nor a name behind a number", () => {
  for (const text of ["gas |", "gas l|", "gas for the run g|", "sqrt(gas) l|", "(2) l|", '"words" l|', "gas * l|"]) {
    const caret = text.indexOf("|");
    const kinds = completions(text.replace("|", ""), caret, names, options).map((one) => one.kind);
    expect(kinds, text).not.toContain("unit");
  }
  for (const text of ["30 ga|", "30 sa|", "30 min ga|", "½ b|"]) {
    const caret = text.indexOf("|");
    const kinds = completions(text.replace("|", ""), caret, names, options).map((one) => one.kind);
    expect(kinds, text).not.toContain("line");
    expect(kinds, text).not.toContain("function");
  }
});

test.each([
  ["sta|", "station pressure("],
  ["2 * sq|", "2 * sqrt("],
  ["sq|(4)", "sqrt(4)"],
  ["no|", "now()"],
])("completions at %s: a function with its bracket", (marked, wanted) => {
  expect(offered(marked)).toContain(wanted);
});

test("completions says how a function is called and what it does", () => {
  const [found] = completions("stat", 4, names);
  expect(found).toMatchObject({
    name: "station pressure",
    kind: "function",
    says: "station pressure(amount 1, amount 2): Its first argument.",
  });
});

test.each([
  ["boil-off of |", ["boil-off of fitted bath", "boil-off of water balance"]],
  ["boil-off of wa|", ["boil-off of water balance"]],
  ["time in band of |", ["time in band of water balance"]],
  ["make|", ["make up water of fitted bath"]],
  ["2 * make up water o|", ["2 * make up water of fitted bath"]],
])("completions at %s: parts of things", (marked, wanted) => {
  expect(offered(marked).slice(0, wanted.length)).toEqual(wanted);
});

test.each([
  ["gas wh|", ["gas when "]],
  ["gas when salt > 2 lb, ot|", ["gas when salt > 2 lb, otherwise "]],
  ["gas when salt > 2 lb ot|", ["gas when salt > 2 lb otherwise "]],
  ["gas when salt is g|", ["gas when salt is given"]],
  ["gas when salt is no|", ["gas when salt is not given"]],
  ["gas when salt > 2 lb an|", ["gas when salt > 2 lb and "]],
  ["gas when n|", ["gas when not "]],
  ["gas when salt > 2, otherwise blades o|", []],
  ["gas when salt > 2, blades w|", ["gas when salt > 2, blades when "]],
  ["gas when salt > 2, blades when gas > 1, o|", ["gas when salt > 2, blades when gas > 1, otherwise "]],
  ["(gas when salt > 2, otherwise 3) w|", ["(gas when salt > 2, otherwise 3) when "]],
  ["sqrt(gas, w|", []],
])("completions at %s: the words of formulas where they can stand", (marked, wanted) => {
  const caret = marked.indexOf("|");
  const text = marked.replace("|", "");
  const found = completions(text, caret, names, options).filter((one) => one.kind === "word");
  expect(found.map(({ from, to, insert }) => text.slice(0, from) + insert + text.slice(to))).toEqual(wanted);
});

test("completions offers nothing inside quotes, and lines where one is wanted", () => {
  expect(offered('1 when salt is "ga|')).toEqual([]);
  expect(offered("|", 3)).toEqual(
    ["gas", "gas for the run", "gas for the heat-up"].sort((a, b) => a.length - b.length),
  );
  expect(offered("2 * |", 1)).toEqual(["2 * gas"]);
  expect(completions("g", 1, names, { most: 0 })).toEqual([]);
  expect(completions("zzzzzz", 6, names)).toEqual([]);
});

const hostile = ["__proto__", "constructor", "toString", "a".repeat(60), "é", "не соль", "gas"];
const pieces = fc.constantFrom(
  ...'gas|gas for| the|boil-|boil-off of |fitted bath|__proto__|constructor|sqrt(|(|)|,|+|-|*|/|^|2|30 | fl|oz/min|$|when |otherwise |not | is |given|and |<|"|×|\u200b|\u00a0|１|а'.split(
    "|",
  ),
);
const texts = fc.oneof(
  fc.string({ unit: "binary", maxLength: 200 }),
  fc.array(pieces, { maxLength: 40 }).map((all) => all.join("")),
);

test("completions gives at most so many, each inside the text and around the caret, for any text", () => {
  const known = namesOf([...lines, ...hostile], functions);
  fc.assert(
    fc.property(texts, fc.nat(250), (text, place) => {
      const caret = Math.min(place, text.length);
      const found = completions(text, caret, known, options);
      expect(found.length).toBeLessThanOrEqual(8);
      for (const { from, to, insert } of found) {
        expect(from).toBeGreaterThanOrEqual(0);
        expect(from).toBeLessThanOrEqual(caret);
        expect(to).toBeGreaterThanOrEqual(caret);
        expect(to).toBeLessThanOrEqual(text.length);
        expect(insert).not.toBe("");
      }
    }),
    { numRuns: 1500 },
  );
});

test("a name that is completed from its beginning is read as that name", () => {
  fc.assert(
    fc.property(fc.constantFrom(...lines), fc.nat(60), (name, cut) => {
      const typed = name.slice(0, 1 + (cut % name.length));
      const text = `2 * ${typed}`;
      if (typed === name) return;
      const found = completions(text, text.length, names, { most: 100 }).find((one) => one.name === name);
      expect(found, text).toBeDefined();
      if (!found) return;
      const whole = text.slice(0, found.from) + found.insert + text.slice(found.to);
      expect(parseFormula(whole, names)).toMatchObject({ tree: { right: { kind: "line", name } } });
    }),
    { numRuns: 300 },
  );
});

// Our own figure, no source: a second is far above what any of these takes, far below what an unbounded reading would.
test.each([
  ["names", "gas for the run + ".repeat(110)],
  ["hyphens", "a-".repeat(999)],
  ["words", "salt ".repeat(399)],
  ["parts", "a of ".repeat(399)],
  ["brackets", "(".repeat(2000)],
  ["one word", "x".repeat(2000)],
  ["units", `1 ${"lb ".repeat(600)}`],
  ["divisions", `1 lb${"/lb".repeat(600)}`],
  ["more than a formula", "x".repeat(1e6)],
])("completions ends soon on %s with 300 lines", (_, text) => {
  const many = namesOf(
    Array.from({ length: 300 }, (_, i) => `line ${i} of a notebook with a name that is rather long`),
    functions,
  );
  completions(text, text.length, many, { partsOf: (line) => (line.startsWith("line 1") ? ["boil-off", "rate"] : []) });
  // The test's own time-out is the guard: work without bounds would not end.
});
