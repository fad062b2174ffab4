import fc from "fast-check";
import { expect, test } from "vitest";
import { given, type Lines, openLines, type Result, worked } from "../../../lib/lines/index.ts";
import { isValue } from "../../../lib/lines/isValue.ts";
import { correlated, measuredValue } from "../../../lib/measure/index.ts";

const givens = ["a", "b", "c"] as const;
const made = ["sum", "ratio"] as const;
const leaf = fc.constantFrom("a", "a", "b", "b", "c", "sum", "ratio", "2", "0", "1 lb", "3 °F", "1e200", "0.5");
const { formula } = fc.letrec<{ formula: string }>((tie) => ({
  formula: fc.oneof(
    { maxDepth: 4 },
    leaf,
    fc
      .tuple(tie("formula"), fc.constantFrom("+", "-", "*", "/"), tie("formula"))
      .map(([a, s, b]) => `(${a} ${s} ${b})`),
    fc.tuple(tie("formula"), fc.constantFrom("^2", "^-1", "^0", "^0.5", "^1")).map(([a, power]) => `(${a})${power}`),
    tie("formula").map((a) => `-(${a})`),
  ),
}));
const text = fc.constantFrom(
  ..."5 lb|3 lb|0 lb|-2 lb|2|0|292 °F|10 °C|3 min||rubbish|1e300|1e-300|4 ± 0.5 lb|2 ± 3|0 ± 1 lb|12 $".split("|"),
);
const amount = fc.constantFrom(
  measuredValue(3, 0.2, { mass: 1 }, "scale"),
  { ...measuredValue(3, 0.2, { mass: 1 }, "scale"), interval95: [2.5, 3.9] as const },
  ...correlated([{ value: 2, dimension: { mass: 1 } }, 5], [[0.1, 0.09], [0.09, 0.2]], "pair"), // biome-ignore format: a matrix
  measuredValue(2, 1, { temperature: 1 }, "rise"),
);
const line = fc.constantFrom(...givens);
const inCase = fc.constantFrom(undefined, "one", "two");
const edit = fc.oneof(
  fc.tuple(line, text, inCase).map(
    ([name, given, one]) =>
      (open: Lines) =>
        open.set(name, { given }, one),
  ),
  fc.tuple(line, amount, inCase).map(
    ([name, given, one]) =>
      (open: Lines) =>
        open.set(name, { given }, one),
  ),
  fc.tuple(fc.constantFrom("a", "sum"), fc.constantFrom("lb", "°F", "", undefined)).map(
    ([name, unit]) =>
      (open: Lines) =>
        open.set(name, { unit }),
  ),
  fc.tuple(fc.constantFrom(...made), formula).map(
    ([name, next]) =>
      (open: Lines) =>
        open.set(name, { worked: next }),
  ),
  fc.constantFrom(
    (open: Lines) => void open.undo(),
    (open: Lines) => void open.redo(),
    (open: Lines) => open.putBack("a", "two"),
    (open: Lines) => open.copyGivens("one", "two"),
  ),
);

/** As much of a result as must be the same whichever way it was come by. */
function told(result: Result): unknown {
  if (result.state !== "settled" || !isValue(result.value)) return result;
  const { value, dimension, components, interval95 } = result.value;
  const largest = Math.max(...[...components.values()].map(Math.abs), Math.abs(value) * 1e-6);
  const parts = [...components].filter(([, part]) => Math.abs(part) > 1e-9 * largest).sort();
  const digits = (number: number) => Number(number.toPrecision(9));
  return {
    value: digits(value),
    dimension: Object.entries(dimension).sort(),
    parts: parts.map(([source, part]) => [source, digits(part)]),
    interval95: interval95?.map(digits),
  };
}

/** One case of a notebook, opened anew: each formula is worked once, the long way. */
async function anew(open: Lines, one: string): Promise<Lines> {
  const things: Record<string, unknown> = {};
  const lines = { ...open.notebook().lines };
  for (const name of givens) {
    const result = open.result(name, one);
    if (result.state === "settled") things[name] = result.value;
    else
      lines[name] = {
        ...given(open.text(name, one)),
        ...(open.line(name).unit && { unit: open.line(name).unit ?? "" }),
      };
  }
  const fresh = openLines({ asks: "?", lines }, { givens: things });
  await fresh.settled();
  return fresh;
}

async function holds(first: string, second: string, edits: readonly ((open: Lines) => void)[]): Promise<void> {
  const open = openLines({
    asks: "?",
    lines: { a: given("5 lb"), b: given("3 lb"), c: given("2"), sum: worked(first), ratio: worked(second) },
    cases: { one: {}, two: { a: "6 lb" } },
  });
  for (const change of edits) {
    await open.settled();
    change(open);
  }
  await open.settled();
  for (const one of ["one", "two"]) {
    const fresh = await anew(open, one);
    for (const name of made) expect(told(open.result(name, one))).toEqual(told(fresh.result(name)));
    fresh.close();
  }
  open.close();
}

test("after any edits a formula comes to what it comes to in a notebook opened anew", async () => {
  await fc.assert(fc.asyncProperty(formula, formula, fc.array(edit, { minLength: 1, maxLength: 8 }), holds), {
    numRuns: 400,
  });
});

test("a slope without end is none of the quick way's business, even where it is multiplied by nothing", async () => {
  await holds("(b^0.5)^2", "a / (b^2)", [
    (open) => open.set("b", { given: "0 ± 1 lb" }),
    (open) => open.set("b", { given: "1e-200 ± 1e-201 lb" }),
    (open) => open.set("b", { given: "0 ± 1 lb" }, "two"),
  ]);
});
