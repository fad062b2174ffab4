import { FormulaError } from "./FormulaError.ts";
import { isUnit } from "./isUnit.ts";
import { longestName } from "./longestName.ts";
import type { Names } from "./names.ts";
import { scanUnit } from "./scanUnit.ts";

export const LONGEST_FORMULA = 2000;
export const DEEPEST = 100;

/** The words of formulas themselves. No line can be called so. */
export const WORDS: ReadonlySet<string> = new Set(["when", "otherwise", "of", "and", "or", "not", "is", "given"]);

const LETTER = /[\p{L}\p{M}\p{Nd}_]/u;

/** A formula being read: its text, the known names, and the character that is next. */
export class Reader {
  readonly text: string;
  readonly names: Names;
  /** The next character; blanks before it are skipped already. */
  at = 0;
  /** Where the operand that was read last began: what is said of a leftover starts there. */
  operandFrom = 0;
  /** How many function brackets are open around here. */
  calls = 0;
  #depth = 0;

  constructor(text: string, names: Names) {
    this.text = text;
    this.names = names;
    this.moveTo(0);
  }

  atEnd(): boolean {
    return this.at >= this.text.length;
  }

  /** Goes to a character, and on over blanks. */
  moveTo(at: number): void {
    this.at = at;
    while (/\s/u.test(this.text.charAt(this.at))) this.at++;
  }

  /** Takes one of some signs if it stands next. */
  sign(signs: readonly string[]): string | undefined {
    const found = signs.find((sign) => this.text.startsWith(sign, this.at));
    if (found !== undefined) this.moveTo(this.at + found.length);
    return found;
  }

  /** Takes a whole word if it stands next, whatever its capitals. */
  word(word: string): boolean {
    const to = this.at + word.length;
    if (this.text.slice(this.at, to).toLowerCase() !== word || LETTER.test(this.text.charAt(to))) return false;
    this.moveTo(to);
    return true;
  }

  /** Reads something inside brackets or behind a sign, within the limit of depth. */
  deeper<T>(read: () => T): T {
    if (++this.#depth > DEEPEST)
      throw new FormulaError("this formula is too deep: give its inner part a line of its own", this.at);
    const result = read();
    this.#depth--;
    return result;
  }

  /** The longest name of a line that stands next: as it is kept, and the character after it. */
  line(from = this.at): { readonly name: string; readonly to: number } | undefined {
    const found = longestName(
      this.text,
      from,
      (folded) => folded !== this.names.except && this.names.lines.has(folded),
    );
    const name = found && this.names.lines.get(found.folded);
    return found && name !== undefined ? { name, to: found.to } : undefined;
  }

  /** The longest name of a function that stands at a character with its bracket behind it. */
  call(from = this.at) {
    const found = longestName(this.text, from, (folded) => this.names.functions.has(folded));
    const func = found && this.names.functions.get(found.folded);
    if (!found || !func) return undefined;
    const bracket = /^\s*\(/u.exec(this.text.slice(found.to, found.to + 40))?.[0];
    return bracket === undefined ? undefined : { func, nameTo: found.to, to: found.to + bracket.length };
  }

  nameAhead(): boolean {
    return this.line() !== undefined || this.call() !== undefined;
  }

  /** The unit that stands behind a number. */
  unit(from: number): { readonly unit: string; readonly to: number } | undefined {
    return scanUnit(this.text, from, {
      isUnit,
      isCall: (at) => this.call(at) !== undefined,
      lineTo: (at) => this.line(at)?.to,
    });
  }

  /** The run of words that stands at a character, as far as a name could go: it is what is called unknown. */
  wordsAt(from: number): string {
    const words = /^[\p{L}\p{M}\p{Nd}_.'’°%]+(?:[ \t-]{1,3}[\p{L}\p{M}\p{Nd}_.'’°%]+)*/u.exec(
      this.text.slice(from, from + 120),
    );
    return words?.[0] ?? "";
  }
}
