import { at } from "./at.ts";
import type { Reading } from "./logFacts.ts";

/** K that a boiling bath may seem to fall: readings, a thermometer's tip that is moved, a cup that is wrong. */
const fall = 2;
/** Share of the fall that one step makes where it is a pour that nobody wrote. */
const step = 0.6;
/** What a cup is wrong by adds up with the pours: a share of what they pull. */
const cup = 0.08;
/** K below its highest at which a bath that warms again is taken to boil again. */
const near = 0.5;
/** s after that before its readings count. */
const settles = 180;

/** Middle of a reading and its neighbours: one misread reading is no fall. */
function smooth(list: readonly number[]): readonly number[] {
  return list.map((here, i) => {
    const [a, b] = [list[i - 1] ?? here, list[i + 1] ?? here];
    return Math.max(Math.min(a, b), Math.min(Math.max(a, b), here));
  });
}

/**
 * Times in which a bath stood below its boil after it had boiled. Salt stays and steam only leaves, so a boiling bath's
 * temperature falls by what is poured and by nothing else: where it falls further, the fire no longer holds the boil, and
 * the readings say nothing of the water.
 *
 * @param readings from the first boil on, in time order
 * @param pulled K by which the pours have pulled a reading down by a time
 * @param changes s: when the fire was turned down, or parts went in
 * @param first s, first boil
 * @returns s, [from, to): to is Infinity where it never boiled again
 * @example stoodBelow(readings, pulledBy(pours, 4), [1200], 0)
 */
export function stoodBelow(
  readings: readonly Reading[],
  pulled: (time: number) => number,
  changes: readonly number[],
  first: number,
): readonly (readonly [from: number, to: number])[] {
  const held = smooth(readings.map(({ time, T }) => T + pulled(time)));
  const found: (readonly [number, number])[] = [];
  let highest = -Infinity;
  let since = first;
  for (let i = 0; i < readings.length; i++) {
    const here = readings[i] as Reading;
    if (at(held, i) >= highest) {
      highest = at(held, i);
      since = here.time;
      continue;
    }
    const change = changes.find((time) => time >= since - 600 && time < here.time);
    if (change === undefined) continue;
    const next = held[i + 1] ?? at(held, i);
    if (!(highest - Math.max(at(held, i), next) > fall + cup * (pulled(here.time) - pulled(since)))) continue;
    // A pour that nobody wrote is a step and then a rise; a bath that cools goes on falling.
    const steps = held.slice(1, i + 2).map((x, k) => ((readings[k] as Reading).time < since ? 0 : at(held, k) - x));
    const lowest = Math.min(at(held, i), next);
    if (Math.max(...steps) > step * (highest - lowest) || next > at(held, i) + 0.3) continue;
    const from = Math.max(since, change);
    let k = i;
    while (k < readings.length && at(held, k) < highest - near) k++;
    const back = readings[k];
    found.push([from, back ? back.time + settles : Infinity]);
    i = k;
    highest = back ? at(held, k) : highest;
    since = back?.time ?? since;
  }
  return found;
}
