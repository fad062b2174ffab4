import { calendarDay } from "./calendarDay.ts";
import type { TimeMark } from "./timeMark.ts";
import type { TimeMeaning } from "./timeMeaning.ts";

const halfDay = 43_200;
const day = 86_400;
/** s: a step forward longer than this on a clock without am or pm is rather a step back. Judgement. */
const longestStep = 32_400;

export interface Placing {
  readonly pair: TimeMeaning;
  readonly number: TimeMeaning;
  readonly dayFirst: boolean;
}

/**
 * Seconds for each time mark on one running scale, with the turn of the clock at noon and midnight undone. The
 * scale is that of the marks: seconds since 1970 where dates are written, else of the day or of the timer.
 *
 * @param marks time marks in the order of the log; undefined where a row has none
 * @param placing what pairs and bare numbers mean, and the order of a date's numbers
 * @returns s for each mark; undefined where there is none
 * @example
 * placeTimes([timeMark("11:58 pm"), timeMark("12:05 am")], placing) // [86280, 86700]
 */
export function placeTimes(marks: readonly (TimeMark | undefined)[], placing: Placing): (number | undefined)[] {
  const style = clockStyle(marks, placing);
  let previous: number | undefined;
  let origin = 0;
  let dateOnly: number | undefined;
  return marks.map((mark, index) => {
    if (mark === undefined) return undefined;
    const written = secondsOf(mark, placing);
    const date = mark.date === undefined ? undefined : dayOf(mark, placing.dayFirst);
    if (mark.shape === "none") {
      dateOnly = date;
      return undefined;
    }
    let time: number;
    if (date !== undefined) time = date * day + written - (mark.zone ?? 0);
    else if (isTimer(mark, placing)) time = (style === "timer" ? 0 : origin) + written;
    else if (previous === undefined || style === "timer") {
      time = (previous === undefined ? firstOfDay(marks, index, written) : written) + (dateOnly ?? 0) * day;
    } else time = place(written, previous, mark.half !== undefined ? "half" : style);
    if (previous === undefined && !isTimer(mark, placing)) origin = time;
    previous = time;
    return time;
  });
}

function secondsOf(mark: TimeMark, placing: Placing): number {
  const { shape, a, b, c } = mark;
  if (shape === "length") return a;
  if (shape === "triple") return (mark.half === undefined ? a : (a % 12) + mark.half) * 3600 + b * 60 + c;
  if (shape === "pair") {
    if (mark.half !== undefined) return ((a % 12) + mark.half) * 3600 + b * 60;
    return placing.pair === "minutes and seconds" && mark.date === undefined ? a * 60 + b : a * 3600 + b * 60;
  }
  switch (placing.number) {
    case "seconds":
    case "seconds since 1970":
      return a;
    case "milliseconds":
      return a / 1000;
    case "hours":
      return a * 3600;
    case "days":
      return Math.round(a * day * 100) / 100;
    case "clock time without a colon":
      return Math.floor(a / 100) * 3600 + (a % 100) * 60;
    case "hours and minutes with a point":
      return Math.floor(a) * 3600 + Math.round((a % 1) * 100) * 60;
    default:
      return a * 60;
  }
}

/** True for marks that run from a timer's start rather than show the time of day. */
function isTimer(mark: TimeMark, placing: Placing): boolean {
  if (mark.date !== undefined || mark.half !== undefined) return false;
  if (mark.shape === "length") return true;
  if (mark.shape === "pair") return placing.pair === "minutes and seconds";
  return mark.shape === "number" && !placing.number.startsWith("clock") && !placing.number.endsWith("point");
}

/** How clock times without am or pm are written: of 12 hours, of 24, or none at all (hours of a timer beyond 24). */
function clockStyle(marks: readonly (TimeMark | undefined)[], placing: Placing): "12" | "24" | "timer" {
  let style: "12" | "24" | "timer" = "timer";
  for (const mark of marks) {
    if (mark === undefined || mark.shape === "none" || isTimer(mark, placing)) continue;
    if (style === "timer") style = "12";
    if (mark.half !== undefined) continue;
    const hour = Math.floor(secondsOf(mark, placing) / 3600);
    if (hour > 23 || hour < 0) return "timer";
    if (hour === 0 || hour > 12) style = "24";
  }
  return style;
}

/** The first clock time, moved so that it comes just before the first one that says am or pm. */
function firstOfDay(marks: readonly (TimeMark | undefined)[], index: number, written: number): number {
  if (marks[index]?.half !== undefined) return written;
  const halved = marks.find((mark) => mark?.half !== undefined);
  if (halved?.half === undefined) return written;
  const known = ((halved.a % 12) + halved.half) * 3600 + halved.b * 60 + halved.c;
  return known - ((((known - written) % halfDay) + halfDay) % halfDay);
}

function place(written: number, previous: number, style: "12" | "24" | "timer" | "half"): number {
  const next = (period: number) => written + Math.ceil((previous - written) / period) * period;
  if (style === "12") {
    const time = next(halfDay);
    return time - previous <= longestStep ? time : time - halfDay;
  }
  const time = next(day);
  if (time - previous <= longestStep) return time;
  const half = next(halfDay);
  if (style === "24" && half - previous <= longestStep) return half;
  return time - previous <= 20 * 3600 ? time : time - day;
}

function dayOf(mark: TimeMark, dayFirst: boolean): number | undefined {
  if (mark.date === undefined) return undefined;
  const [first, second, third] = mark.date.numbers;
  if (mark.date.style === "iso" || mark.date.style === "named") return calendarDay(first, second, third);
  const [a, b] = dayFirst ? [second, first] : [first, second];
  return calendarDay(third, a, b) ?? calendarDay(third, b, a);
}
