import type { Value } from "./types.ts";

/**
 * Half-width of the 95 % interval in standard uncertainties, for a normal distribution (JCGM 100:2008, table G.1).
 */
export const coverage95 = 1.96;

/**
 * Standard uncertainty of a value, SI: the root of the sum of its components' squares (JCGM 100:2008, 5.1.2).
 *
 * @example
 * standardUncertainty(measuredValue(10, 0.1, { mass: 1 }, "scale")) // 0.1
 */
export function standardUncertainty(value: Value): number {
  return Math.hypot(...value.components.values());
}

/**
 * The 95 % interval, SI: the value's own where it has one, else value ± 1.96 standard uncertainties.
 *
 * @example
 * interval95(measuredValue(10, 0.1, { mass: 1 }, "scale")) // [9.804, 10.196]
 */
export function interval95(value: Value): readonly [low: number, high: number] {
  if (value.interval95) return value.interval95;
  const half = coverage95 * standardUncertainty(value);
  return [value.value - half, value.value + half];
}

/**
 * Covariance of two values, in the product of their SI units, from the sources they share (JCGM 100:2008, F.1.2.3).
 *
 * @example
 * covariance(measuredValue(10, 0.1, { mass: 1 }, "scale"), measuredValue(5, 0.2, { mass: 1 }, "scale")) // 0.02
 */
export function covariance(a: Value, b: Value): number {
  let sum = 0;
  for (const [source, component] of a.components) sum += component * (b.components.get(source) ?? 0);
  return sum;
}

/**
 * Correlation of two values, -1 to 1; 0 where one of them is exact.
 *
 * @example
 * correlation(measuredValue(10, 0.1, { mass: 1 }, "scale"), measuredValue(5, 0.2, { mass: 1 }, "scale")) // 1
 */
export function correlation(a: Value, b: Value): number {
  const scale = standardUncertainty(a) * standardUncertainty(b);
  return scale === 0 ? 0 : Math.max(-1, Math.min(1, covariance(a, b) / scale));
}
