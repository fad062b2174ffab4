import { calendarDay, readDate, type WrittenDate } from "./calendarDay.ts";
import { plainText } from "./plainText.ts";

/** A time as its shape tells it, before the whole log has decided what the shape means. */
export interface TimeMark {
  /** pair 7:40, triple 1:07:40, number 12.5, length "12 min" (already in s), none: a date alone. */
  readonly shape: "pair" | "triple" | "number" | "length" | "none";
  /** pair and triple: the parts; number: the number; length: s. */
  readonly a: number;
  readonly b: number;
  readonly c: number;
  /** Hours to add for am or pm; undefined where neither stands. */
  readonly half?: 0 | 12;
  readonly date?: WrittenDate;
  /** s that the written zone is ahead of universal time. */
  readonly zone?: number;
  /** As written in digits, where leading zeros or decimals tell something. */
  readonly digits?: string;
}

const simplePair = /^(\d{1,3}):(\d\d)$/;
const simpleTriple = /^(\d{1,2}):(\d\d):(\d\d(?:\.\d{1,9})?)$/;
const simpleIso = /^(\d{4})-(\d\d)-(\d\d)[T ](\d\d):(\d\d)(?::(\d\d(?:\.\d{1,9})?))?(Z)?$/;
const simpleNumber = /^\d{1,13}(?:\.\d{1,12})?$/;
const clock =
  /^(\d{1,5})\s?(?::|h\s?)(\d\d)(?:(?::|m\s?)(\d\d(?:[.,]\d{1,9})?)s?)?\s?(?:([ap])\.?\s?m?\.?(?![a-z]))?\s?(z|utc|gmt|[+-]\d\d:?\d\d|[+-]\d\d)?$/i;
