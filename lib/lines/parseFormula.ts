import { FormulaError } from "./FormulaError.ts";
import { leftOver } from "./leftOver.ts";
import type { Names } from "./names.ts";
import { parseOperand, partAt } from "./parseOperand.ts";
import { LONGEST_FORMULA, Reader } from "./Reader.ts";
import { strangeSign } from "./strangeSign.ts";
import type { Branch, Comparison, Sign, Tree } from "./tree.ts";

/** A formula as read, or what is wrong with it and at which character (from 0). */
export type Parsed = { readonly tree: Tree } | { readonly says: string; readonly at: number };

const COMPARISONS: readonly (readonly [string, Comparison])[] = [
  ["<=", "<="],
  ["≤", "<="],
  [">=", ">="],
  ["≥", ">="],
  ["<", "<"],
  [">", ">"],
  ["=", "="],
];
const TIMES = ["*", "×", "·", "⋅"];
const OVER = ["/", "÷", "∕"];
const MINUS = ["-", "−", "–"];

/**
 * Reads a formula. Names are the maker's own words, the longest known one wins; a number may be followed by its unit;
 * nothing else multiplies by standing side by side. `^` binds before a minus in front of it (`-2^2` is -4) and from the
 * right (`2^3^2` is 512); then `* /`, then `+ -`, then `< > <= >= =`, then `not`, `and`, `or`, then
 * `a when c, otherwise b`. `is` and `is not` compare as well, words in quotes too. Signs may be written × · ÷ − ≤ ≥. A comma only parts what a function is given.
 * @param text The formula, at most 2,000 characters and some 100 brackets deep.
 * @param names Lines and functions that it may name.
 * @returns The formula as a tree, or what is wrong, in words, with the character.
 * @example parseFormula("-2^2", namesOf([])) // { tree: { kind: "negative", of: { kind: "sign", sign: "^", … } } }
 */
export function parseFormula(text: string, names: Names): Parsed {
  if (text.length > LONGEST_FORMULA)
    return {
      says: `a formula has at most ${LONGEST_FORMULA} characters: give a part of it a line of its own`,
      at: LONGEST_FORMULA,
    };
  const reader = new Reader(text, names);
  try {
    if (reader.atEnd()) throw new FormulaError("nothing is written here: write a formula", 0);
    const tree = choice(reader);
    if (!reader.atEnd()) throw leftOver(reader);
    return { tree };
  } catch (error) {
    if (error instanceof FormulaError) return { says: error.message, at: error.at };
    throw error;
  }
}

/** `a when c, b when d, otherwise e`, or any formula without `when`. */
function choice(reader: Reader): Tree {
  return reader.deeper(() => {
    const first = either(reader);
    if (!reader.word("when")) return first;
    const branches: Branch[] = [{ is: first, when: either(reader) }];
    for (;;) {
      const comma = reader.sign([","]) !== undefined;
      if (reader.word("otherwise")) break;
      if (!comma)
        throw new FormulaError(
          '", otherwise …" was expected here: say what holds when the condition does not',
          reader.at,
        );
      const is = either(reader);
      if (!reader.word("when"))
        throw new FormulaError('"when …" was expected here, or "otherwise" before the last amount', reader.at);
      branches.push({ is, when: either(reader) });
    }
    const otherwise = either(reader);
    return { kind: "choice", branches, otherwise, from: first.from, to: otherwise.to };
  });
}

function either(reader: Reader): Tree {
  let left = both(reader);
  while (reader.word("or")) {
    const right = both(reader);
    left = { kind: "or", left, right, from: left.from, to: right.to };
  }
  return left;
}

function both(reader: Reader): Tree {
  let left = denial(reader);
  while (reader.word("and")) {
    const right = denial(reader);
    left = { kind: "and", left, right, from: left.from, to: right.to };
  }
  return left;
}

function denial(reader: Reader): Tree {
  const from = reader.at;
  if (reader.nameAhead() || partAt(reader) || !reader.word("not")) return comparison(reader);
  const of = reader.deeper(() => denial(reader));
  return { kind: "not", of, from, to: of.to };
}

function comparison(reader: Reader): Tree {
  const left = sum(reader);
  if (reader.word("is")) {
    const not = reader.word("not");
    if (reader.word("given")) return { kind: "is given", of: left, not, from: left.from, to: reader.at };
    const right = sum(reader);
    const place = { from: left.from, to: right.to };
    const same: Tree = { kind: "compare", sign: "=", left, right, at: left.to, ...place };
    return not ? { kind: "not", of: same, ...place } : same;
  }
  const at = reader.at;
  const written = reader.sign(COMPARISONS.map(([shown]) => shown));
  const sign = COMPARISONS.find(([shown]) => shown === written)?.[1];
  if (sign === undefined) return left;
  const right = sum(reader);
  if (COMPARISONS.some(([shown]) => reader.text.startsWith(shown, reader.at)))
    throw new FormulaError(
      strangeSign(reader.text, reader.at) ?? "one comparison at a time: write a < b and b < c",
      reader.at,
    );
  return { kind: "compare", sign, left, right, at, from: left.from, to: right.to };
}

function sum(reader: Reader): Tree {
  let left = product(reader);
  for (;;) {
    const at = reader.at;
    const sign: Sign | undefined = reader.sign(["+"]) ? "+" : reader.sign(MINUS) ? "-" : undefined;
    if (sign === undefined) return left;
    left = joined(sign, left, product(reader), at);
  }
}

function product(reader: Reader): Tree {
  let left = negative(reader);
  for (;;) {
    const at = reader.at;
    const sign: Sign | undefined = reader.sign(TIMES) ? "*" : reader.sign(OVER) ? "/" : undefined;
    if (sign === undefined) return left;
    left = joined(sign, left, negative(reader), at);
  }
}

function negative(reader: Reader): Tree {
  const from = reader.at;
  if (reader.sign(MINUS)) {
    const of = reader.deeper(() => negative(reader));
    return { kind: "negative", of, from, to: of.to };
  }
  return power(reader);
}

function power(reader: Reader): Tree {
  const base = parseOperand(reader, choice);
  const at = reader.at;
  const glyph = reader.sign(["²", "³"]);
  if (glyph !== undefined) {
    const exponent: Tree = { kind: "number", value: glyph === "²" ? 2 : 3, from: at, to: at + 1 };
    return joined("^", base, exponent, at);
  }
  if (!reader.sign(["^"])) return base;
  const exponent = reader.deeper(() => negative(reader));
  return joined("^", base, exponent, at);
}

function joined(sign: Sign, left: Tree, right: Tree, at: number): Tree {
  return { kind: "sign", sign, left, right, at, from: left.from, to: right.to };
}
