import { at } from "./at.ts";
import { median } from "./firstBoil.ts";
import type { Pour } from "./logFacts.ts";

/** Water that may have gone in without being written down: where, how much, and how likely before the readings speak. */
export interface Unwritten {
  readonly from: number;
  readonly to: number;
  readonly count: number;
  /** kg, and its standard uncertainty. */
  readonly mass: number;
  readonly u: number;
  /** ln of the odds that the maker's own rhythm gives it, without the habit of forgetting. */
  readonly lnOdds: number;
}

function normal(x: number, mean: number, sd: number): number {
  return Math.exp(-0.5 * ((x - mean) / sd) ** 2) / (sd * Math.sqrt(2 * Math.PI));
}

/**
 * Places where a pour may be missing. Makers pour in a rhythm: a gap twice as long as the others asks whether one was
 * not written down. One candidate for each gap and for both ends, as many pours as the gap seems to hold.
 *
 * @param pours in time order, from the first boil on
 * @param start s, first boil
 * @param end s, last reading
 * @param pourTime s, how well the times were written
 * @param burnt s of first fire done by a time: on a smaller fire makers pour less often
 * @param rhythm standard deviation of the ln of the gaps, where it is known
 * @example unwrittenPours([], 0, 3600, 3) // []: without a rhythm nothing can be missing
 */
export function unwrittenPours(
  pours: readonly Pour[],
  start: number,
  end: number,
  pourTime: number,
  burnt: (time: number) => number = (time) => time,
  rhythm?: number,
): Unwritten[] {
  if (pours.length === 0 || pours.some((pour) => pour.duration > 0)) return [];
  const times = pours.map((pour) => pour.time);
  const gaps = times.slice(1).map((time, i) => Math.max(1, burnt(time) - burnt(at(times, i))));
  const masses = pours.map((pour) => pour.mass);
  const mass = masses.reduce((sum, kg) => sum + kg, 0) / masses.length;
  const spread = Math.sqrt(masses.reduce((sum, kg) => sum + (kg - mass) ** 2, 0) / Math.max(1, masses.length - 1));
  const each = Math.max(0.2 * mass, spread);
  const middle = gaps.length >= 2 ? median(gaps) : Math.max(60, (burnt(end) - burnt(start)) / (pours.length + 1));
  const logs = gaps.map((gap) => Math.log(gap / middle));
  const away = gaps.length >= 3 ? 1.4826 * median(logs.map(Math.abs)) : 0.6;
  const rounding = pourTime / middle;
  const sd = Math.hypot(rhythm ?? Math.max(0.12, away * (1 + 2 / Math.max(1, gaps.length))), rounding);
  const density = (gap: number) => {
    const x = Math.log(Math.max(1, gap) / middle);
    return ((1 - 0.15) * normal(x, 0, sd) + 0.15 * normal(x, 0, 1)) / Math.max(1, gap);
  };
  const survival = (gap: number) => {
    let sum = 0;
    for (let i = 0; i < 40; i++) {
      const x = gap * (1 + (i + 0.5) * 0.1);
      sum += density(x) * gap * 0.1;
    }
    return Math.max(1e-6, sum);
  };
  const found: Unwritten[] = [];
  const consider = (from: number, to: number, open: boolean) => {
    const gap = burnt(to) - burnt(from);
    if (!(gap > 30)) return;
    const likely = Math.min(4, Math.max(1, Math.round(gap / middle) - 1));
    const whole = open ? survival(gap) : density(gap);
    // Where two or more seem to be missing, one fewer is thought of too.
    for (let count = Math.max(1, likely - 1); count <= likely; count++) place(from, to, gap, count, open, whole);
  };
  const place = (from: number, to: number, gap: number, count: number, open: boolean, whole: number) => {
    const part = gap / (count + 1);
    // Each gap that is split weighs its own density; times the width of the place where the pour may lie.
    const split = density(part) ** (open ? count : count + 1) * part ** count * (open ? survival(part) : 1);
    const lnOdds = Math.max(-12, Math.min(1, Math.log(split / whole)));
    found.push({ from, to, count, mass: mass * count, u: each * Math.sqrt(count), lnOdds });
  };
  consider(start, at(times, 0), true);
  for (let i = 1; i < times.length; i++) consider(at(times, i - 1), at(times, i), false);
  consider(at(times, times.length - 1), end, true);
  return found;
}
