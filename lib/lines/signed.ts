import { add, divide, multiply, negate, power, subtract } from "../measure/arithmetic.ts";
import { sameExponents } from "../measure/dimension.ts";
import { dimensionName } from "../measure/dimensionName.ts";
import { standardUncertainty } from "../measure/standardUncertainty.ts";
import type { Value } from "../measure/types.ts";
import { FormulaError } from "./FormulaError.ts";
import { inWords } from "./inWords.ts";
import { isValue } from "./isValue.ts";
import { literalValue } from "./literal.ts";
import { partsOf } from "./partOf.ts";
import { saidOf } from "./saidOf.ts";
import type { Tree } from "./tree.ts";

type Signed = Tree & { readonly kind: "sign" | "negative" };

/**
 * Adds, takes away, multiplies, divides or raises, carrying units and doubt. A temperature that is written out beside a
 * line's is a difference (`target - 5 °F`); two that are written out are both on the scale (`292 °F - 291 °F`).
 * @param tree The piece of the formula with the sign.
 * @param work Works a piece out.
 * @param quote A piece as the maker wrote it.
 * @returns The amount.
 * @throws FormulaError where the two do not go together: it names both.
 * @example signed(tree, work, quote) // for "2 lb + 8 oz": { value: 1.134, dimension: { mass: 1 }, … }
 */
export function signed(tree: Signed, work: (piece: Tree) => unknown, quote: (piece: Tree) => string): Value {
  if (tree.kind === "negative") {
    // A minus before a written temperature makes a step down of it, or a point below zero: both are minus the number.
    const { of } = tree;
    if (of.kind === "number") return literalValue(-of.value, of.unit, true);
    const amount = amountOf(of, work, quote);
    refusePoint(of, amount, quote);
    return telling(tree.from, () => negate(amount));
  }
  const { left, right, sign, at } = tree;
  let a = amountOf(left, work, quote);
  let b = amountOf(right, work, quote);
  if (sign === "+" || sign === "-") {
    const [literalLeft, literalRight] = [written(left), written(right)];
    if (literalRight && !literalLeft && b.dimension.point)
      b = literalValue(literalRight.value, literalRight.unit, false);
    else if (literalLeft && !literalRight && sign === "+" && a.dimension.point)
      a = literalValue(literalLeft.value, literalLeft.unit, false);
    if (!sameExponents(a.dimension, b.dimension)) throw new FormulaError(unlike(left, a, right, b, quote), at);
    if (sign === "+" && a.dimension.point && b.dimension.point)
      throw new FormulaError(
        `"${quote(left)}" and "${quote(right)}" are two temperatures: their difference has a meaning, their sum none`,
        at,
      );
    return telling(at, () => (sign === "+" ? add(a, b) : subtract(a, b)));
  }
  if (sign === "^") {
    refusePoint(left, a, quote);
    if (a.value === 0 && b.value < 0) throw new FormulaError(dividing(left, quote), left.from);
    return raised(a, b, right, quote, at);
  }
  // Multiplied or divided, a written temperature can only be a difference: "2 °F / 30 min".
  const [stepLeft, stepRight] = [written(left), written(right)];
  if (stepLeft && a.dimension.point) a = literalValue(stepLeft.value, stepLeft.unit, false);
  if (stepRight && b.dimension.point) b = literalValue(stepRight.value, stepRight.unit, false);
  refusePoint(left, a, quote);
  refusePoint(right, b, quote);
  if (sign === "/" && b.value === 0) throw new FormulaError(dividing(right, quote), right.from);
  return telling(at, () => (sign === "*" ? multiply(a, b) : divide(a, b)));
}

const dividing = (piece: Tree, quote: (piece: Tree) => string) =>
  `"${quote(piece)}" is zero: nothing can be divided by it`;

function refusePoint(piece: Tree, { dimension }: Value, quote: (piece: Tree) => string): void {
  if (dimension.point)
    throw new FormulaError(
      `"${quote(piece)}" is a temperature on the scale: take another temperature from it first`,
      piece.from,
    );
}

function raised(a: Value, b: Value, exponent: Tree, quote: (piece: Tree) => string, at: number): Value {
  if (!sameExponents(b.dimension, {}))
    throw new FormulaError(`"${quote(exponent)}" has a unit: a power is a plain number`, exponent.from);
  if (standardUncertainty(b) > 0)
    throw new FormulaError(`"${quote(exponent)}" is not exact: a power is`, exponent.from);
  return telling(at, () => power(a, b.value));
}

/** A number that is written out, with a minus before it or not. */
function written(tree: Tree): { readonly value: number; readonly unit: string | undefined } | undefined {
  if (tree.kind === "number") return { value: tree.value, unit: tree.unit };
  if (tree.kind === "negative" && tree.of.kind === "number") return { value: -tree.of.value, unit: tree.of.unit };
  return undefined;
}

/**
 * An operand as an amount.
 * @param tree The piece of the formula.
 * @param work Works a piece out.
 * @param quote A piece as the maker wrote it.
 * @returns The amount.
 * @throws FormulaError for a thing that is none: it names its parts.
 * @example amountOf(tree, work, quote).value // 2
 */
export function amountOf(tree: Tree, work: (piece: Tree) => unknown, quote: (piece: Tree) => string): Value {
  const value = work(tree);
  if (isValue(value)) return value;
  const [part] = partsOf(value);
  const hint = part === undefined ? "" : `: use a part of it, say "${inWords(part)} of ${quote(tree)}"`;
  throw new FormulaError(`"${quote(tree)}" is ${kindOfThing(value)}, no amount${hint}`, tree.from);
}

/**
 * What is said of two amounts that are not of one kind.
 * @param left One piece of the formula.
 * @param a What it came to.
 * @param right The other piece.
 * @param b What that came to.
 * @param quote A piece as the maker wrote it.
 * @returns The sentence; it names both.
 * @example unlike(left, a, right, b, quote) // '"salt" is a weight and "target" a temperature: …'
 */
export function unlike(left: Tree, a: Value, right: Tree, b: Value, quote: (piece: Tree) => string): string {
  return `"${quote(left)}" is ${dimensionName(a.dimension)} and "${quote(right)}" is ${dimensionName(b.dimension)}: both must be of one kind`;
}

function kindOfThing(value: unknown): string {
  if (typeof value === "string") return "words";
  return typeof value === "boolean" ? "yes or no" : "a thing";
}

/** What lib/measure refuses is written for programmers; here it gets its place in the formula. */
function telling(at: number, run: () => Value): Value {
  let value: Value;
  try {
    value = run();
  } catch (error) {
    throw new FormulaError(saidOf(error), at);
  }
  if (!Number.isFinite(value.value)) throw new FormulaError("this comes to no number", at);
  return value;
}
