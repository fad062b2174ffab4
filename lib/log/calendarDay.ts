export interface WrittenDate {
  /** iso: year first; named: the month in words; slash, dot: two numbers and a year, in an order to be decided. */
  readonly style: "iso" | "named" | "slash" | "dot";
  /** The numbers as they stood; for iso and named they are year, month, day. */
  readonly numbers: readonly [number, number, number];
  /** Characters of the text that the date took, from its start. */
  readonly length: number;
}

const months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const weekday = /^(?:mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)(?:day)?,?\.? /i;

/**
 * The date at the start of a text, if one stands there: `2026-11-09`, `11/9/2026`, `9.11.26`, `Nov 9, 2026`, `9 Nov`.
 *
 * @param text plain text
 * @param year the year to take where none is written
 * @returns the date's numbers and how long it was, or undefined
 * @example
 * readDate("2026-11-09T19:40", 2000) // { style: "iso", numbers: [2026, 11, 9], length: 10 }
 */
export function readDate(text: string, year: number): WrittenDate | undefined {
  const iso =
    /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?!\d)/.exec(text) ?? /^((?:19|20)\d\d)(\d\d)(\d\d)(?=T|$)/.exec(text);
  if (iso) return made("iso", [Number(iso[1]), Number(iso[2]), Number(iso[3])], iso[0].length);
  const slash = /^(\d{1,2})([/.-])(\d{1,2})\2(\d{4}|\d{2})(?![\d:])/.exec(text);
  if (slash) {
    const style = slash[2] === "." ? "dot" : "slash";
    return made(style, [Number(slash[1]), Number(slash[3]), fullYear(slash[4] ?? "")], slash[0].length);
  }
  const short = /^(\d{1,2})\/(\d{1,2})(?=,? +\d{1,2}:\d\d)/.exec(text);
  if (short) return made("slash", [Number(short[1]), Number(short[2]), year], short[0].length);
  const day = weekday.exec(text)?.[0].length ?? 0;
  const rest = text.slice(day);
  const monthFirst = /^([a-z]{3})[a-z]{0,6}\.? (\d{1,2})(?:st|nd|rd|th)?(?:,? (\d{4})|,)?(?![\d:])/i.exec(rest);
  const dayFirst = /^(\d{1,2})(?:st|nd|rd|th)?[ -]([a-z]{3})[a-z]{0,6}\.?(?:,?[ -](\d{4}|\d{2}(?!:)))?(?![\d:])/i.exec(
    rest,
  );
  const found = monthFirst ?? dayFirst;
  if (!found) return undefined;
  const [name, number] = monthFirst ? [found[1], found[2]] : [found[2], found[1]];
  const month = months.indexOf((name ?? "").toLowerCase()) + 1;
  if (month === 0) return undefined;
  const written = found[3];
  return made(
    "named",
    [written === undefined ? year : fullYear(written), month, Number(number)],
    day + found[0].length,
  );
}

/**
 * Days from 1970-01-01 to a day of the calendar, or undefined where there is no such day.
 *
 * @param year full year, 1900 to 2200
 * @param month 1 to 12
 * @param day 1 to 31
 * @returns whole days
 * @example
 * calendarDay(1970, 1, 2) // 1
 */
export function calendarDay(year: number, month: number, day: number): number | undefined {
  if (!(year >= 1900 && year <= 2200)) return undefined;
  const date = new Date(Date.UTC(year, month - 1, day));
  if (date.getUTCMonth() !== month - 1 || date.getUTCDate() !== day) return undefined;
  return date.getTime() / 86_400_000;
}

function made(style: WrittenDate["style"], numbers: [number, number, number], length: number): WrittenDate | undefined {
  const [first, second, third] = numbers;
  if (style === "iso" || style === "named") {
    return calendarDay(first, second, third) === undefined ? undefined : { style, numbers, length };
  }
  const possible = calendarDay(third, first, second) ?? calendarDay(third, second, first);
  return possible === undefined ? undefined : { style, numbers, length };
}

function fullYear(text: string): number {
  const number = Number(text);
  return text.length === 2 ? 2000 + number : number;
}