const dottedClock = /^(\d{1,2})(?:\.?([0-5]\d))?\s?([ap])\.?\s?m?\.?$/i;
const unitLength =
  /^(?:(\d+(?:[.,]\d+)?)\s?(?:h|hrs?|hours?)\.?\s?)?(?:(\d+(?:[.,]\d+)?)\s?(?:m|mins?|minutes?|')\.?\s?)?(?:(\d+(?:[.,]\d+)?)\s?(?:s|secs?|seconds?|"|'')\.?)?$/i;

/**
 * What a text says as a time, or undefined if it is none: `7:40`, `1:07:40`, `7:40 pm`, `19h40`, `12.5`, `12 min`,
 * `2026-11-09T19:40:00`, `11/9/2026 7:40 pm`. Whether 7:40 is a clock's or a timer's time is for the whole log to say.
 *
 * @param text a cell, or the start of a typed line
 * @param year the year to take for a date without one
 * @param decimalComma whether "12,5" is twelve and a half
 * @returns the parts of the time, s where a unit was written
 * @example
 * timeMark("7:40 pm") // { shape: "pair", a: 7, b: 40, c: 0, half: 12 }
 */
export function timeMark(text: string, year = 2000, decimalComma = false): TimeMark | undefined {
  const quick = simplePair.exec(text);
  if (quick) return sound({ shape: "pair", a: Number(quick[1]), b: Number(quick[2]), c: 0 });
  if (simpleNumber.test(text)) return { shape: "number", a: Number(text), b: 0, c: 0, digits: text };
  const triple = simpleTriple.exec(text);
  if (triple) return sound({ shape: "triple", a: Number(triple[1]), b: Number(triple[2]), c: Number(triple[3]) });
  const iso = simpleIso.exec(text);
  if (iso) {
    const [, y, month, day, a, b, c, zone] = iso;
    const numbers: [number, number, number] = [Number(y), Number(month), Number(day)];
    const parts = { a: Number(a), b: Number(b), c: Number(c ?? 0) };
    if (calendarDay(...numbers) !== undefined) {
      return { shape: "triple", ...parts, date: { style: "iso", numbers, length: 10 }, ...(zone ? { zone: 0 } : {}) };
    }
  }
  if (text.length > 64) return undefined;
  const bare = plainText(text).replace(
    /^(?:~|about |abt |approx\.? |ca\.? |t ?[=+] ?|at |@ ?|\+(?=\d+(?::|\s?[a-z]))|(?:mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)(?:day)?,?\.? )/i,
    "",
  );
  const plain = bare.includes(":") ? bare.replace(/\s?(?:[ECMP][SD]T|h|hrs?|o'clock)$/, "") : bare;
  if (plain === "") return undefined;
  const date = readDate(plain, year);
  if (date === undefined) return clockMark(plain, decimalComma);
  const rest = plain
    .slice(date.length)
    .replace(/^(?:\s?T(?=\d)|\s?[,@-]\s?|\s+at\s+|\s+)/i, "")
    .replace(/^([01]\d|2[0-3])([0-5]\d)([0-5]\d)?$/, (_, hour, minute, second = "00") => `${hour}:${minute}:${second}`)
    .trim();
  if (rest === "") return { shape: "none", a: 0, b: 0, c: 0, date };
  const mark = clockMark(rest, decimalComma);
  if (mark === undefined || mark.shape === "number" || mark.shape === "length") return undefined;
  return { ...mark, date };
}

function clockMark(text: string, decimalComma: boolean): TimeMark | undefined {
  if (text.startsWith("-")) {
    const after = clockMark(text.slice(1).trim(), decimalComma);
    if (after === undefined || after.half !== undefined || text.startsWith("--")) return undefined;
    return { shape: after.shape, a: -after.a, b: -after.b, c: -after.c };
  }
  const match = clock.exec(text);
  if (match) {
    const [, a = "", b = "", c, half, zone] = match;
    if (/\dh/i.test(text) && half === undefined && zone === undefined) {
      return { shape: "length", a: Number(a) * 3600 + Number(b) * 60 + Number(c ?? 0), b: 0, c: 0 };
    }
    const parts = { a: Number(a), b: Number(b), c: c === undefined ? 0 : Number(c.replace(",", ".")) };
    const shape = c === undefined ? "pair" : "triple";
    return sound({ shape, ...parts, ...halfOf(half, parts.a), ...zoneOf(zone) });
  }
  const dotted = dottedClock.exec(text);
  if (dotted)
    return {
      shape: "pair",
      a: Number(dotted[1]),
      b: Number(dotted[2] ?? 0),
      c: 0,
      ...halfOf(dotted[3], Number(dotted[1])),
    };
  const military = /^([01]?\d|2[0-3])([0-5]\d)\s?h(?:rs?|ours)?$/i.exec(text);
  if (military) return { shape: "pair", a: Number(military[1]), b: Number(military[2]), c: 0 };
  if (/^noon$/i.test(text)) return { shape: "pair", a: 12, b: 0, c: 0, half: 12 };
  if (/^midnight$/i.test(text)) return { shape: "pair", a: 12, b: 0, c: 0, half: 0 };
  const length = unitLength.exec(text);
  if (length && length[0] !== "" && (length[1] ?? length[2] ?? length[3]) !== undefined) {
    const part = (written: string | undefined) => (written === undefined ? 0 : Number(written.replace(",", ".")));
    return { shape: "length", a: part(length[1]) * 3600 + part(length[2]) * 60 + part(length[3]), b: 0, c: 0 };
  }
  const thousands = !decimalComma && /^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(text);
  const number = decimalComma ? text.replace(",", ".") : thousands ? text.replaceAll(",", "") : text;
  return simpleNumber.test(number) ? { shape: "number", a: Number(number), b: 0, c: 0, digits: number } : undefined;
}

/** No clock and no timer shows 7:60. */
function sound(mark: TimeMark): TimeMark | undefined {
  return mark.b < 60 && mark.c < 60 ? mark : undefined;
}

function halfOf(letter: string | undefined, hour: number): { half?: 0 | 12 } {
  if (letter === undefined || hour > 12 || hour === 0) return {};
  return { half: letter.toLowerCase() === "p" ? 12 : 0 };
}

function zoneOf(zone: string | undefined): { zone?: number } {
  if (zone === undefined) return {};
  const match = /^([+-])(\d\d):?(\d\d)?$/.exec(zone);
  if (!match) return { zone: 0 };
  const size = Number(match[2]) * 3600 + Number(match[3] ?? 0) * 60;
  return { zone: match[1] === "-" ? -size : size };
}
