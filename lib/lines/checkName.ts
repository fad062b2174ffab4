import { foldName, tidyName } from "./foldName.ts";
import { isUnit } from "./isUnit.ts";
import { LONGEST_NAME } from "./longestName.ts";
import { strangeLetter } from "./lookAlike.ts";
import type { Names } from "./names.ts";
import { parseFormula } from "./parseFormula.ts";
import { WORDS } from "./Reader.ts";

/** Letters of one code unit each, so that a name is found again character by character. */
const ALLOWED = /^[\p{L}\p{M}\p{Nd}_ .'’-]*$/u;

/**
 * What is wrong with a name that a line is to have, if anything is. A name is refused if it could be read as a unit, a
 * number, or a formula over the other lines.
 * @param name The name, tidy.
 * @param names Lines and functions that are there already; the line's own name among them does not count.
 * @returns The reason, worded for the maker, or undefined for a good name.
 * @example checkName("min", namesOf([])) // "is a unit: a formula could not tell them apart"
 */
export function checkName(name: string, names: Names): string | undefined {
  const folded = foldName(name);
  if (folded === "") return "is empty: write a few words";
  if (name.length > LONGEST_NAME) return `is too long: at most ${LONGEST_NAME} characters`;
  if (/\p{Default_Ignorable_Code_Point}/u.test(name)) return "has an invisible character in it: write it again";
  const strange = [...name].find((character) => character.length > 1 || !ALLOWED.test(character));
  if (strange !== undefined)
    return `has "${strange}" in it: letters, figures, blanks, hyphens, points and apostrophes are allowed`;
  const stranger = strangeLetter(name);
  if (stranger)
    return `has "${stranger.letter}" in it, which looks like ${stranger.like} but is a letter of another alphabet`;
  if (/^\p{Nd}/u.test(name)) return "begins with a figure and could be read as a number";
  if (!/^[\p{L}_]/u.test(name)) return "does not begin with a letter";
  if (!/[\p{L}\p{M}\p{Nd}_]$/u.test(name)) return "does not end with a letter or a figure";
  if (WORDS.has(folded)) return "is a word of formulas";
  if (isUnit(name) || isUnit(folded)) return "is a unit: a formula could not tell them apart";
  return readsAsFormula(name, names) ? "could be read as a formula over other lines" : undefined;
}

/**
 * Whether a name, read as a formula over the other lines, has a meaning: "salt-water" where there are both.
 * @param name The name, tidy.
 * @param names Lines and functions; the line's own name among them does not count.
 * @returns true where the name could be read two ways.
 * @example readsAsFormula("salt-water", namesOf(["salt", "water"])) // true
 */
export function readsAsFormula(name: string, names: Names): boolean {
  // Only these can join two names: for all others there is nothing to look for.
  if (!/-|\s(?:of|when|is|and|or)\s|^not\s/iu.test(name)) return false;
  return "tree" in parseFormula(tidyName(name), { ...names, except: foldName(name) });
}
