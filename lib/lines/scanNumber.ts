import { FormulaError } from "./FormulaError.ts";

const DIGITS = /(?:\d+(?:\.\d+)?|\.\d+)(?:[eE][+\-−]?\d+)?/uy;
const FRACTIONS: ReadonlyMap<string, number> = new Map([
  ["½", 1 / 2],
  ["⅓", 1 / 3],
  ["⅔", 2 / 3],
  ["¼", 1 / 4],
  ["¾", 3 / 4],
  ["⅛", 1 / 8],
  ["⅜", 3 / 8],
  ["⅝", 5 / 8],
  ["⅞", 7 / 8],
]);

/**
 * The number that stands in a formula at a character: `24`, `2.5`, `.5`, `1e-3`, `½`, `3½`.
 * A comma never belongs to a number of a formula: there it parts what a function is given.
 * @param text The formula.
 * @param from Character to look at, from 0.
 * @param inCall Whether a comma may follow, since a function's brackets are open.
 * @returns The number and the character after it, or undefined where no number stands.
 * @throws FormulaError for `1,5` outside a function's brackets and for a number beyond 1e308.
 * @example scanNumber("3½ gal", 0, false) // { value: 3.5, to: 2 }
 */
export function scanNumber(text: string, from: number, inCall: boolean): { value: number; to: number } | undefined {
  DIGITS.lastIndex = from;
  const digits = DIGITS.exec(text)?.[0] ?? "";
  let to = from + digits.length;
  const fraction = /[eE]/u.test(digits) ? undefined : FRACTIONS.get(text.charAt(to));
  if (digits === "" && fraction === undefined) return undefined;
  const value = (digits === "" ? 0 : Number(digits.replace("−", "-"))) + (fraction ?? 0);
  if (fraction !== undefined) to += 1;
  if (!Number.isFinite(value)) throw new FormulaError("this number is too large", from);
  const comma = inCall ? null : /^(?:,\d+)+(?:\.\d+)?/u.exec(text.slice(to, to + 40));
  if (comma) {
    const instead = without(text.slice(from, to), comma[0]);
    const advice = instead === undefined ? "" : `: write ${instead}`;
    throw new FormulaError(`a comma only parts what a function is given${advice}`, to);
  }
  return { value, to };
}

/** A number with commas as it is written without: "1.5" for 1,5, and "1500" first for 1,500. Unclear ones get no advice. */
function without(before: string, commas: string): string | undefined {
  if (!/^\d+$/u.test(before)) return undefined;
  if (/^\d{1,3}$/u.test(before) && /^(?:,\d{3})+(?:\.\d+)?$/u.test(commas)) {
    const whole = before + commas.replace(/,/gu, "");
    return /^,\d{3}$/u.test(commas) ? `${whole}, or ${before}${commas.replace(",", ".")}` : whole;
  }
  return /^,\d+$/u.test(commas) ? before + commas.replace(",", ".") : undefined;
}
