import { fitUnit, isUnread } from "./fitUnit.ts";
import { kindFacts } from "./kinds.ts";
import { type NumberOptions, readNumber } from "./readNumber.ts";
import type { Kind, Unit, Unread } from "./types.ts";
import { findUnit, unit as unitOf } from "./unit.ts";
import { noNumber, oddNumber, unread } from "./unreadWords.ts";

export interface Terms {
  readonly si: number;
  /** The unit of the first term, and of the last. */
  readonly unit: Unit;
  readonly last: Unit;
  /** Nobody wrote a unit. */
  readonly bare: boolean;
}

interface Piece {
  readonly number: number;
  readonly at: number;
  readonly unitText: string;
  readonly unitAt: number;
  readonly fraction: boolean;
}

const degrees = /^(?:°|º|˚|deg|degs|degrees?)\.?$/iu;
const joints = /^(?:\s|,|&|\+|and\b)*/iu;

/** Where in `rest` the next term begins: after a unit, at a digit. `rest` itself where it is all one unit. */
function unitEnd(rest: string, kind: Kind): number {
  if (rest.trim() === "" || findUnit(rest, kind)) return rest.length;
  for (let end = 1; end < rest.length; end += 1) {
    if (!/[\d\u00bc-\u00be\u2150-\u215e]/u.test(rest.charAt(end))) continue;
    const name = rest.slice(0, end).replace(/(?:,|&|\+|\band)\s*$/iu, "");
    if (findUnit(name, kind)) return end;
  }
  return rest.length;
}

function pieces(text: string, offset: number, kind: Kind, options: NumberOptions): Piece[] | Unread {
  const found: Piece[] = [];
  let at = 0;
  while (at < text.length) {
    if (found.length > 0) at += joints.exec(text.slice(at))?.[0].length ?? 0;
    const money = found.length === 0 ? (/^\s*\$/u.exec(text)?.[0] ?? "") : "";
    at += money.length;
    const number = readNumber(text.slice(at), options);
    const start = at + (/^\s*/u.exec(text.slice(at))?.[0].length ?? 0);
    if (!number) return noNumber(offset + start, text.slice(start).trim(), kind);
    const written = text.slice(start, at + number.end);
    if (!Number.isFinite(number.number)) return oddNumber(offset + start, written.trim(), kind);
    const rest = text.slice(at + number.end);
    const span = /^\s*(?:[-–−]|to\b|\.\.+|…)\s*[\d.,½]/iu.exec(rest);
    if (span)
      return unread(
        offset + start,
        text.slice(start).trim(),
        kind,
        "Two numbers stand here. Write the middle and its give or take, as in 11 ± 1.",
      );
    const end = unitEnd(rest, kind);
    const blanks = /^\s*/u.exec(rest)?.[0].length ?? 0;
    const unitText = (money.trim() + rest.slice(0, end).trim()).replace(/(?:,|&|\+|\band)$/iu, "").trim();
    found.push({
      number: number.number,
      at: offset + start,
      unitText,
      unitAt: offset + at + number.end + blanks,
      fraction: number.fraction,
    });
    at += number.end + end;
  }
  return found;
}

/** Minutes and seconds, "12:30"; with three parts, or where hours are expected, hours first. */
function clock(text: string, offset: number, hours: boolean): Terms | Unread | undefined {
  const found = /^\s*(\d{1,4}):(\d{2})(?::(\d{2}))?([.,]\d{1,3})?\s*$/u.exec(text);
  if (!found) return undefined;
  const [, first = "0", second = "0", third, decimals = ""] = found;
  if (Number(second) > 59 || Number(third ?? 0) > 59) {
    return unread(offset, text.trim(), "time", "After a colon at most 59 can stand, as in 12:30.");
  }
  const inHours = third !== undefined || hours;
  const unit = unitOf(inHours ? "h" : "min", "time");
  const whole = Number(first) * unit.factor + (Number(second) * unit.factor) / 60 + Number(third ?? 0);
  const smallest = inHours && third === undefined ? 60 : 1;
  const si = whole + Number(decimals.replace(",", ".") || 0) * smallest;
  return { si, unit, last: unit, bare: false };
}

function defaultUnit(piece: Piece, kind: Kind, usual: Unit | undefined): Unit | Unread {
  // "3/4" of full fire is three quarters, never 0.75 %.
  if (kind === "share" && piece.fraction) return unitOf("");
  if (usual) return usual;
  if (Object.keys(kindFacts(kind).dimension).length === 0) return unitOf("");
  return unread(piece.unitAt, piece.unitText, kind, "Write the unit too.");
}

/**
 * One quantity without its ±, in one term or several that add up ("2 gal 1 qt", "5' 6\"", "7 lb 4 oz", "12:30").
 *
 * @param text the part of the maker's text that holds it, beginning at `offset`
 * @param usual the unit taken when none is written
 * @example
 * readTerms("7 lb 4 oz", 0, "mass", undefined, {})
 */
export function readTerms(
  text: string,
  offset: number,
  kind: Kind,
  usual: Unit | undefined,
  options: NumberOptions,
): Terms | Unread {
  const timed = kind === "time" ? clock(text, offset, usual?.symbol === "h") : undefined;
  if (timed) return timed;
  const parts = pieces(text, offset, kind, options);
  if (isUnread(parts)) return parts;
  const [head] = parts;
  if (!head) return noNumber(offset, "", kind);
  let si = 0;
  let first: Unit | undefined;
  let last: Unit | undefined;
  for (const piece of parts) {
    const bare = piece.unitText === "" || (kind.startsWith("temperature") && degrees.test(piece.unitText));
    if (bare && last && !(kind === "time" && last.symbol === "h")) {
      return unread(piece.at, String(piece.number), kind, `Write the unit of ${piece.number} too.`);
    }
    const unit = bare
      ? last
        ? unitOf("min", "time")
        : defaultUnit(piece, kind, usual)
      : fitUnit(piece.unitText, kind, piece.unitAt, last);
    if (isUnread(unit)) return unit;
    if (last && !(unit.factor < last.factor && piece.number >= 0 && unit.offset === undefined)) {
      return unread(
        piece.at,
        text.slice(piece.at - offset).trim(),
        kind,
        "Numbers that add up go from the larger unit to the smaller, as in 7 lb 4 oz.",
      );
    }
    const sign = last && (head.number < 0 || Object.is(head.number, -0)) ? -1 : 1;
    si += sign * (piece.number + (unit.offset ?? 0)) * unit.factor;
    first ??= unit;
    last = unit;
  }
  if (!first || !last) return noNumber(offset, "", kind);
  return { si, unit: first, last, bare: head.unitText === "" };
}
