/** A formula or a text with the word put right that its error suggests. */
export interface Mended {
  readonly word: string;
  readonly text: string;
}

/**
 * Puts right what an error points at, where it asks "did you mean …?": the wrong words stand at its character.
 * Undefined where nothing is suggested, or the wrong words stand elsewhere.
 */
export function mended(text: string, says: string, at: number | undefined): Mended | undefined {
  const asked = /"([^"]+)"[^"]*: did you mean "([^"]+)"\?/u.exec(says);
  const [, wrong, word] = asked ?? [];
  if (wrong === undefined || word === undefined) return undefined;
  const from = placeOf(text, wrong, at ?? 0);
  if (from === undefined) return undefined;
  return { word, text: text.slice(0, from) + word + text.slice(from + wrong.length) };
}

function placeOf(text: string, wrong: string, at: number): number | undefined {
  const there = text.toLowerCase().indexOf(wrong.toLowerCase(), at);
  // Only blanks may lie between the character and the words: anything else is another place of the same words.
  return there >= 0 && text.slice(at, there).trim() === "" ? there : undefined;
}
