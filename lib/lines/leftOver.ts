import { FormulaError } from "./FormulaError.ts";
import { nearestName } from "./nearestName.ts";
import type { Reader } from "./Reader.ts";

/**
 * What is said of the text that is left when a formula seems to be over.
 * @param reader The formula, at the first character that was not read.
 * @returns What is wrong and what to do.
 * @example leftOver(reader).message // "two amounts stand side by side: write what is done with them, say salt * water"
 */
export function leftOver(reader: Reader): FormulaError {
  const at = reader.at;
  const next = reader.text.charAt(at);
  if (next === ")") return new FormulaError("this bracket was never opened", at);
  if (next === ",")
    return new FormulaError("a comma stands only between what a function is given; a number takes a point", at);
  if (!/[\p{L}\p{M}\p{Nd}_(°%"“.]/u.test(next)) return new FormulaError(`"${next}" has no meaning in a formula`, at);
  const whole = reader.wordsAt(reader.operandFrom);
  const near = nearestName(whole, reader.names.lines.values());
  if (near !== undefined && !/^\d/u.test(whole) && whole.length > at - reader.operandFrom)
    return new FormulaError(`no line is called "${whole}": did you mean "${near}"?`, reader.operandFrom);
  const rest = reader.wordsAt(at) || next;
  const before = reader.text.slice(reader.operandFrom, at).trim();
  if (/^[\d.½¼¾⅓⅔⅛⅜⅝⅞]+$/u.test(before) && !reader.nameAhead() && !/^[\d(.]/u.test(rest))
    return new FormulaError(
      `"${rest}" is neither a unit nor a line: a number takes its unit behind it, say 30 min`,
      at,
    );
  return new FormulaError(
    `nothing multiplies by standing side by side: write a sign between "${before}" and "${rest}"`,
    at,
  );
}
