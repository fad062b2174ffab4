import type { WrittenAt } from "./writtenAt.ts";

/** A word of formulas, as it is offered. */
export interface WordOffer {
  readonly word: string;
  readonly says: string;
  readonly insert: string;
}

const WHEN = { word: "when", says: "The amount before it counts when a condition holds.", insert: "when " };
const OTHERWISE = { word: "otherwise", says: "The amount when no condition holds.", insert: "otherwise " };
const AND = { word: "and", says: "Both conditions hold.", insert: "and " };
const OR = { word: "or", says: "One of the conditions holds, or both.", insert: "or " };
const NOT = { word: "not", says: "The condition behind it does not hold.", insert: "not " };
const GIVEN = { word: "is given", says: "Somebody wrote this line down.", insert: "is given" };
const NOT_GIVEN = { word: "is not given", says: "Nobody wrote this line down.", insert: "is not given" };

/**
 * The words of formulas that can stand at a place of a formula, the likeliest first.
 * @param at The place.
 * @param operand Whether an operand is wanted there, or is being typed.
 * @returns The words.
 * @example wordsFor({ starts: [0], after: 4, stage: "amount", branch: false, condition: false }, false)[0]?.word // "when"
 */
export function wordsFor(at: WrittenAt, operand: boolean): readonly WordOffer[] {
  if (operand) {
    if (at.is)
      return [GIVEN, ...(at.is === "is" ? [NOT_GIVEN] : [])].map((one) => {
        const word = one.word.replace(at.is === "is not" ? /^is (?:not )?/u : /^is /u, "");
        return { ...one, word, insert: word };
      });
    if (at.branch) return [OTHERWISE];
    return at.condition ? [NOT] : [];
  }
  const is = [GIVEN, NOT_GIVEN];
  if (at.stage === "amount") return [WHEN, ...is, AND, OR];
  return at.stage === "condition" ? [AND, OR, OTHERWISE, ...is] : [];
}
