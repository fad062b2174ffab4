import { FormulaError } from "./FormulaError.ts";
import { LONGEST_NAME } from "./longestName.ts";
import type { Names } from "./names.ts";
import { partAt } from "./parseOperand.ts";
import { LONGEST_FORMULA, Reader } from "./Reader.ts";
import { scanNumber } from "./scanNumber.ts";

/** Where in a choice a place is: before its `when`, behind it, or behind `otherwise`. */
export type Stage = "amount" | "condition" | "otherwise";

/** What a formula that is still being written has come to at a character. */
export interface WrittenAt {
  /** Characters at which a name could have begun that is still being typed, from left to right. */
  readonly starts: readonly number[];
  /** Where what stands last began, if it is an operand that is read to its end, or text behind one. */
  readonly after?: number;
  /** The unit that is being typed: where it begins, and whether a sign inside it stands before the caret. */
  readonly unit?: { readonly from: number; readonly joined: boolean };
  /** The name of the part whose thing is being typed ("boil-off of …"), and where it begins. */
  readonly part?: { readonly name: string; readonly from: number };
  readonly stage: Stage;
  /** A comma is the last thing that was read, with a choice open. */
  readonly branch: boolean;
  /** The last thing that was read is the word "is", or "is not". */
  readonly is?: "is" | "is not";
  /** The last thing that was read joins conditions, so that "not" may follow. */
  readonly condition: boolean;
}

interface Frame {
  stage: Stage;
  readonly call: boolean;
}

