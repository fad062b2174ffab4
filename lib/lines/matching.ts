/** How well what was typed fits a name: the smaller, the better. */
export const FIT = { start: 0, looseStart: 1, word: 2, words: 3, slip: 4 } as const;

/** A text as it is compared; `loose` is the same by `loosened`. */
export interface Folded {
  readonly folded: string;
  readonly loose: string;
}

/**
 * A folded text without what is easily left out: hyphens, points and apostrophes become blanks.
 * @param text The text.
 * @returns The same, looser.
 * @example loosened("boil-off") // "boil off"
 */
export function loosened(text: string): string {
  return text.replace(/[\s\-.'’]+/gu, " ");
}

/**
 * What was typed of a name, as it is compared. A blank at its end counts: the word before it is over.
 * @param typed What was typed.
 * @returns Small letters, one blank between words.
 * @example foldTyped("  Gas  for ") // "gas for "
 */
export function foldTyped(typed: string): string {
  return typed
    .normalize("NFC")
    .replace(/[\u2010\u2011]/gu, "-")
    .replace(/’/gu, "'")
    .replace(/\s+/gu, " ")
    .trimStart()
    .toLowerCase();
}

/**
 * How what was typed fits a name: at its start, at its start but for hyphens, at the start of any of its words, or
 * each word at the start of one of the name's, in their order.
 * @param typed What was typed, folded; not empty.
 * @param name The name, folded the same way.
 * @returns One of FIT, or undefined where it does not fit.
 * @example fitOf({ folded: "the r", loose: "the r" }, { folded: "gas for the run", loose: "gas for the run" }) // 2
 */
export function fitOf(typed: Folded, name: Folded): number | undefined {
  if (name.folded.startsWith(typed.folded)) return FIT.start;
  if (name.loose.startsWith(typed.loose)) return FIT.looseStart;
  if (name.loose.includes(` ${typed.loose}`)) return FIT.word;
  return inOrder(typed.loose, name.loose) ? FIT.words : undefined;
}

function inOrder(asked: string, words: string): boolean {
  const wanted = asked.trim().split(" ");
  if (wanted.length < 2) return false;
  let next = 0;
  for (const word of words.split(" ")) if (word.startsWith(wanted[next] ?? " ")) next++;
  return next >= wanted.length;
}
