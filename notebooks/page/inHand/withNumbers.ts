import { type Lines, type Names, numbersIn, type Result } from "../../../lib/lines/index.ts";
import type { System } from "../writtenAs.ts";
import { amountWords, lineWords } from "./amountWords.ts";

/** A formula with numbers put in and what it comes to, or why it comes to nothing. */
export interface WithNumbers {
  /** "9.4 lb ÷ 9"; "" where the formula cannot be read. */
  readonly formula: string;
  readonly is:
    | { readonly state: "settled"; readonly words: string }
    /** `before`: what it came to last. */
    | { readonly state: "working"; readonly says: string; readonly before: string | undefined }
    | { readonly state: "waits"; readonly for: string }
    | { readonly state: "stopped"; readonly says: string; readonly at?: number }
    | { readonly state: "not given" };
}

/** What a line's formula is with the numbers of one case put in, and what it comes to there. */
export function withNumbers(open: Lines, name: string, inCase: string, names: Names, system: System): WithNumbers {
  const line = open.line(name);
  const result = open.result(name, inCase);
  const pieces =
    line.kind === "given"
      ? []
      : numbersIn(
          line.formula,
          names,
          (one) => lineWords(open, one, inCase, system)?.bare ?? wordFor(open, one, inCase),
        );
  return { formula: pieces.map(({ text }) => text).join(""), is: comesTo(result) };

  function comesTo(now: Result): WithNumbers["is"] {
    switch (now.state) {
      case "settled":
        return { state: "settled", words: amountWords(line, now, system)?.whole ?? "more than a number" };
      case "working": {
        const before =
          now.before === undefined
            ? undefined
            : amountWords(line, { state: "settled", value: now.before }, system)?.whole;
        return { state: "working", says: now.says ?? "", before };
      }
      case "stopped":
        return { state: "stopped", says: now.says, ...(now.at !== undefined && { at: now.at }) };
      case "waits":
        return { state: "waits", for: now.for };
      case "not given":
        return { state: "not given" };
    }
  }
}

/** A line without a number stands as a word; its name stays where it is a thing. */
function wordFor(open: Lines, line: string, inCase: string): string | undefined {
  return open.result(line, inCase).state === "not given" ? `(${line}: not given)` : undefined;
}
