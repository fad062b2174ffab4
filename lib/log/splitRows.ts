import Papa from "papaparse";
import type { Separator } from "./chooseSeparator.ts";
import type { SourceLines } from "./cleanText.ts";
import type { Problem } from "./types.ts";

export interface Row {
  /** Line in the source, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
  /** Where each cell began in its line, for columns lined up with blanks. */
  readonly starts?: readonly number[];
}

const longestQuote = 50;

/**
 * Lines cut into cells. Quoted cells follow RFC 4180, line breaks inside them too; a quote that is never closed is
 * taken as written, so that it cannot swallow the rows after it. Blank lines are left out.
 *
 * @param source lines with their numbers
 * @param separator what stands between the cells
 * @returns rows in order, and a problem for each quote that is never closed
 * @example
 * splitRows({ lines: ['0:00,"284, boils"'], numbers: [1], problems: [] }, ",").rows[0].cells // ["0:00", "284, boils"]
 */
export function splitRows(
  source: SourceLines,
  separator: Separator,
): { readonly rows: readonly Row[]; readonly problems: readonly Problem[] } {
  const rows: Row[] = [];
  const problems: Problem[] = [];
  const quoted = separator.length === 1 && separator !== "|" ? separator : undefined;
  const opening = quoted === undefined ? undefined : new RegExp(`(?:^|${quoted})[ ]*"`);
  for (let index = 0; index < source.lines.length; index += 1) {
    const text = source.lines[index] ?? "";
    const line = source.numbers[index] ?? index + 1;
    if (text.trim() === "" || (index === 0 && /^sep=.\s*$/i.test(text))) continue;
    if (/^\s*(?:#(?!\s*[,;|\t])|\/\/)/.test(text)) rows.push({ line, cells: [text] });
    else if (quoted !== undefined && opening?.test(text)) {
      const record = closeQuotes(source.lines, index, quoted);
      if (record === undefined) {
        problems.push(openQuote(line, text));
        rows.push({ line, cells: text.split(quoted).map((cell) => cell.replace(/^\s*"/, "")) });
      } else {
        rows.push({ line, cells: record.cells });
        index += record.extra;
      }
    } else if (quoted !== undefined) rows.push({ line, cells: text.split(quoted) });
    else if (separator === "|") {
      if (!/^[\s|:+=-]+$/.test(text)) rows.push({ line, cells: text.replace(/^\s*\||\|\s*$/g, "").split("|") });
    } else if (separator === "blanks") rows.push({ line, ...wideGaps(text) });
    else rows.push({ line, cells: [text] });
  }
  return { rows, problems };
}

function closeQuotes(lines: readonly string[], from: number, separator: string) {
  let record = "";
  for (let extra = 0; extra < longestQuote && from + extra < lines.length; extra += 1) {
    const next = lines[from + extra] ?? "";
    if (extra > 0 && /^\s*"?\d{1,4}[:/-]\d\d/.test(next)) return undefined;
    record = extra === 0 ? next : `${record}\n${next}`;
    if (record.split('"').length % 2 === 0) continue;
    const parsed = Papa.parse<string[]>(record.replace(/(^|[,;\t])[ ]+"/g, '$1"'), { delimiter: separator });
    const cells = parsed.data[0];
    return parsed.errors.length > 0 || parsed.data.length !== 1 || cells === undefined ? undefined : { cells, extra };
  }
  return undefined;
}

function openQuote(line: number, text: string): Problem {
  return {
    line,
    read: text.slice(0, 80),
    expected: 'a cell that begins with " to end with "',
    remedy: 'Put the closing " in, or take the quotation mark out. The row was read as if it were not there.',
  };
}

function wideGaps(text: string): { cells: string[]; starts: number[] } {
  const cells: string[] = [];
  const starts: number[] = [];
  for (const match of text.matchAll(/\S+(?: \S+)*/g)) {
    cells.push(match[0]);
    starts.push(match.index);
  }
  return { cells, starts };
}
