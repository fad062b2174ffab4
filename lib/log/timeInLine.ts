import { type TimeMark, timeMark } from "./timeMark.ts";

export interface LineTime {
  readonly mark: TimeMark;
  /** The time as written. */
  readonly written: string;
  /** The line without its time. */
  readonly rest: string;
}

const usual = /^(\d{1,3}:\d\d(?::\d\d(?:[.,]\d+)?)?(?: ?[ap]\.?m\b\.?|[ap]\b)?)(?=[\s,;:>=-]|$)/i;
const clockTime = String.raw`\d{1,3}:\d\d(?::\d\d)?(?: ?[ap]\.?m\b\.?|[ap]\b)?`;
const later = new RegExp(
  String.raw`(?:@ ?|\bat )(${clockTime}|\d+(?:[.,]\d+)? ?(?:minutes?|mins?|hours?|hrs?|seconds?|secs?|h|s)\b|\d{1,2} ?[ap]\.?m\b\.?)|(${clockTime})`,
  "i",
);
const bareNumber = /^(-?\d{1,6}(?:[.,]\d+)?)(?=[\s,;:]|$)/;
/** A date whose comma was taken for the mark between two cells. */
const dateThenTime = /^(\p{L}{3,9}\.? \d{1,2}(?:st|nd|rd|th)?|\d{1,2}(?:st|nd|rd|th)? \p{L}{3,9}); (?=\d{1,2}:\d\d)/u;
const longestPrefix = 5;

/**
 * The time in a typed line, wherever it stands: `7:46 291`, `at 12 min 291F`, `291 @ 7:46`, `Nov 9 7:40 pm boils`.
 *
 * @param line plain text
 * @param bareTimes whether a bare number at the start of a line is a time in this log
 * @param year the year to take for a date without one
 * @param decimalComma whether "12,5" is twelve and a half
 * @returns the time and the rest of the line, or undefined
 * @example
 * timeInLine("291 @ 7:46", false)?.rest // "291"
 */
export function timeInLine(line: string, bareTimes: boolean, year = 2000, decimalComma = false): LineTime | undefined {
  const apart = /^(\d{1,2})(?: : ?| ?: )(\d\d)(?!\d)/.exec(line);
  if (apart) return timeInLine(`${apart[1]}:${apart[2]}${line.slice(apart[0].length)}`, bareTimes, year, decimalComma);
  const quick = usual.exec(line);
  if (quick?.[1] !== undefined) return made(quick[1], line.slice(quick[0].length), year, decimalComma);
  const prefixed = line.replace(/^(?:at |@ ?|t ?[=+] ?)/i, "").replace(dateThenTime, "$1, ");
  const words = prefixed.slice(0, 80).split(" ").slice(0, longestPrefix);
  for (let count = words.length; count > 0; count -= 1) {
    const written = words
      .slice(0, count)
      .join(" ")
      .replace(/[,;:]$/, "");
    if (!/\d|noon|midnight/i.test(written) || written.length < 2) continue;
    const mark = timeMark(written, year, decimalComma);
    const rest = words.slice(count).join(" ");
    if (mark === undefined || mark.shape === "number" || impliesLength(written, rest)) continue;
    return { mark, written, rest: tidy(prefixed.slice(words.slice(0, count).join(" ").length)) };
  }
  const named = prefixed !== line && /^t ?[=+]/i.test(line);
  const bare = bareTimes || named ? bareNumber.exec(prefixed) : null;
  if (bare?.[1] !== undefined) return made(bare[1], prefixed.slice(bare[0].length), year, decimalComma);
  const inside = later.exec(line);
  const written = inside?.[1] ?? inside?.[2];
  if (inside === null || written === undefined) return undefined;
  return made(
    written,
    `${line.slice(0, inside.index)} ${line.slice(inside.index + inside[0].length)}`,
    year,
    decimalComma,
  );
}

/** "5' 3" and other lengths that could be feet, inches or minutes are no times at the start of a line. */
function impliesLength(written: string, rest: string): boolean {
  return /['"]/.test(written) && !(/^\d{1,3}'$/.test(written) && /^\d{3}(?![\d"])/.test(rest));
}

function made(written: string, rest: string, year: number, decimalComma: boolean): LineTime | undefined {
  const mark = timeMark(written, year, decimalComma);
  return mark === undefined ? undefined : { mark, written, rest: tidy(rest) };
}

function tidy(rest: string): string {
  return rest
    .replace(/^\s*(?:[-—:,;=>|]+(?=\s|[^\d\s])|[:,;=>|/]+)\s*/, "")
    .replace(/\s+/g, " ")
    .trim();
}
