/** What is written for signs that formulas write otherwise. */
const INSTEAD: ReadonlyMap<string, string> = new Map([
  ["**", "a power is written ^"],
  ["==", "one = is enough"],
  ["!=", 'write "not (a = b)"'],
  ["<>", 'write "not (a = b)"'],
  ["≠", 'write "not (a = b)"'],
  ["=>", "write >="],
  ["=<", "write <="],
  ["&", "write and"],
  ["|", "write or"],
  ["—", "a minus is written -"],
  ["―", "a minus is written -"],
  ["∗", "write * or ×"],
  ["∙", "write * or ×"],
  ["•", "write * or ×"],
  ["⁄", "write /"],
  ["√", "write sqrt(…)"],
  ["±", "a give or take belongs to a given: give this amount a line of its own"],
  ["[", "write ("],
  ["{", "write ("],
  ["]", "write )"],
  ["}", "write )"],
  [";", "a comma parts what a function is given"],
  [":", "write a span of time with its unit, say 90 min"],
]);

const RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/**
 * What is said of a sign that means nothing in a formula where it stands, if there is something better to write.
 * @param text The formula.
 * @param at The sign's character, from 0.
 * @returns The sentence, or undefined for a sign of which nothing is known.
 * @example strangeSign("salt — water", 5) // 'there is no "—" in a formula: a minus is written -'
 */
export function strangeSign(text: string, at: number): string | undefined {
  const sign = signAt(text, at);
  if (isInvisible(sign)) return "an invisible character stands here: take it out";
  if (sign === "=" && text.slice(0, at).trim() === "") return "a formula begins without a =";
  for (const from of [at, at - 1]) {
    // A doubled sign is noticed at its second character, when the first has been taken for what it is alone.
    const two = text.slice(Math.max(0, from), from + 2);
    const instead = two.length === 2 ? INSTEAD.get(two) : undefined;
    if (instead !== undefined) return `there is no ${two} in a formula: ${instead}`;
  }
  const instead = INSTEAD.get(sign);
  if (instead !== undefined) return `there is no "${sign}" in a formula: ${instead}`;
  const raised = RAISED.indexOf(sign);
  if (sign !== "" && raised >= 0) return `a power is written with ^: write ^${raised}`;
  if (/^["“]$/u.test(sign)) return "these quotes are never closed";
  const plain = sign.normalize("NFKC");
  return plain !== sign && /^[!-~]$/u.test(plain) ? `"${sign}" only looks like ${plain}: write ${plain}` : undefined;
}

/**
 * The whole character that stands at a place, where it takes two code units too.
 * @param text A text.
 * @param at The place, from 0.
 * @returns The character, "" at the end.
 * @example signAt("2 # 3", 2) // "#"
 */
export function signAt(text: string, at: number): string {
  const code = text.codePointAt(at);
  return code === undefined ? "" : String.fromCodePoint(code);
}

/**
 * Whether a character shows nothing and is no blank either: it gets into a text by being copied.
 * @param sign One character.
 * @returns true for a zero-width blank, a joiner, a mark of direction.
 * @example isInvisible("\u200b") // true
 */
export function isInvisible(sign: string): boolean {
  return /^[\p{Default_Ignorable_Code_Point}\p{Cc}]$/u.test(sign);
}
