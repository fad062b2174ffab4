/**
 * How much of a pour the thermometer shows: the pour mixes into the bath and the thermometer follows, two lags
 * of first order one behind the other.
 *
 * @param after s since the pour; nothing shows before it
 * @param mixing s, time constant of the mixing, above 0
 * @param lag s, time constant of the thermometer, above 0
 * @returns share of the pour, 0..1
 * @example stepResponse(35, 20, 15) // 0.5958
 */
export function stepResponse(after: number, mixing: number, lag: number): number {
  if (!(after > 0)) return 0;
  // Equal lags are a removable singularity: hold them a hair apart.
  const slow = Math.abs(mixing - lag) < 1e-3 * lag ? lag * 1.001 : mixing;
  return 1 - (slow * Math.exp(-after / slow) - lag * Math.exp(-after / lag)) / (slow - lag);
}

/**
 * How fast it shows: the derivative of `stepResponse` by time.
 *
 * @param after s since the pour
 * @param mixing s
 * @param lag s
 * @returns share per second
 * @example stepResponseRate(35, 20, 15) // 0.01536
 */
export function stepResponseRate(after: number, mixing: number, lag: number): number {
  if (!(after > 0)) return 0;
  const slow = Math.abs(mixing - lag) < 1e-3 * lag ? lag * 1.001 : mixing;
  return (Math.exp(-after / slow) - Math.exp(-after / lag)) / (slow - lag);
}
