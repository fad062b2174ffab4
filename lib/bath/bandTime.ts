import { at } from "./at.ts";

/** A known point of the bath's course: s, K. */
export interface CoursePoint {
  readonly time: number;
  readonly T: number;
}

/**
 * Temperature at a time on straight lines between points; the end values beyond them.
 *
 * @param points in time order, one or more
 * @param time s
 * @example between([{ time: 0, T: 400 }, { time: 60, T: 402 }], 30) // 401
 */
export function between(points: readonly CoursePoint[], time: number): number {
  let low = 0;
  let high = points.length - 1;
  const first = points[0];
  const last = points[high];
  if (!first || !last) return Number.NaN;
  if (time <= first.time) return first.T;
  if (time >= last.time) return last.T;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((points[middle] as CoursePoint).time <= time) low = middle;
    else high = middle;
  }
  const a = points[low] as CoursePoint;
  const b = points[high] as CoursePoint;
  return b.time > a.time ? a.T + ((b.T - a.T) * (time - a.time)) / (b.time - a.time) : b.T;
}

/**
 * How long a course lies between two temperatures, straight lines between its points.
 *
 * @param course in time order
 * @param low K
 * @param high K
 * @param start s
 * @param end s
 * @returns s, 0 to end - start
 * @example timeBetween([{ time: 0, T: 0 }, { time: 10, T: 10 }], 2, 5, 0, 10) // 3
 */
export function timeBetween(
  course: readonly CoursePoint[],
  low: number,
  high: number,
  start: number,
  end: number,
): number {
  let inside = 0;
  const inner = course.filter((point) => point.time > start && point.time < end);
  const points = [{ time: start, T: between(course, start) }, ...inner, { time: end, T: between(course, end) }];
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1] as CoursePoint;
    const b = points[i] as CoursePoint;
    const span = b.time - a.time;
    const bottom = Math.min(a.T, b.T);
    const top = Math.max(a.T, b.T);
    if (top - bottom < 1e-12) inside += bottom >= low && bottom <= high ? span : 0;
    else inside += (span * Math.max(0, Math.min(top, high) - Math.max(bottom, low))) / (top - bottom);
  }
  return inside;
}

/**
 * How long the bath was in its band, with the interval that the thermometer's fixed error, the readings' noise and the
 * gaps between them leave.
 *
 * @param readings of the bath, corrected for what is known of the thermometer, in time order: s, K
 * @param shape the course the bath takes between readings as far as it is known (pours make steps); K at a time
 * @param times s, where the shape bends
 * @param limits K, lowest and highest of the band
 * @param hold s, from and to
 * @param doubt K: of the thermometer's fixed error, of one reading
 * @returns s: value, standard uncertainty, 95 % interval inside 0 and the hold's length; `path`, the course it was taken from
 * @example bandTime([{ time: 0, T: 416 }], () => 416, [], [415, 417], [0, 600], { fixed: 0.5, reading: 0.3 }).value // 600
 */
export function bandTime(
  readings: readonly CoursePoint[],
  shape: (time: number) => number,
  times: readonly number[],
  limits: readonly [low: number, high: number],
  hold: readonly [from: number, to: number],
  doubt: { readonly fixed: number; readonly reading: number },
) {
  const [from, to] = hold;
  const [low, high] = limits;
  const grid = [...new Set([...readings.map(({ time }) => time), ...times, from, to])].sort((a, b) => a - b);
  const left = readings.map(({ time, T }) => ({ time, T: T - shape(time) }));
  const courseOf = (residuals: readonly CoursePoint[], fixed: number) =>
    grid.map((time) => ({ time, T: shape(time) + (residuals.length > 0 ? between(residuals, time) : 0) + fixed }));
  const path = courseOf(left, 0);
  const value = timeBetween(path, low, high, from, to);
  const random = noise(0x5eed);
  const draws: number[] = [];
  const draw = 160;
  for (let i = 0; i < draw; i++) {
    // Even steps through the fixed error keep its tails; the noise is drawn.
    const fixed = doubt.fixed * quantile((i + 0.5) / draw);
    const shaken = left.map(({ time, T }) => ({ time, T: T + doubt.reading * random() }));
    draws.push(timeBetween(courseOf(shaken, fixed), low, high, from, to));
  }
  draws.sort((a, b) => a - b);
  const mean = draws.reduce((sum, x) => sum + x, 0) / draw;
  const u = Math.sqrt(draws.reduce((sum, x) => sum + (x - mean) ** 2, 0) / draw);
  return {
    value,
    u,
    path,
    low: Math.max(0, Math.min(value, at(draws, Math.floor(0.025 * draw)))),
    high: Math.min(to - from, Math.max(value, at(draws, Math.ceil(0.975 * draw) - 1))),
  };
}

/** Standard normal quantile (Acklam's rational approximation, from memory; good to 1e-3 here by its central part and tails). */
function quantile(p: number): number {
  let low = -6;
  let high = 6;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    const t = 1 / (1 + 0.2316419 * Math.abs(middle));
    const tail =
      0.3989423 *
      Math.exp((-middle * middle) / 2) *
      t *
      (0.3193815 + t * (-0.3565638 + t * (1.781478 + t * (-1.821256 + t * 1.330274))));
    if ((middle > 0 ? 1 - tail : tail) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Standard normal numbers from a fixed seed, so that one log always gives one answer. */
function noise(seed: number): () => number {
  let state = seed >>> 0;
  const uniform = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}
