import { type Doubt, defaultUncertainty } from "./defaultUncertainty.ts";
import { fitUnit, isUnread } from "./fitUnit.ts";
import { kindFacts } from "./kinds.ts";
import { type NumberOptions, readNumber } from "./readNumber.ts";
import { readTerms, type Terms } from "./readTerms.ts";
import { coverage95 } from "./standardUncertainty.ts";
import type { Expected, Kind, Knowing, Unit, Unread, Written } from "./types.ts";
import { findUnit } from "./unit.ts";
import { expectedWords, nothingWritten, unread } from "./unreadWords.ts";

export interface ReadOptions extends NumberOptions {
  /** How the maker knows it; "measured" if nobody says, "guessed" if the text begins with "about" or "~". */
  readonly known?: Knowing;
  /** The table of default uncertainties, where the maker changed it. */
  readonly doubts?: readonly Doubt[];
}

const longest = 200;
const plusMinus = /±|\+\s?\/\s?[-−–]|\+[-−–]|\bgive or take\b|\bplus or minus\b/iu;
const about = /^\s*(?:(?:about|around|roughly|approximately|approx\.?|circa|ca\.?)(?=[\s\d])|~|≈)\s*/iu;
const exactly = /\s*\bexact(?:ly)?\s*$/iu;

/** The half-width behind ±, SI: in the value's unit if it names none, "%" as a share of the value. */
function halfWidth(tail: string, at: number, head: Terms, kind: Kind, options: ReadOptions): number | Unread {
  const number = readNumber(tail, options);
  const percent = number && /^\s*(?:%|percent|per cent)\s*$/iu.test(tail.slice(number.end));
  if (number && percent && head.unit.symbol !== "%" && kind !== "share") {
    if (kind === "temperature")
      return unread(at, tail.trim(), kind, "Write the give or take of a temperature in degrees, as in 292 ± 2 °F.");
    return (number.number / 100) * Math.abs(head.si);
  }
  const { symbol, factor } = head.last;
  const last = { symbol, factor, dimension: kindFacts(kind).dimension };
  const halfKind = kind === "temperature" ? "temperature difference" : kind;
  const weighs = kindFacts(kind).liquid && /^(?:lb|oz|g|kg)\b/u.test(last.symbol);
  const half = readTerms(tail, at, weighs && kind === "water" ? "mass" : halfKind, last, options);
  return isUnread(half) ? half : half.si;
}

/** "24 ± 0.5 lb" names the unit of both behind the ±: this is where the first number gets it from. */
function unitBehind(tail: string, kind: Kind, at: number, options: ReadOptions): Unit | undefined {
  const number = readNumber(tail, options);
  const text = number ? tail.slice(number.end).trim() : "";
  if (text === "" || !findUnit(text, kind) || (text === "%" && kind !== "share")) return undefined;
  const unit = fitUnit(text, kind, at);
  return isUnread(unit) ? undefined : unit;
}

function outside(si: number, text: string, expected: Expected): Unread | undefined {
  const {
    kind,
    atLeast = kind === "temperature" ? 0 : Number.NEGATIVE_INFINITY,
    atMost = Number.POSITIVE_INFINITY,
  } = expected;
  if (si >= atLeast && si <= atMost) return undefined;
  const size = si < atLeast ? "low" : "high";
  return unread(0, text, kind, `${text} is too ${size} here. Look at the number, its sign and its unit again.`);
}

/**
 * A quantity as a maker writes it: "24 lb", "3 1/2 gal", "2 gal 1 qt", "5' 6\"", "1,234.5 g", "3,5 kg", "292 ± 2 °F",
 * "24 lb ± 5 %", "about 3 cups". What stands behind ± is the 95 % half-width, so the standard uncertainty is that over
 * 1.96; without ± it follows from the way of knowing (`defaultUncertainty`); "exactly" makes it zero. How commas and
 * dots are told apart: `readNumber`. Liquid measures stand for water, by `waterByVolume`, where water is expected.
 *
 * @param text as typed; never throws, whatever it is; more than 200 characters are refused
 * @param expected kind, unit if none is written, limits in SI
 * @returns what was written, in SI, or where and why it could not be read
 * @throws RangeError for a kind or a default unit that does not exist (the programmer's mistake, not the maker's).
 * @example
 * readQuantity("24 fl oz", { kind: "water" }) // { si: 0.70847..., unit: "fl oz", ... }
 */
export function readQuantity(text: string, expected: Expected, options: ReadOptions = {}): Written | Unread {
  const { kind } = expected;
  const trimmed = text.trim();
  if (trimmed === "") return nothingWritten(kind);
  if (trimmed.length > longest) {
    return {
      at: longest,
      read: `${trimmed.slice(0, 20)}…`,
      expected: expectedWords(kind),
      remedy: `Write it in at most ${longest} characters.`,
    };
  }
  const usual = expected.unit === undefined ? undefined : fitUnit(expected.unit, kind, 0);
  if (usual && isUnread(usual) && expected.unit !== "")
    throw new RangeError(`invalid default unit: ${expected.unit}; a unit of ${kindFacts(kind).says} expected`);
  const lead = /^\s*/u.exec(text)?.[0].length ?? 0;
  const guess = about.exec(trimmed)?.[0].length ?? 0;
  const known = options.known ?? (guess > 0 ? "guessed" : "measured");
  const sure = exactly.exec(trimmed);
  const body = trimmed.slice(guess, sure?.index ?? trimmed.length);
  const sign = plusMinus.exec(body);
  const headText = sign ? body.slice(0, sign.index) : body;
  const tail = sign ? body.slice(sign.index + sign[0].length) : "";
  const tailAt = lead + guess + (sign ? sign.index + sign[0].length : 0);
  const ofTail = sign ? unitBehind(tail, kind, tailAt, options) : undefined;
  const fallback = usual && !isUnread(usual) ? usual : undefined;
  const head = readTerms(headText, lead + guess, kind, ofTail ?? fallback, options);
  if (isUnread(head)) return head;
  const beyond = outside(head.si, trimmed, expected);
  if (beyond) return beyond;
  let standardUncertainty = sure ? 0 : defaultUncertainty(known, kind, head.si, options.doubts);
  if (sign) {
    const half = halfWidth(tail, tailAt, head, kind, options);
    if (typeof half !== "number") return half;
    if (!(half >= 0))
      return unread(tailAt, tail.trim(), kind, "Behind ± stands how far off it may be, without a sign of its own.");
    standardUncertainty = half / coverage95;
  }
  return {
    text: trimmed,
    si: head.si,
    dimension: kindFacts(kind).dimension,
    unit: head.unit.symbol,
    standardUncertainty,
    known,
  };
}