const WORD = /[\p{L}\p{M}\p{Nd}_.'’%$]+/uy;
const SIGNS = [..."*×·⋅/÷∕+-−–^"];
/** A name has few hyphens: the limit keeps the work in bounds for any text. */
const MOST_STARTS = 6;
const MINUS = ["-", "−", "–"];
const COMPARISONS = ["<=", "≤", ">=", "≥", "<", ">", "="];

/**
 * Reads a formula up to a character as far as it can be understood, without asking that it be whole or right.
 * @param text The formula.
 * @param caret The character, from 0.
 * @param names Lines and functions that it may name.
 * @returns What is being written there; undefined inside quotes and beyond the longest formula.
 * @example writtenAt("2 * ga", 6, namesOf(["gas"])).starts // [4]
 */
export function writtenAt(text: string, caret: number, names: Names): WrittenAt | undefined {
  if (caret > LONGEST_FORMULA || caret < 0) return undefined;
  try {
    return new Scan(text.slice(0, caret), names).run();
  } catch (error) {
    if (error instanceof FormulaError) return undefined;
    throw error;
  }
}

class Scan {
  readonly #reader: Reader;
  readonly #text: string;
  readonly #frames: Frame[] = [{ stage: "amount", call: false }];
  #starts: number[] = [];
  /** Where an operand was last expected, and the first character behind one. */
  #operand = true;
  #after: number | undefined;
  #unit: { from: number; joined: boolean } | undefined;
  #part: { name: string; from: number } | undefined;
  #is: "is" | "is not" | undefined;
  #branch = false;
  #condition = false;

  constructor(text: string, names: Names) {
    this.#text = text;
    this.#reader = new Reader(text, names);
  }

  run(): WrittenAt | undefined {
    this.#begin(this.#reader.at);
    while (!this.#reader.atEnd()) {
      const ok = this.#operand ? this.#readOperand() : this.#readBehind();
      if (!ok) return undefined;
    }
    const from = this.#text.length - 2 * LONGEST_NAME;
    return {
      starts: this.#starts.filter((start) => start >= from),
      ...(this.#after !== undefined && { after: this.#after }),
      ...(this.#unit && { unit: this.#unit }),
      ...(this.#part && { part: this.#part }),
      stage: this.#frame.stage,
      branch: this.#branch,
      ...(this.#is && { is: this.#is }),
      condition: this.#condition,
    };
  }

  get #frame(): Frame {
    return this.#frames.at(-1) ?? { stage: "amount", call: false };
  }

  /** An operand is expected at a character. Behind a hyphen without blanks, a name may have begun before it. */
  #begin(at: number, goesOn = false): void {
    this.#starts = goesOn ? [...this.#starts.slice(1 - MOST_STARTS), at] : [at];
    this.#operand = true;
    this.#after = undefined;
    this.#is = undefined;
    this.#branch = false;
    this.#condition = false;
  }

  #readOperand(): boolean {
    const reader = this.#reader;
    const from = reader.at;
    if (reader.sign(["("])) {
      this.#frames.push({ stage: "amount", call: false });
      this.#fresh();
      return true;
    }
    if (reader.sign(MINUS)) {
      this.#begin(reader.at);
      return true;
    }
    if (/["“]/u.test(this.#text.charAt(from))) return this.#quoted(from);
    if (this.#number(from)) return true;
    const [line, call, part] = [reader.line(), reader.call(), partAt(reader)];
    if (part && part.partTo >= Math.max(line?.to ?? 0, call?.nameTo ?? 0)) {
      this.#part = this.#part ?? { name: part.name, from };
      reader.moveTo(part.to);
      this.#begin(reader.at, true);
      return true;
    }
    if (call && call.nameTo >= (line?.to ?? 0)) {
      reader.moveTo(call.to);
      this.#frames.push({ stage: "amount", call: true });
      this.#fresh();
      return true;
    }
    if (line) return this.#behind(line.to);
    if (this.#word("not")) {
      // "not written down" may be a name, or a part's: what began here may go on.
      this.#begin(reader.at, true);
      this.#condition = true;
      return true;
    }
    if (this.#branch && this.#word("otherwise")) {
      this.#frame.stage = "otherwise";
      this.#fresh();
      return true;
    }
    return this.#behind(this.#wordEnd(from));
  }

  #readBehind(): boolean {
    const reader = this.#reader;
    const at = reader.at;
    this.#is = undefined;
    const sign = reader.sign(SIGNS);
    if (sign !== undefined) {
      const unit = /[*/·×]/u.test(sign) ? this.#unit : undefined;
      const tight = MINUS.includes(sign) && !/\s/u.test(this.#text.slice(at - 1, at + 2));
      if (!tight) this.#part = undefined;
      this.#begin(reader.at, tight);
      this.#unit = unit && { from: unit.from, joined: true };
      return true;
    }
    if (reader.sign(COMPARISONS)) this.#fresh();
    else if (reader.sign([")"])) {
      if (this.#frames.length > 1) this.#frames.pop();
      this.#behind(reader.at);
    } else if (reader.sign([","])) {
      const open = this.#frame.stage === "condition";
      this.#frame.stage = "amount";
      this.#fresh();
      this.#branch = open;
    } else if (this.#word("when")) this.#joined("condition");
    else if (this.#word("otherwise")) this.#joined("otherwise");
    else if (this.#word("and") || this.#word("or")) {
      this.#fresh();
      this.#condition = true;
    } else if (this.#word("is")) {
      const not = this.#word("not");
      if (this.#word("given")) return this.#behind(reader.at);
      this.#fresh();
      this.#is = not ? "is not" : "is";
    } else reader.moveTo(this.#wordEnd(at));
    return true;
  }

  /** Takes a word of formulas, unless it stands at the end: it may then be the beginning of another. */
  #word(word: string): boolean {
    return this.#reader.at + word.length < this.#text.length && this.#reader.word(word);
  }

  #joined(stage: Stage): void {
    this.#frame.stage = stage;
    this.#fresh();
    this.#condition = stage === "condition";
  }

  #fresh(): void {
    this.#unit = undefined;
    this.#part = undefined;
    this.#begin(this.#reader.at);
  }

  #behind(to: number): boolean {
    this.#operand = false;
    this.#after = to;
    this.#reader.moveTo(to);
    return true;
  }

  #quoted(from: number): boolean {
    const close = this.#text.charAt(from) === '"' ? '"' : "”";
    const end = this.#text.indexOf(close, from + 1);
    if (end < 0) return false;
    this.#starts = [];
    return this.#behind(end + 1);
  }

  #number(from: number): boolean {
    const reader = this.#reader;
    const money = this.#text.charAt(from) === "$";
    const number = scanNumber(this.#text, money ? from + 1 : from, true);
    if (!number) return false;
    this.#starts = [];
    const unit = money ? undefined : reader.unit(number.to);
    this.#unit = money ? undefined : { from: number.to, joined: false };
    return this.#behind(unit?.to ?? number.to);
  }

  /** End of the word that stands at a character, or of the one sign that means nothing. */
  #wordEnd(at: number): number {
    WORD.lastIndex = at;
    return at + (WORD.exec(this.#text)?.[0].length ?? 1);
  }
}
