import { at } from "./at.ts";
import type { LogFacts, Reading } from "./logFacts.ts";

export interface FirstBoil {
  /** s, when the bath first boiled. */
  readonly time: number;
  /** Number of readings before it. */
  readonly before: number;
  readonly from: "remark" | "kink" | "first reading";
}

const boiling = /\bboil(s|ing|ed)?\b/i;
const notYet =
  /\b(not?|never|almost|near(ly|ing)?|before|until|soon|about to|close to|stop(s|ped)?|off|under|below|point|over)\b/i;

/**
 * When the bath first boiled. A remark that it boils settles it. Otherwise the warm-up shows as a rise that is many
 * times as fast as boiling can make it: the same fire warms a bath about ten times as fast as it moves its boiling
 * point by taking water, so a rise three times the likely one is warm-up.
 *
 * @param facts the log
 * @param readings its readings, thinned, in time order
 * @param rise K/s, the likely rise of the boiling point between pours
 * @param lowest K, below which the bath cannot have been boiling
 * @example firstBoil(facts, facts.readings, 0.005, 380).time
 */
export function firstBoil(facts: LogFacts, readings: readonly Reading[], rise: number, lowest: number): FirstBoil {
  const told = facts.remarks.find(({ text }) => boiling.test(text) && !notYet.test(text));
  const before = (time: number) => readings.filter((reading) => reading.time < time - 1e-9).length;
  if (told) return { time: told.time, before: before(told.time), from: "remark" };
  const firstPour = facts.pours[0]?.time ?? Infinity;
  const firstParts = facts.parts[0]?.time ?? Infinity;
  let last = -1;
  for (let i = 0; i < readings.length - 1; i++) {
    const here = readings[i] as Reading;
    const next = readings[i + 1] as Reading;
    const gap = next.time - here.time;
    const prefix = next.time <= Math.min(firstPour, firstParts) + 1e-9 || i === last + 1;
    const fast = next.T - here.T > 3.3 * rise * gap + 2;
    if (prefix && fast && here.time < firstPour) last = Math.max(last, i);
  }
  while (last + 1 < readings.length && (readings[last + 1] as Reading).T < lowest) last++;
  if (last < 0) {
    const first = readings[0]?.time ?? 0;
    return { time: Math.min(first, firstPour), before: 0, from: "first reading" };
  }
  const cold = readings[last] as Reading;
  const warm = readings[last + 1];
  if (!warm) return { time: Infinity, before: readings.length, from: "kink" };
  const earlier = readings[last - 1];
  let time = warm.time;
  if (earlier) {
    const rate = (cold.T - earlier.T) / (cold.time - earlier.time);
    if (rate > 2 * rise) {
      const crossing = cold.time + (warm.T - rise * (warm.time - cold.time) - cold.T) / (rate - rise);
      time = Math.min(warm.time, Math.max(cold.time, crossing));
    }
  }
  return { time, before: last + 1, from: "kink" };
}

/** Middle of a list of numbers; NaN for an empty one. */
export function median(list: readonly number[]): number {
  const sorted = [...list].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  if (sorted.length === 0) return Number.NaN;
  return sorted.length % 2 ? at(sorted, half) : (at(sorted, half - 1) + at(sorted, half)) / 2;
}
