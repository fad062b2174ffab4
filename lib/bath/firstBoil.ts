import { at } from "./at.ts";
import { bendOf, type Expected } from "./bendOf.ts";
import type { LogFacts, Reading } from "./logFacts.ts";
import { pulledBy } from "./pulledBy.ts";

export interface FirstBoil {
  /** s, when the bath first boiled. */
  readonly time: number;
  /** Number of readings before it. */
  readonly before: number;
  readonly from: "remark" | "kink" | "first reading";
}

/** s, of the thermometer. */
const lag = 15;
/** s after the first pour: readings up to then say where the bath boils. */
const watched = 1500;

const boiling = /\bboil(s|ing|ed)?\b/i;
const notYet =
  /\b(not?|never|almost|near(ly|ing)?|before|until|soon|about to|close to|stop(s|ped)?|off|under|below|point|over)\b/i;

/**
 * When the bath first boiled. A remark that it boils settles it. Otherwise the warm-up shows as a rise that is many
 * times as fast as boiling can make it: the same fire warms a bath about ten times as fast as it moves its boiling
 * point by taking water.
 *
 * @param facts the log
 * @param readings its readings, thinned, in time order
 * @param rise K/s, the likely rise of the boiling point between pours, from a reading (number) on
 * @param lowest K, below which the bath cannot have been boiling
 * @param firstRow s, the first reading that counts, before thinning
 * @param climb K by which the boiling point climbs for each K that the same heat would warm the bath
 * @param expected what was told of the water and what was poured make likely
 * @param perKilogram K by which a kilogram poured lowers the boiling point
 * @example firstBoil(facts, facts.readings, () => 0.005, 380, 0, 0.08).time
 */
export function firstBoil(
  facts: LogFacts,
  readings: readonly Reading[],
  rise: (from: number) => number,
  lowest: number,
  firstRow: number,
  climb: number,
  expected?: Expected,
  perKilogram = 0,
): FirstBoil {
  const told = facts.remarks.find(({ text }) => boiling.test(text) && !notYet.test(text));
  const before = (time: number) => readings.filter((reading) => reading.time < time - 1e-9).length;
  if (told) return { time: told.time, before: before(told.time), from: "remark" };
  const firstPour = facts.pours[0]?.time ?? Infinity;
  let last = lastOfWarmUp(readings, firstPour, rise);
  while (last + 1 < readings.length && (readings[last + 1] as Reading).T < lowest) last++;
  if (last < 0) {
    return { time: Math.min(firstRow, firstPour), before: 0, from: "first reading" };
  }
  const cold = readings[last] as Reading;
  const warm = readings[last + 1];
  if (!warm) return { time: Infinity, before: readings.length, from: "kink" };
  // Without pours, readings at the boil taken for a warm-up would leave nothing to read the boil-off from, while
  // readings of a warm-up taken for boiling stand out as misread.
  const margin = firstPour === Infinity ? 3 : 0;
  const start = before(Math.min(firstPour + watched, cutAfter(facts, cold.time)) + 1);
  const bend = bendOf(
    readings.slice(lastChange(facts, readings, cold.time), start),
    climb,
    lag,
    firstRow,
    { ...expected, ...(perKilogram > 0 ? { pulled: pulledBy(facts.pours, perKilogram) } : {}) },
    margin,
  );
  if (bend !== undefined) {
    // Two readings have to be left at the boil, or nothing can be said of it; and nobody pours much before it boils.
    const latest = readings[readings.length - 2]?.time ?? bend;
    const time = Math.min(bend, latest, bend - firstPour < 300 ? firstPour : Infinity);
    return { time, before: before(time), from: "kink" };
  }
  const earlier = readings[last - 1];
  const seen = earlier ? (cold.T - earlier.T) / (cold.time - earlier.time) : 0;
  const slow = rise(last);
  const rate = Math.max(seen, 4 * slow);
  // Both arms of the bend are read by a thermometer that lags.
  const crossing = cold.time - lag + (warm.T - slow * (warm.time - cold.time) - cold.T) / (rate - slow);
  const time = Math.min(warm.time, Math.max(cold.time, crossing));
  return { time, before: last + 1, from: "kink" };
}

/**
 * Number of the last reading of the warm-up, -1 for none: one that later readings leave further below than boiling can
 * make them rise. Two later ones must say so where there are two, and none before it may stand above it: one misread
 * reading is no warm-up.
 */
function lastOfWarmUp(readings: readonly Reading[], firstPour: number, rise: (from: number) => number): number {
  let last = -1;
  let highest = -Infinity;
  const prefix = readings.filter((reading) => reading.time <= firstPour).length;
  for (let i = 0; i < prefix; i++) {
    const here = readings[i] as Reading;
    // No bath cools while it warms up, nor at the boil before the first pour: a dip or a spike is a slip of the pen.
    if (here.T < highest - 0.6 || spikes(readings, i)) continue;
    highest = Math.max(highest, here.T);
    let above = 0;
    let asked = 0;
    let risen = 0;
    for (let k = i + 1; k < readings.length && k < prefix + 2; k++) {
      const later = readings[k] as Reading;
      if (later.time - here.time > 1200 && asked >= 2) break;
      asked++;
      risen = Math.max(risen, later.T - here.T - 6 * rise(i) * (later.time - here.time));
      if (later.T - here.T > 1.5 * rise(i) * (later.time - here.time) + 1.2) above++;
    }
    // One later reading alone has to say so loudly.
    if (above >= 2 || (asked === 1 && risen > 3)) last = i;
  }
  return last;
}

/** s: when something but the fire first moved the bath after a time. */
function cutAfter({ fires, parts, salts }: LogFacts, time: number): number {
  return Math.min(Infinity, ...[...fires, ...parts, ...salts].map((event) => event.time).filter((at) => at > time));
}

/** Number of the first reading after the last change of the fire in the heat-up. */
function lastChange({ fires, parts, salts }: LogFacts, readings: readonly Reading[], time: number): number {
  const from = Math.max(
    -Infinity,
    ...[...fires, ...parts, ...salts].map((event) => event.time).filter((at) => at <= time),
  );
  return Math.max(
    0,
    readings.findIndex((reading) => reading.time >= from),
  );
}

/** Whether a reading stands well above both that follow it. */
function spikes(readings: readonly Reading[], i: number): boolean {
  const [here, next, afterNext] = readings.slice(i, i + 3);
  return !!here && !!next && !!afterNext && here.T > next.T + 2 && here.T > afterNext.T + 2;
}

/** Middle of a list of numbers; NaN for an empty one. */
export function median(list: readonly number[]): number {
  const sorted = [...list].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  if (sorted.length === 0) return Number.NaN;
  return sorted.length % 2 ? at(sorted, half) : (at(sorted, half - 1) + at(sorted, half)) / 2;
}
