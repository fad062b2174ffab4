import { FormulaError } from "./FormulaError.ts";
import { foldName } from "./foldName.ts";
import { looksLike, strangeLetter } from "./lookAlike.ts";
import { nearestName } from "./nearestName.ts";
import type { Reader } from "./Reader.ts";
import { isInvisible, signAt, strangeSign } from "./strangeSign.ts";

/** Words that other ways of writing a choice begin with. */
const CHOICE = /^(?:if|then|else)(?![\p{L}\p{Nd}])/iu;

/**
 * What is said of words that name no line, with the name that was likely meant.
 * @param reader The formula, at the words.
 * @param words The words.
 * @returns What is wrong and what to do.
 * @example unknownName(new Reader("sallt", namesOf(["salt"])), "sallt").message // 'no line is called "sallt": did you mean "salt"?'
 */
export function unknownName(reader: Reader, words: string): FormulaError {
  const at = reader.at;
  const { lines, functions } = reader.names;
  if (CHOICE.test(words)) return new FormulaError('a choice is written "a when c, otherwise b"', at);
  const strange = strangeLetter(words);
  const like = strange && lines.get(foldName(looksLike(words)));
  if (like !== undefined)
    return new FormulaError(
      `"${words}" only looks like "${like}": its ${strange?.like} is a letter of another alphabet, write it again`,
      at,
    );
  const inside = words.search(/\p{Default_Ignorable_Code_Point}/u);
  const end = at + (inside < 0 ? words.length : inside);
  if (isInvisible(signAt(reader.text, end)))
    return new FormulaError(strangeSign(reader.text, end) ?? "an invisible character stands here", end);
  const hyphened = acrossBlanks(reader, words);
  if (hyphened !== undefined)
    return new FormulaError(`no line is called "${words}": did you mean "${hyphened}", without blanks?`, at);
  const [first = words] = words.split(/\s/u);
  const names = [...lines.values(), ...Array.from(functions.values(), (one) => one.name)];
  const near = nearestName(words, names) ?? nearestName(first, names);
  return new FormulaError(`no line is called "${words}"${near === undefined ? "" : `: did you mean "${near}"?`}`, at);
}

/** The line "boil-off" where "boil - off" is written. */
function acrossBlanks(reader: Reader, words: string): string | undefined {
  const before = /([\p{L}\p{M}\p{Nd}_.'’-]+(?: [\p{L}\p{M}\p{Nd}_.'’-]+){0,4})\s*[-−–]\s*$/u.exec(
    reader.text.slice(Math.max(0, reader.at - 120), reader.at),
  )?.[1];
  if (before === undefined) return undefined;
  const heads = before.split(" ").map((_, i, all) => all.slice(i).join(" "));
  const tails = words.split(" ").map((_, i, all) => all.slice(0, i + 1).join(" "));
  for (const head of heads)
    for (const tail of tails) {
      const name = reader.names.lines.get(foldName(`${head}-${tail}`));
      if (name !== undefined) return name;
    }
  return undefined;
}
