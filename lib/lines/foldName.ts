/** Ways of writing a hyphen that a phone or a word processor puts in place of the plain one. */
const HYPHENS = /[\u2010\u2011]/gu;

/** A page asks for the same few thousand names at each drawing; text of a stranger is not kept. */
const folded = new Map<string, string>();
const MOST = 5000;
const LONGEST = 100;

/**
 * A line's name with its blanks tidied: none at the ends, one between words, accents in their composed form.
 * @param name What the maker wrote.
 * @returns The name as it is kept and shown.
 * @example tidyName("  salt  in the bath ") // "salt in the bath"
 */
export function tidyName(name: string): string {
  return name.normalize("NFC").replace(HYPHENS, "-").trim().replace(/\s+/gu, " ");
}

/**
 * A name as it is compared: two names that differ in capitals or blanks alone are the same name.
 * @param name A name, tidy or not.
 * @returns The form under which a Map holds it; it is not for showing.
 * @example foldName("Salt in  the bath") // "salt in the bath"
 */
export function foldName(name: string): string {
  const known = folded.get(name);
  if (known !== undefined) return known;
  const fold = tidyName(name).toLowerCase().replace(/’/gu, "'");
  if (folded.size >= MOST) folded.clear();
  if (name.length <= LONGEST) folded.set(name, fold);
  return fold;
}
