import { covariance, coverage95, standardUncertainty } from "./standardUncertainty.ts";
import type { Value } from "./types.ts";

/** How many times wider than 1.96 u each side of the value's own 95 % interval is. */
function widening(value: Value): { down: number; up: number } {
  const normal = coverage95 * standardUncertainty(value);
  if (!value.interval95 || normal === 0) return { down: 1, up: 1 };
  return { down: (value.value - value.interval95[0]) / normal, up: (value.interval95[1] - value.value) / normal };
}

function weighed(result: Value, values: readonly Value[], slopes: readonly number[]): [number, number] {
  const spread = standardUncertainty(result);
  let down = 0;
  let up = 0;
  values.forEach((each, index) => {
    const shared = covariance(each, result);
    const part = ((slopes[index] ?? 0) * shared) / spread ** 2;
    const sides = widening(each);
    up += part * (shared < 0 ? sides.down : sides.up) ** 2;
    down += part * (shared < 0 ? sides.up : sides.down) ** 2;
  });
  const half = coverage95 * spread;
  return [result.value - half * Math.sqrt(Math.max(0, down)), result.value + half * Math.sqrt(Math.max(0, up))];
}

/**
 * The 95 % interval of a result whose arguments have intervals of their own; undefined where none has, or where
 * nothing is left of the doubt. One doubtful argument: the ends of its interval go through the function. Several: each
 * argument's part in the result's variance (the parts sum to 1, whatever is correlated) weighs how much wider than
 * normal its sides are. That is exact where the result is linear in one source, and the usual sum of squares for
 * independent ones. Our own rule, a simple stand-in for the Monte Carlo of JCGM 101.
 *
 * @param slopes ∂f/∂x of each argument, SI
 * @example
 * carriedInterval(exact(1), [exact(0.5)], [2], (x) => 2 * x) // undefined
 */
export function carriedInterval(
  result: Value,
  values: readonly Value[],
  slopes: readonly number[],
  f: (...numbers: number[]) => number,
): readonly [low: number, high: number] | undefined {
  if (result.components.size === 0 || values.every((each) => each.interval95 === undefined)) return undefined;
  const doubtful = values.filter((each) => each.components.size > 0);
  const alone = doubtful.length === 1 ? doubtful[0] : undefined;
  if (alone?.interval95) {
    const [a, b] = alone.interval95.map((end) => f(...values.map((each) => (each === alone ? end : each.value))));
    const low = Math.min(a ?? Number.NaN, b ?? Number.NaN);
    const high = Math.max(a ?? Number.NaN, b ?? Number.NaN);
    if (low <= result.value && result.value <= high) return [low, high];
  }
  return weighed(result, values, slopes);
}
