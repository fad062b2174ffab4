import { unitSpellings } from "../measure/unitNames.ts";
import { FormulaError } from "./FormulaError.ts";
import { nearestName } from "./nearestName.ts";
import type { Reader } from "./Reader.ts";
import { isInvisible, signAt, strangeSign } from "./strangeSign.ts";

/** What other ways of writing put between two amounts, and what is written here. */
const BETWEEN: readonly (readonly [RegExp, string])[] = [
  [/^x(?![\p{L}\p{Nd}])/iu, "to multiply, write * or ×"],
  [/^per(?![\p{L}\p{Nd}])/iu, "to divide, write /"],
  [/^times(?![\p{L}\p{Nd}])/iu, "to multiply, write * or ×"],
  [/^(?:if|then|else)(?![\p{L}\p{Nd}])/iu, 'a choice is written "a when c, otherwise b"'],
];
const NUMBER = /^[\d.½¼¾⅓⅔⅛⅜⅝⅞]+$/u;

/**
 * What is said of the text that is left when a formula seems to be over.
 * @param reader The formula, at the first character that was not read.
 * @returns What is wrong and what to do.
 * @example leftOver(reader).message // "two amounts stand side by side: write what is done with them, say salt * water"
 */
export function leftOver(reader: Reader): FormulaError {
  const { at, text } = reader;
  const next = text.charAt(at);
  if (next === ")") return new FormulaError("this bracket was never opened", at);
  if (next === ",")
    return new FormulaError("a comma stands only between what a function is given; a number takes a point", at);
  if (!/[\p{L}\p{M}\p{Nd}_(°%"“.]/u.test(next) || isInvisible(next))
    return new FormulaError(strangeSign(text, at) ?? `"${signAt(text, at)}" has no meaning in a formula`, at);
  const whole = reader.wordsAt(reader.operandFrom);
  const near = nearestName(whole, reader.names.lines.values());
  if (near !== undefined && !/^\d/u.test(whole) && whole.length > at - reader.operandFrom)
    return new FormulaError(`no line is called "${whole}": did you mean "${near}"?`, reader.operandFrom);
  const rest = reader.wordsAt(at) || next;
  const before = text.slice(reader.operandFrom, at).trim();
  const instead = reader.nameAhead() ? undefined : BETWEEN.find(([word]) => word.test(rest))?.[1];
  if (instead !== undefined) return new FormulaError(instead, at);
  if (/^\d+$/u.test(before) && /^\d+\s*\/\s*\d/u.test(text.slice(at, at + 40)))
    return new FormulaError(
      `a number with a fraction is written with a point, or (${before} + ${fraction(text, at)})`,
      at,
    );
  if (NUMBER.test(before) && !reader.nameAhead() && !/^[\d(.]/u.test(rest)) return noUnit(rest, at);
  return new FormulaError(
    `nothing multiplies by standing side by side: write a sign between "${before}" and "${rest}"`,
    at,
  );
}

function fraction(text: string, at: number): string {
  return /^\d+\s*\/\s*\d+/u.exec(text.slice(at, at + 40))?.[0] ?? "";
}

function noUnit(rest: string, at: number): FormulaError {
  const [first = rest] = rest.split(/\s/u);
  const near = nearestName(first, unitSpellings) ?? nearestName(rest, unitSpellings);
  const meant = near === undefined ? "a number takes its unit behind it, say 30 min" : `did you mean "${near}"?`;
  return new FormulaError(`"${rest}" is neither a unit nor a line: ${meant}`, at);
}
