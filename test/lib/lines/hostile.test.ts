import fc from "fast-check";
import { expect, test } from "vitest";
import { checkName, functions, given, namesOf, openLines, parseFormula, worked } from "../../../lib/lines/index.ts";

const names = namesOf(["salt", "salt in the bath", "boil-off", "balance", "constructor"], functions);
const pieces = fc.constantFrom(
  ...'salt|salt in the bath|boil-off| of |balance|constructor|min(|sqrt(|(|)|,|+|-|*|/|^|2|1e3|.5|½| lb| fl oz/min| °F|$|when |otherwise |not | is given|and |or |<|>=|=|"|×|−|²|\n|\u00a0|{|;|=>|`'.split(
    "|",
  ),
);
const text = fc.oneof(
  fc.string({ unit: "binary", maxLength: 300 }),
  fc.array(pieces, { maxLength: 60 }).map((all) => all.join("")),
);

test("parseFormula gives a tree, or words and a place inside the text, for any text", () => {
  fc.assert(
    fc.property(text, (formula) => {
      const parsed = parseFormula(formula, names);
      if ("tree" in parsed) return;
      expect(parsed.says).not.toBe("");
      expect(parsed.at).toBeGreaterThanOrEqual(0);
      expect(parsed.at).toBeLessThanOrEqual(formula.length);
    }),
    { numRuns: 2000 },
  );
});

test("checkName never throws, and a name that it lets pass is found again in a formula", () => {
  fc.assert(
    fc.property(fc.oneof(text, fc.string({ maxLength: 20 })), (name) => {
      if (checkName(name.trim(), namesOf([])) !== undefined) return;
      const parsed = parseFormula(`2 * ${name.trim()} + 1`, namesOf([name.trim()]));
      expect(parsed).toHaveProperty("tree");
    }),
    { numRuns: 1000 },
  );
});

test("a line with any text in it settles, and so does the line beside it", async () => {
  await fc.assert(
    fc.asyncProperty(text, text, async (typed, formula) => {
      const lines = openLines({
        asks: "?",
        lines: { salt: given(typed, "weighed"), balance: worked(formula), beside: worked("1 + 1") },
      });
      await lines.settled();
      expect(lines.result("balance").state).not.toBe("working");
      expect(lines.result("beside")).toMatchObject({ state: "settled", value: { value: 2 } });
      lines.close();
    }),
    { numRuns: 300 },
  );
});

// Our own figure, no source: a second is far above what any of these takes, far below what an unbounded reading would.
test.each([
  ["brackets", "(".repeat(2000)],
  ["a sum", `${"1+".repeat(999)}1`],
  ["words", "salt ".repeat(400)],
  ["parts", "a of ".repeat(400)],
  ["hyphens", "a-".repeat(1000)],
  ["units", `1 ${"lb ".repeat(600)}`],
  ["digits", "9".repeat(2000)],
  ["blanks", " ".repeat(2000)],
  ["more than the limit", "1+".repeat(1e6)],
])("parseFormula ends soon on %s", (_, formula) => {
  parseFormula(formula, names);
  // The test's own time-out is the guard: work without bounds would not end.
});
