import { standardUncertainty } from "../measure/index.ts";
import type { Dimension, Value } from "../measure/types.ts";

/** Water of a run: any three of start, end, time and rate give the fourth. Masses in kg, time in s, rate in kg/s. */
export interface WaterStory {
  readonly start?: Value;
  readonly end?: Value;
  /** Poured in between; absent means none. */
  readonly poured?: Value;
  readonly time?: Value;
  readonly rate?: Value;
}

function combine(dimension: Dimension, value: number, terms: readonly (readonly [by: number, of: Value])[]): Value {
  const components = new Map<string, number>();
  for (const [by, of] of terms) {
    for (const [source, u] of of.components) components.set(source, (components.get(source) ?? 0) + by * u);
  }
  return { value, dimension, components };
}

/**
 * The one that is missing of start water, end water, time and rate: end = start + poured - rate × time. Doubts are
 * carried along their sources, to first order (JCGM 100:2008, 5.1).
 *
 * @param story three of the four, and what was poured
 * @returns which one was missing, and its value
 * @throws Error unless exactly three are given; RangeError where a rate or time of 0 leaves the answer open
 * @example
 * const kg = (value) => ({ value, dimension: { mass: 1 }, components: new Map() });
 * fourth({ start: kg(9), end: kg(6), time: { value: 3000, dimension: { time: 1 }, components: new Map() } }).value.value // 0.001
 */
export function fourth(story: WaterStory): {
  readonly missing: "start" | "end" | "time" | "rate";
  readonly value: Value;
} {
  const { start, end, time, rate } = story;
  const poured = story.poured ?? { value: 0, dimension: { mass: 1 }, components: new Map<string, number>() };
  for (const given of [start, end, time, rate, poured]) {
    if (given && !(Number.isFinite(given.value) && Number.isFinite(standardUncertainty(given)))) {
      throw new RangeError(`invalid water story: ${given.value}; finite numbers are needed`);
    }
  }
  if (start && time && rate && !end) {
    const value = start.value + poured.value - rate.value * time.value;
    return {
      missing: "end",
      value: combine({ mass: 1 }, value, [
        [1, start],
        [1, poured],
        [-time.value, rate],
        [-rate.value, time],
      ]),
    };
  }
  if (end && time && rate && !start) {
    const value = end.value - poured.value + rate.value * time.value;
    return {
      missing: "start",
      value: combine({ mass: 1 }, value, [
        [1, end],
        [-1, poured],
        [time.value, rate],
        [rate.value, time],
      ]),
    };
  }
  if (start && end && rate && !time) {
    if (!(rate.value > 0)) throw new RangeError(`invalid rate: ${rate.value} kg/s; more than 0 tells the time`);
    const value = (start.value + poured.value - end.value) / rate.value;
    const by = 1 / rate.value;
    return {
      missing: "time",
      value: combine({ time: 1 }, value, [
        [by, start],
        [by, poured],
        [-by, end],
        [-value * by, rate],
      ]),
    };
  }
  if (start && end && time && !rate) {
    if (!(time.value > 0)) throw new RangeError(`invalid time: ${time.value} s; more than 0 tells the rate`);
    const value = (start.value + poured.value - end.value) / time.value;
    const by = 1 / time.value;
    return {
      missing: "rate",
      value: combine({ mass: 1, time: -1 }, value, [
        [by, start],
        [by, poured],
        [-by, end],
        [-value * by, time],
      ]),
    };
  }
  throw new Error(
    "ambiguous water story: three of start water, end water, time and rate are needed, no more and no fewer",
  );
}
