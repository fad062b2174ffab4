import { sameExponents } from "./dimension.ts";
import { dimensionName } from "./dimensionName.ts";
import { kindFacts } from "./kinds.ts";
import type { Kind, Unit, Unread } from "./types.ts";
import { findUnit } from "./unit.ts";
import { oddUnit, otherKind } from "./unreadWords.ts";
import { waterUnit } from "./water.ts";

/** After pounds an ounce is a weight, even where water is expected: "1 lb 4 oz". */
function named(text: string, kind: Kind, after: Unit | undefined): Unit | undefined {
  const weighs = after && /^(?:lb|oz|g|kg)$/u.test(after.symbol);
  return findUnit(text, weighs && kindFacts(kind).liquid ? "mass" : kind);
}

/**
 * The unit that a text names, made to measure a kind: liquid measures stand for water where water is expected.
 *
 * @param at where the text stands, for the complaint
 * @param after the unit before it in the same quantity
 * @example
 * fitUnit("cups", "water", 0) // { symbol: "cup", dimension: { mass: 1 }, factor: 0.2361... }
 */
export function fitUnit(text: string, kind: Kind, at: number, after?: Unit): Unit | Unread {
  const found = named(text, kind, after);
  if (!found) return oddUnit(at, text, kind);
  const { dimension, liquid } = kindFacts(kind);
  const fitted = liquid || sameExponents(found.dimension, dimension) ? waterUnit(found, dimension) : undefined;
  return fitted ?? otherKind(at, text, dimensionName(found.dimension), kind);
}

/**
 * Whether a reading failed.
 *
 * @example
 * isUnread(readQuantity("a lot", { kind: "mass" })) // true
 */
export function isUnread(result: object): result is Unread {
  return "remedy" in result;
}
