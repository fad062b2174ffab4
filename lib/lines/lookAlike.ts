/** Letters of other alphabets that look just like those of ours, and ours in the same order. */
const STRANGERS = "асеорхуіјѕԁһАВЕКМНОРСТХІЈЅοΑΒΕΖΗΙΚΜΝΟΡΤΥΧ";
const OURS = "aceopxyijsdhABEKMHOPCTXIJSoABEZHIKMNOPTYX";

const ours: ReadonlyMap<string, string> = new Map(Array.from(STRANGERS, (letter, i) => [letter, OURS.charAt(i)]));

/**
 * The letter of another alphabet that hides in a word of ours: a Cyrillic "а" in "salt".
 * @param text Words.
 * @returns The letter and the one it looks like; undefined where every word is of one alphabet.
 * @example strangeLetter("s\u0430lt")?.like // "a"
 */
export function strangeLetter(text: string): { readonly letter: string; readonly like: string } | undefined {
  for (const word of text.split(/[^\p{L}\p{M}]+/u)) {
    if (!/[A-Za-z]/u.test(word)) continue;
    for (const letter of word) {
      const like = ours.get(letter);
      if (like !== undefined) return { letter, like };
    }
  }
  return undefined;
}

/**
 * A text with the letters that only look like ours made ours.
 * @param text Words.
 * @returns The same to look at.
 * @example looksLike("s\u0430lt") // "salt"
 */
export function looksLike(text: string): string {
  return Array.from(text.normalize("NFKC"), (letter) => ours.get(letter) ?? letter).join("");
}
