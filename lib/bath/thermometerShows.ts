import type { SimulatedThermometer } from "./simulationTypes.ts";

/**
 * What a thermometer that lags comes to while the bath goes straight from one temperature to another: the exact answer
 * of the first-order lag.
 *
 * @param held K, what it had come to
 * @param from K, of the bath at the start
 * @param to K, at the end
 * @param dt s between them
 * @param lag s; 0 for a thermometer that follows at once
 * @returns K
 * @example thermometerFollows(300, 400, 400, 15, 15) // 363.21 K: 63 % of the way
 */
export function thermometerFollows(held: number, from: number, to: number, dt: number, lag: number): number {
  if (lag === 0) return to;
  const behind = (lag * (to - from)) / dt;
  return to - behind + (held - from + behind) * Math.exp(-dt / lag);
}

/**
 * What stands on the dial: offset added, then rounded.
 *
 * @param held K, what the thermometer came to
 * @param thermometer its offset and rounding
 * @returns K
 * @example thermometerShows(417.59, { offset: 1, rounding: 5 / 9 }) // 418.7 K: 294 °F
 */
export function thermometerShows(held: number, thermometer: SimulatedThermometer | undefined): number {
  const { offset = 0, rounding = 0, roundingFrom = 273.15 } = thermometer ?? {};
  const read = held + offset;
  return rounding > 0 ? roundingFrom + rounding * Math.round((read - roundingFrom) / rounding) : read;
}
