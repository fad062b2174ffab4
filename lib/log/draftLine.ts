import type { Draft } from "./draft.ts";
import type { Finding } from "./finding.ts";
import { plainText } from "./plainText.ts";
import { readStatement } from "./readStatement.ts";
import { strikeMarks } from "./strikeMarks.ts";
import { timeInLine } from "./timeInLine.ts";

export interface LineContext {
  readonly bareTimes: boolean;
  readonly year: number;
  readonly decimalComma: boolean;
}

/**
 * A typed line as a draft: its time, wherever it stands, and what it says.
 *
 * @param line the line as written
 * @param number its line in the source
 * @param context how this log writes times and numbers
 * @returns the draft of its row
 * @example
 * draftLine("7:40 pm 284 boils", 1, context).findings.length // 2
 */
export function draftLine(line: string, number: number, context: LineContext): Draft {
  const whole = plainText(line);
  const crossed = /^(?!~~)(.*?)~~([^~]+)~~(?=.*\S)(.*)$/.exec(whole);
  if (crossed) {
    const [, before = "", over = "", behind = ""] = crossed;
    return withCrossed(draftLine(`${before} ${behind}`, number, context), over, context);
  }
  const { text, struck } = strikeMarks(withoutListMarks(whole));
  const marked = struck === undefined ? {} : { struck };
  if (text === "") return { line: number, findings: [], aside: true };
  const comment = /^(?:#|\/\/)\s*/.exec(text);
  if (comment)
    return {
      line: number,
      findings: [{ kind: "remark", text: text.slice(comment[0].length) }],
      aside: true,
      ...marked,
    };
  const time = timeInLine(text, context.bareTimes, context.year, context.decimalComma);
  const statement = { of: "line", hasReading: false, hasPour: false, decimalComma: context.decimalComma } as const;
  if (time === undefined) return { line: number, findings: readStatement(text, statement), words: text, ...marked };
  const findings = readStatement(time.rest, statement);
  if (time.mark.shape === "none") {
    return { line: number, mark: time.mark, findings: [{ kind: "remark", text }], aside: true, ...marked };
  }
  return { line: number, mark: time.mark, clock: time.written, findings, ...marked };
}

/** A row with one of its amounts written over: both are kept, the crossed-out one struck. */
function withCrossed(draft: Draft, over: string, { decimalComma }: LineContext): Draft {
  const said = readStatement(over, { of: "line", hasReading: false, hasPour: false, decimalComma });
  const struck = said.map(({ trouble: _, ...finding }): Finding => ({ ...finding, struck: true }));
  return { ...draft, findings: [...struck, ...draft.findings] };
}

/** Without the dash, dot or number that begins an item of a list, and without brackets round the time. */
function withoutListMarks(text: string): string {
  return text.replace(/^(?:[-*•·]+ +|\(?\d{1,3}[.)] +)(?=\D*\d)/, "").replace(/^[[(](\d[^\])]{0,24})[\])]/, "$1");
}

/**
 * Whether the lines of a scrap begin with times that are bare numbers, as in `12 291`.
 *
 * @param lines plain lines; the first 200 decide
 * @returns true if most lines begin so
 * @example
 * timesAreBare(["0 276", "5 280"]) // true
 */
export function timesAreBare(lines: readonly string[]): boolean {
  const sample = lines.slice(0, 200);
  const bare = sample.filter(
    (line) =>
      /^\s*-?\d{1,5}(?:[.,]\d+)?[\s,;:]+(?:\S*\d|\p{L}{2,})/u.test(line) &&
      timeInLine(plainText(line), false) === undefined,
  );
  const numbers = bare.map((line) => Number.parseFloat(line.trim().replace(",", ".")));
  const rising = numbers.filter((number, index) => index === 0 || number >= (numbers[index - 1] ?? number));
  const followed = bare.filter((line) => /^\s*\S+[\s,;:]+~?\d/.test(line));
  return (
    bare.length > 1 &&
    bare.length >= sample.length * 0.5 &&
    rising.length >= bare.length * 0.8 &&
    followed.length >= bare.length * 0.4
  );
}
