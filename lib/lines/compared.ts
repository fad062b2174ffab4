import { sameDimension, sameExponents } from "../measure/dimension.ts";
import { FormulaError } from "./FormulaError.ts";
import { isValue } from "./isValue.ts";
import { literalValue } from "./literal.ts";
import { amountOf, unlike } from "./signed.ts";
import type { Tree } from "./tree.ts";

/**
 * Whether a comparison of a formula holds. Amounts are compared by their numbers alone, words and conditions by being
 * the same; a temperature that is written out is a point or a difference, whichever the other side is.
 * @param tree The comparison.
 * @param work Works a piece out.
 * @param quote A piece as the maker wrote it.
 * @returns true or false.
 * @throws FormulaError where the two are not of one kind.
 * @example compared(tree, work, quote) // for "2 lb > 1 kg": false
 */
export function compared(
  tree: Tree & { kind: "compare" },
  work: (piece: Tree) => unknown,
  quote: (piece: Tree) => string,
): boolean {
  const { left, right, sign, at } = tree;
  if (sign === "=") {
    const [one, other] = [work(left), work(right)];
    if (!isValue(one) && !isValue(other)) return one === other;
  }
  let a = amountOf(left, work, quote);
  let b = amountOf(right, work, quote);
  if (left.kind === "number" && a.dimension.point && !b.dimension.point) a = literalValue(left.value, left.unit, false);
  if (right.kind === "number" && b.dimension.point && !a.dimension.point)
    b = literalValue(right.value, right.unit, false);
  if (!sameExponents(a.dimension, b.dimension) || !sameDimension(a.dimension, b.dimension))
    throw new FormulaError(unlike(left, a, right, b, quote), at);
  switch (sign) {
    case "<":
      return a.value < b.value;
    case ">":
      return a.value > b.value;
    case "<=":
      return a.value <= b.value;
    case ">=":
      return a.value >= b.value;
    case "=":
      return a.value === b.value;
  }
}
