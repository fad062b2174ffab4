import { type Doubt, defaultUncertainty } from "./defaultUncertainty.ts";
import { fitUnit, isUnread } from "./fitUnit.ts";
import { kindFacts } from "./kinds.ts";
import { readHalf, unitBehind } from "./readHalf.ts";
import type { NumberOptions } from "./readNumber.ts";
import { readShareRange } from "./readShareRange.ts";
import { readTerms } from "./readTerms.ts";
import { coverage95 } from "./standardUncertainty.ts";
import type { Expected, Knowing, Unit, Unread, Written } from "./types.ts";
import { nothingWritten, unread } from "./unreadWords.ts";

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

interface Cut {
  readonly guessed: boolean;
  readonly sure: boolean;
  /** Before the ±, and where it begins in the text. */
  readonly head: string;
  readonly headAt: number;
  /** Behind it; absent without ±. */
  readonly tail?: string;
  readonly tailAt: number;
}

function cut(text: string): Cut {
  const lead = /^\s*/u.exec(text)?.[0].length ?? 0;
  const trimmed = text.trim();
  const guess = about.exec(trimmed)?.[0].length ?? 0;
  const sure = exactly.exec(trimmed);
  const body = trimmed.slice(guess, sure?.index ?? trimmed.length);
  const sign = plusMinus.exec(body);
  const headAt = lead + guess;
  const flags = { guessed: guess > 0, sure: sure !== null, headAt };
  if (!sign) return { ...flags, head: body, tailAt: headAt };
  const behind = sign.index + sign[0].length;
  return { ...flags, head: body.slice(0, sign.index), tail: body.slice(behind), tailAt: headAt + behind };
}

function usualUnit({ kind, unit }: Expected): Unit | undefined {
  if (unit === undefined || unit === "") return undefined;
  const usual = fitUnit(unit, kind, 0);
  if (!isUnread(usual)) return usual;
  throw new RangeError(`invalid default unit: ${unit}; a unit of ${kindFacts(kind).says} expected`);
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
 * readQuantity("24 fl oz", { kind: "water" }) // { text: "24 fl oz", si: 0.708487..., dimension: { mass: 1 }, unit: "fl oz", standardUncertainty: 0.021254..., known: "measured" }
 */
export function readQuantity(text: string, expected: Expected, options: ReadOptions = {}): Written | Unread {
  const { kind } = expected;
  const range = kind === "share" ? readShareRange(text) : undefined;
  if (range) return range;
  const trimmed = text.trim();
  if (trimmed === "") return nothingWritten(kind);
  if (trimmed.length > longest) {
    return unread(0, `${trimmed.slice(0, 20)}…`, kind, `Write it in at most ${longest} characters.`);
  }
  const usual = usualUnit(expected);
  const { guessed, sure, head, headAt, tail, tailAt } = cut(text);
  const behind = tail === undefined ? undefined : unitBehind(tail, tailAt, kind, options);
  const terms = readTerms(head, headAt, kind, behind ?? usual, options);
  if (isUnread(terms)) return terms;
  const { si } = terms;
  const refused = outside(si, trimmed, expected);
  if (refused) return refused;
  const known = options.known ?? (guessed ? "guessed" : "measured");
  const half = tail === undefined ? undefined : readHalf(tail, tailAt, terms, kind, options);
  if (half !== undefined && typeof half !== "number") return half;
  const standardUncertainty =
    half === undefined ? (sure ? 0 : defaultUncertainty(known, kind, si, options.doubts)) : half / coverage95;
  return {
    text: trimmed,
    si,
    dimension: kindFacts(kind).dimension,
    unit: terms.unit.symbol,
    standardUncertainty,
    known,
  };
}
