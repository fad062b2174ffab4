import type { Terms } from "./readTerms.ts";
import type { Unread } from "./types.ts";
import { unit as unitOf } from "./unit.ts";
import { unread } from "./unreadWords.ts";

const shape = /^\s*(\d{1,4}):(\d{2})(?::(\d{2}))?([.,]\d{1,3})?\s*(h|hrs?|hours?|min|mins|minutes?)?\s*$/iu;

/**
 * A time written with colons: "12:30" is minutes and seconds, or hours and minutes where hours are expected or named
 * ("1:30 h"); "1:02:05" has hours first. Undefined for a text of another shape.
 *
 * @param hours whether hours are expected
 * @example
 * readClock("12:30", 0, false) // { si: 750, … }
 */
export function readClock(text: string, offset: number, hours: boolean): Terms | Unread | undefined {
  const found = shape.exec(text);
  if (!found) return undefined;
  const [, first = "0", second = "0", third, decimals = "", named] = found;
  if (Number(second) > 59 || Number(third ?? 0) > 59) {
    return unread(offset, text.trim(), "time", "After a colon at most 59 can stand, as in 12:30.");
  }
  const inHours = third !== undefined || (named === undefined ? hours : /^h/iu.test(named));
  const large = unitOf(inHours ? "h" : "min", "time");
  const small = unitOf(inHours && third === undefined ? "min" : "s", "time");
  const rest = Number(decimals.replace(",", ".") || 0) * small.factor;
  const si = Number(first) * large.factor + (Number(second) * large.factor) / 60 + Number(third ?? 0) + rest;
  return { si, unit: large, last: small, bare: false };
}
