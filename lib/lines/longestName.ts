import { foldName } from "./foldName.ts";

/** No name is longer, so that looking for one costs the same in any text. */
export const LONGEST_NAME = 60;

const LETTER = /[\p{L}\p{M}\p{Nd}_]/u;
const NAME_CHARACTER = /[\p{L}\p{M}\p{Nd}_\s.'’\-\u2010\u2011]/u;
/** Text that folding changes in nothing but its capitals. */
const PLAIN = /^(?! )(?:[!-~]| (?! ))*$/u;

/**
 * The longest known name that stands in a text at a character. A name ends where a word ends: "salt" is not in "salty".
 * @param text The formula.
 * @param from Character to look at, from 0.
 * @param known Whether a folded name is known.
 * @returns The folded name and the character after it, or undefined.
 * @example longestName("boil-off * 2", 0, (name) => name === "boil" || name === "boil-off") // { folded: "boil-off", to: 8 }
 */
export function longestName(
  text: string,
  from: number,
  known: (folded: string) => boolean,
): { readonly folded: string; readonly to: number } | undefined {
  const ends: number[] = [];
  // Twice the length, since blanks may be doubled in the text.
  const last = Math.min(text.length, from + 2 * LONGEST_NAME);
  let at = from;
  for (; at < last && NAME_CHARACTER.test(text.charAt(at)); at++) {
    if (LETTER.test(text.charAt(at)) && !LETTER.test(text.charAt(at + 1))) ends.push(at + 1);
  }
  const slice = text.slice(from, at);
  // Most formulas are plain: what is folded once need not be folded for each end again.
  const plain = PLAIN.test(slice) ? slice.toLowerCase() : undefined;
  for (const to of ends.reverse()) {
    const folded = plain?.slice(0, to - from) ?? foldName(text.slice(from, to));
    if (known(folded)) return { folded, to };
  }
  return undefined;
}
