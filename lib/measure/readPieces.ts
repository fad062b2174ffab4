import { type NumberOptions, readNumber } from "./readNumber.ts";
import type { Kind, Unread } from "./types.ts";
import { findUnit } from "./unit.ts";
import { noNumber, oddNumber, unread } from "./unreadWords.ts";

/** One number with the text of its unit, and where each stands in the whole. */
export interface Piece {
  readonly number: number;
  readonly at: number;
  readonly unitText: string;
  readonly unitAt: number;
  readonly fraction: boolean;
}

const twoNumbers = "Two numbers stand here. Write the middle and its give or take, as in 11 ± 1.";
const joints = /^(?:\s|,|&|\+|and\b)*/iu;

/** Where in `rest` the next term begins: after a unit, at a digit. `rest` itself where it is all one unit. */
function unitEnd(rest: string, kind: Kind): number {
  if (rest.trim() === "" || findUnit(rest, kind)) return rest.length;
  for (let end = 1; end < rest.length; end += 1) {
    if (!/[\d\u00bc-\u00be\u2150-\u215e]/u.test(rest.charAt(end))) continue;
    const sign = /[-−–]\s*$/u.exec(rest.slice(0, end))?.index ?? end;
    if (findUnit(rest.slice(0, sign).replace(/(?:,|&|\+|\band)\s*$/iu, ""), kind)) return sign;
  }
  return rest.length;
}

/**
 * The numbers of a quantity with the texts of their units: two for "7 lb 4 oz".
 *
 * @param offset where `text` begins in the whole
 * @example
 * readPieces("7 lb 4 oz", 0, "mass", {}) // [{ number: 7, at: 0, unitText: "lb", unitAt: 2, fraction: false }, { number: 4, at: 5, unitText: "oz", unitAt: 7, fraction: false }]
 */
export function readPieces(text: string, offset: number, kind: Kind, options: NumberOptions): Piece[] | Unread {
  const found: Piece[] = [];
  let at = 0;
  while (at < text.length) {
    if (found.length > 0) at += joints.exec(text.slice(at))?.[0].length ?? 0;
    const start = at + (/^\s*/u.exec(text.slice(at))?.[0].length ?? 0);
    // "−$5.50/lb": the sign of money stands before the number, the rest of its unit behind it.
    const money = at === 0 && /^\s*[-+−–]?\s*\$/u.test(text);
    const number = readNumber(money ? text.replace("$", " ") : text.slice(at), options);
    if (!number) return noNumber(offset + start, text.slice(start).trim(), kind);
    const written = text.slice(start, at + number.end);
    if (!Number.isFinite(number.number)) return oddNumber(offset + start, written.trim(), kind);
    const rest = text.slice(at + number.end);
    const span = /^\s*(?:[-–−]|to\b|\.\.+|…)\s*[\d.,½]/iu.exec(rest);
    if (span) return unread(offset + start, text.slice(start).trim(), kind, twoNumbers);
    const end = unitEnd(rest, kind);
    const blanks = /^\s*/u.exec(rest)?.[0].length ?? 0;
    const unitText = ((money ? "$" : "") + rest.slice(0, end).trim()).replace(/(?:,|&|\+|\band)$/iu, "").trim();
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
