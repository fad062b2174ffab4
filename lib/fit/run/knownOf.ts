import { at } from "../../bath/at.ts";
import type { Prepared } from "../../bath/prepare.ts";
import { before } from "../../bath/waterLine.ts";
import type { FireLine } from "./fireLine.ts";

/** What no log tells of a run. All of it may be absent. */
export interface Known {
  /** s, time constants of thermometer and mixing. */
  readonly lag?: number;
  readonly mixing?: number;
  /** K: what one reading is off by itself. */
  readonly noise?: number;
  /** Share of full fire at a time in s from the first row. */
  readonly fire?: (time: number) => number;
  /** Standard deviation of the ln of the gaps between pours. */
  readonly rhythm?: number | "irregular";
}

/** ln: gaps between pours that follow no rhythm (about what pours at random times give). */
export const irregular = 1;
/**
 * What walls and top lose of the heat that boils at the first fire, which does not shrink with the flame, and the least
 * that still boils off on a flame that cannot make up for it (judgements).
 */
const lost = 0.15;
const least = 0.05;

/**
 * The same log with the fire's true course in place of what the log says of it.
 *
 * @param prepared the log
 * @param known the fire; the log is left as it is without one
 * @example withFire(prepared, { fire: () => 1 }).line.fire.done(prepared.line.start + 60, []) // 60
 */
export function withFire(prepared: Prepared, { fire }: Known): Prepared {
  if (!fire) return prepared;
  const { line } = prepared;
  const seconds = Math.ceil(line.end - line.start);
  const first = fire(line.start);
  const sums = new Float64Array(seconds + 2);
  for (let i = 0; i <= seconds; i++) {
    const share = fire(line.start + i) / first;
    sums[i + 1] = at(sums, i) + Math.max(least, share - lost * (1 - share));
  }
  const done = (time: number): number => {
    const s = Math.min(seconds + 1, Math.max(0, time - line.start));
    const whole = Math.floor(s);
    const here = at(sums, whole);
    return time <= line.start ? time - line.start : here + (s - whole) * (at(sums, whole + 1) - here);
  };
  return { ...prepared, line: { ...line, fire: { done, told: [], out: line.fire.out } } };
}

/** Doubts that are settled by what is known: their numbers, with the value that they take. */
export function heldBy(line: FireLine, known: Known): ReadonlyMap<number, number> {
  const held = new Map<number, number>();
  const settle = (k: number, value: number, { value: usual, u }: { readonly value: number; readonly u: number }) =>
    held.set(k, Math.log(value / usual) / u);
  if (known.lag !== undefined) settle(line.index.lag, known.lag, before.lag);
  if (known.mixing !== undefined) settle(line.index.mixing, known.mixing, before.mixing);
  // With a known fire, and so no change of it told, the only doubt about it is its trend.
  if (known.fire)
    held.set(
      line.doubts.findIndex(({ source }) => source === "fire"),
      0,
    );
  return held;
}

/**
 * The line with some doubts settled: whatever it is asked at, they take their values, and nothing hangs on them.
 *
 * @param line the line
 * @param held numbers of the doubts, with their values
 * @example lineKnowing(line, new Map([[line.index.lag, 0]])).readingAt(z, 600).by[line.index.lag] // 0
 */
export function lineKnowing(line: FireLine, held: ReadonlyMap<number, number>): FireLine {
  if (held.size === 0) return line;
  const settled = (z: ArrayLike<number>) => {
    const own = Float64Array.from(z);
    for (const [k, value] of held) own[k] = value;
    return own;
  };
  const still = (by: Float64Array) => {
    for (const k of held.keys()) by[k] = 0;
    return by;
  };
  return {
    ...line,
    readingAt: (z, time, order) => {
      const { by, ...rest } = line.readingAt(settled(z), time, order);
      return { ...rest, by: still(by) };
    },
    glanceAt: (z, time, order) => line.glanceAt(settled(z), time, order),
    boilsAt: (z, time, water) => {
      const { by, ...rest } = line.boilsAt(settled(z), time, water);
      return { ...rest, by: still(by) };
    },
    bathAt: (z, time, order) => {
      const { waterBy, steamBy, ...rest } = line.bathAt(settled(z), time, order);
      return { ...rest, waterBy: still(waterBy), steamBy: still(steamBy) };
    },
    lnRatioAt: (z, time) => {
      const { value, by } = line.lnRatioAt(settled(z), time);
      return { value, by: still(by) };
    },
    seen: (z, poured, read) => line.seen(settled(z), poured, read),
  };
}
