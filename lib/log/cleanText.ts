import { htmlToLines } from "./htmlToLines.ts";
import type { Problem } from "./types.ts";

export interface SourceLines {
  /** The text of each line, with its line in the source (from 1). */
  readonly lines: readonly string[];
  readonly numbers: readonly number[];
  readonly problems: readonly Problem[];
}

const longestCell = 20_000;

/**
 * The lines of a log's text, freed from what files and clipboards add: byte-order marks, zero bytes, the three
 * ways of ending a line, the tags of a table copied from a page. A file that is no text gives no lines and a problem.
 *
 * @param source the text as it came
 * @returns lines with their numbers in the source, and what was removed or refused
 * @example
 * cleanText("time,temp\r\n0:00,284").lines // ["time,temp", "0:00,284"]
 */
export function cleanText(source: string): SourceLines {
  const refused = notText(source);
  if (refused !== undefined) return { lines: [], numbers: [], problems: [refused] };
  const problems: Problem[] = [];
  let text = source.replace(/^(?:\ufeff|ÿþ|þÿ|ï»¿|\ufffd\ufffd(?=.\0))+/, "");
  if (text.includes("\0")) {
    const bare = text.replaceAll("\0", "");
    problems.push({
      line: 1,
      read: `${text.length - bare.length} zero bytes among ${text.length} characters`,
      expected: "plain text",
      remedy: "The zero bytes were left out and the rest was read. Save the file as UTF-8 text if the rows look wrong.",
    });
    text = bare;
  }
  text = text.replace(/\r\n?|[\u2028\u2029\u0085\v\f]/g, "\n");
  if (/<t[rdh][\s>]/i.test(text)) {
    const html = htmlToLines(text);
    return { ...html, problems };
  }
  const lines = text.split("\n");
  if (lines.at(-1) === "") lines.pop();
  lines.forEach((line, index) => {
    if (line.length <= longestCell) return;
    problems.push({
      line: index + 1,
      read: `${line.slice(0, 40)}… (${line.length} characters)`,
      expected: `a row of at most ${longestCell} characters`,
      remedy: `Only its first ${longestCell} characters were read. Look whether a line break is missing.`,
    });
    lines[index] = line.slice(0, longestCell);
  });
  return { lines, numbers: lines.map((_, index) => index + 1), problems };
}

function notText(source: string): Problem | undefined {
  const sample = source.slice(0, 4096);
  const kinds: readonly (readonly [RegExp, string])[] = [
    [/^PK[\u0003\u0005]/, "a packed file (a spreadsheet or a word processor's file)"],
    [/^\{\\rtf/, "a word processor's file"],
    [/^%PDF-/, "a PDF"],
    [/^(?:\x89|\ufffd)PNG|^(?:ÿØÿ|\ufffd{3})|^GIF8[79]a/, "a picture"],
    [/^ÐÏ\x11à|^\ufffd{2}\x11\ufffd/, "an old spreadsheet or a word processor's file"],
  ];
  const known = kinds.find(([start]) => start.test(sample));
  const strange = sample.replace(/[^\p{Cc}\ufffd]|[\0\s]/gu, "").length;
  if (known === undefined && (sample.length < 16 || strange <= sample.replaceAll("\0", "").length * 0.2))
    return undefined;
  return {
    line: 1,
    read: known === undefined ? "a file that is not text" : known[1],
    expected: "rows of text: a time and a temperature in each",
    remedy: "Open it in the program that made it, then copy the rows and paste them here, or save them as CSV.",
  };
}
