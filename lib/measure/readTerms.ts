import { fitUnit, isUnread } from "./fitUnit.ts";
import { kindFacts } from "./kinds.ts";
import { readClock } from "./readClock.ts";
import type { NumberOptions } from "./readNumber.ts";
import { type Piece, readPieces } from "./readPieces.ts";
import type { Kind, Unit, Unread } from "./types.ts";
import { unit as unitOf } from "./unit.ts";
import { noNumber, oddNumber, unread } from "./unreadWords.ts";

export interface Terms {
  readonly si: number;
  /** The unit of the first term, and of the last. */
  readonly unit: Unit;
  readonly last: Unit;
  /** Nobody wrote a unit. */
  readonly bare: boolean;
}

const degrees = /^(?:°|º|˚|deg|degs|degrees?)\.?$/iu;

function unwritten(piece: Piece, kind: Kind, last: Unit | undefined, usual: Unit | undefined): Unit | Unread {
  // "1 h 20" is the only pair whose second unit goes without saying.
  if (kind === "time" && last?.symbol === "h") return unitOf("min", "time");
  if (last) return unread(piece.at, String(piece.number), kind, `Write the unit of ${piece.number} too.`);
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
 * readTerms("7 lb 4 oz", 0, "mass", undefined, {}) // { si: 3.288544..., bare: false, … }
 */
export function readTerms(
  text: string,
  offset: number,
  kind: Kind,
  usual: Unit | undefined,
  options: NumberOptions,
): Terms | Unread {
  const timed = kind === "time" ? readClock(text, offset, usual?.symbol === "h") : undefined;
  if (timed) return timed;
  const parts = readPieces(text, offset, kind, options);
  if (isUnread(parts)) return parts;
  const [head] = parts;
  if (!head) return noNumber(offset, "", kind);
  let si = 0;
  let first: Unit | undefined;
  let last: Unit | undefined;
  for (const piece of parts) {
    const bare = piece.unitText === "" || (kind.startsWith("temperature") && degrees.test(piece.unitText));
    const unit = bare ? unwritten(piece, kind, last, usual) : fitUnit(piece.unitText, kind, piece.unitAt, last);
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
  if (!first || !last || !Number.isFinite(si)) return oddNumber(offset, text.trim(), kind);
  return { si, unit: first, last, bare: head.unitText === "" };
}
