import type { Dimension } from "../measure/types.ts";
import type { ReadOff } from "./readOff.ts";
import type { Answer } from "./types.ts";

/**
 * An answer from its parts.
 *
 * @param value SI
 * @param interval95 low and high, around the value
 * @param dimension of the value
 * @param components signed standard uncertainties by source; their root sum of squares is the standard uncertainty
 * @example answerOf(2, [1, 3], { mass: 1 }, new Map([["cup", 0.5]])).standardUncertainty // 0.5
 */
export function answerOf(
  value: number,
  interval95: readonly [low: number, high: number],
  dimension: Dimension,
  components: ReadonlyMap<string, number>,
): Answer {
  let variance = 0;
  for (const u of components.values()) variance += u * u;
  return {
    value,
    standardUncertainty: Math.sqrt(variance),
    interval95,
    measured: { value, dimension, components, interval95 },
  };
}

/**
 * An answer from the ln of it, which keeps the answer and its interval above 0.
 *
 * @param read middle, doubt and interval of the ln
 * @param dimension of the answer
 * @param factor on the answer
 * @example answerOfLn(read, { mass: 1, time: -1 }).value
 */
export function answerOfLn(read: ReadOff, dimension: Dimension, factor = 1): Answer {
  const value = factor * Math.exp(read.median);
  const components = new Map([...read.sources].map(([source, u]) => [source, value * u]));
  return answerOf(value, [factor * Math.exp(read.low), factor * Math.exp(read.high)], dimension, components);
}
