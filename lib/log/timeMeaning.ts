import type { TimeMark } from "./timeMark.ts";

/** What the times of a log may mean: pairs first, then bare numbers. */
export type TimeMeaning =
  | "minutes and seconds"
  | "hours and minutes"
  | "minutes"
  | "seconds"
  | "hours"
  | "clock time without a colon"
  | "hours and minutes with a point"
  | "milliseconds"
  | "seconds since 1970"
  | "days";

interface Candidate {
  readonly meaning: TimeMeaning;
  readonly shape: "pair" | "number";
  /** Logarithm of how common this way of writing is. */
  readonly prior: (first: TimeMark | undefined) => number;
  readonly allows: (marks: readonly TimeMark[]) => boolean;
}

const every = (test: (mark: TimeMark) => boolean) => (marks: readonly TimeMark[]) => marks.every(test);

/** A timer starts near nothing; a first time of 7:40 or 1940 rather is a clock's. */
function nearNothing(first: TimeMark | undefined, most: number, prior: number): number {
  return first === undefined || Math.abs(first.a) <= most ? prior : prior - 2.8;
}

/** Ways of writing times, with what rules each one out. The priors are judgements. */
export const timeMeanings: readonly Candidate[] = [
  {
    meaning: "minutes and seconds",
    shape: "pair",
    prior: (first) => nearNothing(first, 2, 1.4),
    allows: every(({ half, date, b }) => half === undefined && date === undefined && Math.abs(b) < 60),
  },
  { meaning: "hours and minutes", shape: "pair", prior: () => 0, allows: every(({ a, b }) => a <= 47 && b < 60) },
  {
    meaning: "minutes",
    shape: "number",
    prior: (first) => nearNothing(first, /^\d{1,2}\.[0-5]\d$/.test(first?.digits ?? "") ? 3 : 60, 1.2),
    allows: every(({ a }) => Math.abs(a) < 1e5),
  },
  {
    meaning: "seconds",
    shape: "number",
    prior: (first) => nearNothing(first, 600, 0),
    allows: every(({ a }) => Math.abs(a) < 1e7),
  },
  {
    meaning: "hours",
    shape: "number",
    prior: () => -1,
    allows: (marks) => marks.some(({ a }) => a % 1 !== 0) && marks.every(({ a }) => Math.abs(a) < 100),
  },
  {
    meaning: "clock time without a colon",
    shape: "number",
    prior: () => 0,
    allows: every(({ a, digits = "" }) => /^\d{3,4}$/.test(digits) && a < 2400 && a % 100 < 60),
  },
  {
    meaning: "hours and minutes with a point",
    shape: "number",
    prior: (first) => (first !== undefined && first.a >= 1 ? 0 : -2),
    allows: every(({ a, digits = "" }) => /^\d{1,2}\.[0-5]\d$/.test(digits) && a < 24),
  },
  {
    meaning: "milliseconds",
    shape: "number",
    prior: () => -2,
    // No logger of a bath writes more than twenty rows a second.
    allows: (marks) =>
      marks.every(({ a }) => a % 1 === 0) && (marks.at(-1)?.a ?? 0) - (marks[0]?.a ?? 0) >= 50 * (marks.length - 1),
  },
  { meaning: "seconds since 1970", shape: "number", prior: () => 0, allows: every(({ a }) => a > 1e9 && a < 5e9) },
  {
    meaning: "days",
    shape: "number",
    prior: () => 0,
    allows: (marks) =>
      marks.every(({ a }) => (a > 30000 && a < 80000) || (a >= 0 && a < 3)) && marks.some(({ a }) => a % 1 !== 0),
  },
];

/**
 * The meaning that a heading's unit gives to times of one shape, if it settles it.
 *
 * @param unit the unit of the heading ("min", "h:mm", "clock")
 * @param shape pair for 7:40, number for 12.5
 * @returns the meaning, or undefined where the unit says nothing of that shape
 * @example
 * meaningOfUnit("min", "number") // "minutes"
 */
export function meaningOfUnit(unit: string | undefined, shape: "pair" | "number"): TimeMeaning | undefined {
  if (unit === undefined) return undefined;
  if (shape === "pair") {
    if (/^m{1,2}:ss$|^m(?:ins?|inutes?)?$|^s(?:ecs?|econds?)?$/.test(unit)) return "minutes and seconds";
    if (/^h{1,2}:mm|^clock$|am\/pm|^24|^h/.test(unit)) return "hours and minutes";
    return undefined;
  }
  if (/^m(?:ins?|inutes?)?$/.test(unit)) return "minutes";
  if (/^s(?:ecs?|econds?)?$/.test(unit)) return "seconds";
  if (/^h(?:rs?|ours?)?$/.test(unit)) return "hours";
  if (/^ms$|^milli/.test(unit)) return "milliseconds";
  return undefined;
}
