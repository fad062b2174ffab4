import { fitUnit, isUnread } from "./fitUnit.ts";
import { kindFacts } from "./kinds.ts";
import { type NumberOptions, readNumber } from "./readNumber.ts";
import { readTerms, type Terms } from "./readTerms.ts";
import type { Kind, Unit, Unread } from "./types.ts";
import { findUnit } from "./unit.ts";
import { unread } from "./unreadWords.ts";

/**
 * The half-width behind ±, SI: in the last unit of the value if it names none, "%" as a share of the value.
 *
 * @param tail what stands behind ±, from character `at` of the whole
 * @param head the value before it
 * @example
 * readHalf(" 2 oz", 7, { si: 1, unit: unit("lb"), last: unit("lb"), bare: false }, "mass", {}) // 0.056699...
 */
export function readHalf(tail: string, at: number, head: Terms, kind: Kind, options: NumberOptions): number | Unread {
  if (tail.trim() === "") return unread(at, "", kind, "Write behind ± how far off it may be, as in 24 ± 0.5 lb.");
  const half = halfOf(tail, at, head, kind, options);
  if (typeof half !== "number" || half >= 0) return half;
  return unread(at, tail.trim(), kind, "Behind ± stands how far off it may be, without a sign of its own.");
}

function halfOf(tail: string, at: number, head: Terms, kind: Kind, options: NumberOptions): number | Unread {
  const number = readNumber(tail, options);
  const percent = number && /^\s*(?:%|percent|per cent)\s*$/iu.test(tail.slice(number.end));
  if (percent && kind === "temperature") {
    return unread(at, tail.trim(), kind, "Write the give or take of a temperature in degrees, as in 292 ± 2 °F.");
  }
  if (percent && Number.isFinite(number.number) && kind !== "share") return (number.number / 100) * Math.abs(head.si);
  const { symbol, factor } = head.last;
  const last = { symbol, factor, dimension: kindFacts(kind).dimension };
  const half = readTerms(tail, at, halfKind(kind, symbol), last, options);
  return isUnread(half) ? half : half.si;
}

/** A temperature is off by a difference; water that was weighed is off by ounces of weight. */
function halfKind(kind: Kind, symbol: string): Kind {
  if (kind === "temperature") return "temperature difference";
  return kind === "water" && /^(?:lb|oz|g|kg)$/u.test(symbol) ? "mass" : kind;
}

/**
 * "24 ± 0.5 lb" names the unit of both numbers behind the ±: this is where the first gets it from.
 *
 * @example
 * unitBehind(" 0.5 lb", 4, "mass", {}) // { symbol: "lb", dimension: { mass: 1 }, factor: 0.45359237 }
 */
export function unitBehind(tail: string, at: number, kind: Kind, options: NumberOptions): Unit | undefined {
  const number = readNumber(tail, options);
  const text = number ? tail.slice(number.end).trim() : "";
  if (text === "" || !findUnit(text, kind) || (text === "%" && kind !== "share")) return undefined;
  const unit = fitUnit(text, kind, at);
  return isUnread(unit) ? undefined : unit;
}
