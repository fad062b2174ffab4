/** A figure and its standard uncertainty, both in the unit that its owner states. */
export interface Estimate {
  readonly value: number;
  readonly standardUncertainty: number;
}

/** Whether heat of a fuel counts the water's condensation (gross, higher) or not (net, lower). */
export type HeatingBasis = "gross" | "net";

/**
 * A figure chosen out of a published range, which is taken to be evenly likely all over: the root mean square distance
 * from the figure is its standard uncertainty (JCGM 100, 4.3.7; F.2.4.5 where the figure is not in the middle).
 */
export function ofRange(low: number, value: number, high: number): Estimate {
  return { value, standardUncertainty: Math.hypot((high - low) / Math.sqrt(12), (high + low) / 2 - value) };
}
