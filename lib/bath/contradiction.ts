import { answerOf } from "./answer.ts";
import type { Answer, WaterBalance } from "./types.ts";

/** Share of the water that must seem to come from nowhere before a log is said to contradict itself. */
const leastShare = 0.02;

/** The fastest boil-off that is still thought of where a log says nothing: 2 % of the water a minute (judgement). */
const fastest = 0.02 / 60;
/** What a bath on a usual fire boils off, of its water (judgement): a log that contradicts itself is not believed beyond it. */
const usual = 0.004 / 60;

function middle(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  const above = sorted[half] ?? Number.NaN;
  return sorted.length % 2 === 1 ? above : ((sorted[half - 1] ?? above) + above) / 2;
}

/**
 * How a log contradicts itself, in words for the maker: water that comes from nowhere (the boiling point falls and no
 * pour is written that would thin the bath), or readings most of which do not fit. Then it says little of the boil-off.
 *
 * @param points what each reading says of the water gone, kg, in time order
 * @param from s: when the bath first boiled
 * @param water kg in the tank at the start
 * @returns a sentence, or undefined where the log agrees with itself or has fewer than three readings at the boil
 * @example contradiction([0, 1, 2, 3].map((i) => ({ id: `${i}`, time: 600 * i, gone: -0.2 * i, standardUncertainty: 0.02, weight: 1 })), 0, 8)?.includes("fell") // true
 */
export function contradiction(points: WaterBalance["points"], from: number, water: number): string | undefined {
  const boiling = points.filter(({ time }) => time >= from - 1e-9);
  if (boiling.length < 3) return undefined;
  const third = Math.max(1, Math.floor(boiling.length / 3));
  const gone =
    middle(boiling.slice(-third).map((point) => point.gone)) -
    middle(boiling.slice(0, third).map((point) => point.gone));
  const noise = middle(boiling.map((point) => point.standardUncertainty)) * Math.SQRT2 * 2;
  if (gone < -Math.max(leastShare * water, noise)) {
    return "The boiling point fell more than the written pours can thin the bath: water is missing from the log, or the bath stood below its boil. The boil-off can hardly be read from it.";
  }
  if (boiling.filter(({ weight }) => weight < 0.5).length > boiling.length / 2) {
    return "Most readings do not fit one another. The boil-off can hardly be read from this log.";
  }
  return undefined;
}

/**
 * A boil-off as wide as a log leaves it that contradicts itself: up to the fastest that is thought of.
 *
 * @param boilOff kg/s
 * @param water kg in the tank at the start
 * @example asWideAsUnknown(boilOff, 8).interval95[1] // 0.00267
 */
export function asWideAsUnknown(boilOff: Answer, water: number): Answer {
  const high = fastest * water;
  const low = Math.min(boilOff.interval95[0], 0.5 * usual * water);
  const value = Math.max(low, Math.min(boilOff.value, usual * water));
  const scale = Math.min(1, value / boilOff.value);
  const components = new Map([...boilOff.measured.components].map(([source, u]) => [source, scale * u]));
  components.set("what was not written down", (high - value) / 1.96);
  return answerOf(value, [low, high], boilOff.measured.dimension, components);
}

/** ln: beyond this doubt the middle of an answer, worked out along straight lines, says nothing any more. */
const hardlyKnown = 0.7;
/** What fires boil off of a bath's water, least and most (judgement): 0.1 and 1.2 % a minute. */
const span = [0.001 / 60, 0.012 / 60] as const;

/**
 * A boil-off that the log hardly tells, brought within what fires usually do: the value, and an interval no wider than
 * the fastest that is thought of.
 *
 * @param boilOff kg/s
 * @param u doubt of its ln
 * @param water kg in the tank at the start
 * @returns the same answer where the log tells enough
 * @example withinUsual(balance.boilOff, 0.05, 8).value
 */
export function withinUsual(boilOff: Answer, u: number, water: number): Answer {
  if (!(u > hardlyKnown)) return boilOff;
  const [least, most] = span;
  const value = Math.min(most * water, Math.max(least * water, boilOff.value));
  const low = Math.min(value, boilOff.interval95[0]);
  const high = Math.max(value, Math.min(fastest * water, boilOff.interval95[1]));
  const scale = value / boilOff.value;
  const components = new Map([...boilOff.measured.components].map(([source, own]) => [source, scale * own]));
  return answerOf(value, [low, high], boilOff.measured.dimension, components);
}
