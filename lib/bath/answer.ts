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

/** ln: beyond this the doubt of an answer says no more than "not known". */
const widest = 2;

/**
 * An answer from the ln of it, which keeps the answer and its interval above 0.
 *
 * @param read middle, doubt and interval of the ln
 * @param dimension of the answer
 * @param limits lowest and highest that can be, SI: a log that contradicts itself must not drive an answer beyond them
 * @example answerOfLn(read, { mass: 1, time: -1 }, [1e-6, 1e-2]).value
 */
export function answerOfLn(read: ReadOff, dimension: Dimension, limits: readonly [low: number, high: number]): Answer {
  const within = (ln: number) => Math.min(limits[1], Math.max(limits[0], Math.exp(Math.min(700, ln))));
  const value = within(read.median);
  const scale = Math.min(1, widest / read.u);
  const components = new Map([...read.sources].map(([source, u]) => [source, value * scale * u]));
  return answerOf(value, [within(read.low), within(read.high)], dimension, components);
}

/**
 * An answer times a number without doubt.
 *
 * @param answer any
 * @param factor above 0
 * @param dimension of the product
 * @example scaled(poured, 1 / 3600, { mass: 1, time: -1 })
 */
export function scaled(answer: Answer, factor: number, dimension: Dimension): Answer {
  return answerOf(
    answer.value * factor,
    [answer.interval95[0] * factor, answer.interval95[1] * factor],
    dimension,
    new Map([...answer.measured.components].map(([source, u]) => [source, u * factor])),
  );
}

/**
 * An answer with the same doubt on both sides, as far as `least` allows.
 *
 * @param value SI
 * @param dimension of the value
 * @param components standard uncertainty by source
 * @param least the lowest it can be
 * @example symmetric(2, { mass: 1 }, new Map([["cup", 0.1]]), 0).interval95 // 1.804, 2.196
 */
export function symmetric(
  value: number,
  dimension: Dimension,
  components: ReadonlyMap<string, number>,
  least = -Infinity,
): Answer {
  const u = Math.sqrt([...components.values()].reduce((sum, x) => sum + x * x, 0));
  return answerOf(value, [Math.max(least, value - 1.96 * u), value + 1.96 * u], dimension, components);
}
