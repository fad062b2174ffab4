import { answerOf } from "./answer.ts";
import { middleOf } from "./middleOf.ts";
import type { AtBoil } from "./pointsOf.ts";
import type { Answer } from "./types.ts";

/** Share of the water that must seem to come from nowhere before a log is said to contradict itself. */
const leastShare = 0.02;

/** The fastest boil-off that is still thought of where a log says nothing: 2 % of the water a minute (judgement). */
const fastest = 0.02 / 60;
/** What a bath on a usual fire boils off, of its water (judgement): a log that contradicts itself is not believed beyond it. */
const usual = 0.004 / 60;

/**
 * How a log contradicts itself, in words for the maker: water that comes from nowhere (the boiling point falls and no
 * pour is written that would thin the bath), or readings most of which do not fit. Then it says little of the boil-off.
 *
 * @param atBoil what the readings from the first boil on say of the water gone, kg, in time order, and how many of them
 * hardly count
 * @param water kg in the tank at the start
 * @returns a sentence, or undefined where the log agrees with itself or has fewer than three readings at the boil
 * @example contradiction({ gone: Float64Array.of(0, -0.2, -0.4, -0.6), standardUncertainty: new Float64Array(4).fill(0.02), slight: 0 }, 8)?.includes("fell") // true
 */
export function contradiction(
  { gone: each, standardUncertainty, slight }: Pick<AtBoil, "gone" | "standardUncertainty" | "slight">,
  water: number,
): string | undefined {
  const n = each.length;
  if (n < 3) return undefined;
  const third = Math.max(1, Math.floor(n / 3));
  const gone = middleOf(each.slice(n - third)) - middleOf(each.slice(0, third));
  const noise = middleOf(standardUncertainty.slice()) * Math.SQRT2 * 2;
  if (gone < -Math.max(leastShare * water, noise)) {
    return "The boiling point fell more than the written pours can thin the bath: water is missing from the log, or the bath stood below its boil. The boil-off can hardly be read from it.";
  }
  if (slight > n / 2) {
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
