import { findUnit } from "../measure/unit.ts";

/** Formulas ask for the same few units over and over. */
const known = new Map<string, boolean>();
const MOST = 2000;
/** No unit is longer: text of a stranger is not kept. */
const LONGEST = 60;

/**
 * Whether a text is a unit, simple or compound.
 * @param text What stands behind a number, or a name that is to be given.
 * @returns true for "lb", "fl oz/min", "BTU/(h ft2)".
 * @example isUnit("fl oz/min") // true
 */
export function isUnit(text: string): boolean {
  if (text.length > LONGEST) return false;
  const before = known.get(text);
  if (before !== undefined) return before;
  const unit = findUnit(text);
  // Fields read c, d, f and k as °C, day, °F and K. In a formula they are likelier names: 2 c must not pass for 2 °C.
  const is = unit !== undefined && lettersOf(text).every((letter) => findUnit(letter)?.symbol === letter);
  if (known.size >= MOST) known.clear();
  known.set(text, is);
  return is;
}

/** The small letters that stand for a unit alone: "c" of "lb/c", none of "lb/deg c". */
function lettersOf(text: string): readonly string[] {
  return text
    .replace(/(?:\bdeg(?:ree)?s?|[°º˚])\s*[cf](?!\p{L})/giu, "K")
    .split(/[^\p{L}\p{Nd}°"'′″%$.]+/u)
    .filter((word) => /^\p{Ll}\.?[23]?$/u.test(word))
    .map((word) => word.charAt(0));
}
