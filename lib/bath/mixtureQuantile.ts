/** A normal distribution and how much it counts. */
export interface Normal {
  readonly weight: number;
  readonly mean: number;
  readonly sd: number;
}

/**
 * Standard normal distribution function (Abramowitz and Stegun, 7.1.26, by way of erf; good to 1.5e-7).
 *
 * @param x any number
 * @example normalShare(0) // 0.5
 */
export function normalShare(x: number): number {
  const t = 1 / (1 + (0.3275911 * Math.abs(x)) / Math.SQRT2);
  const poly = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const tail = 0.5 * poly * Math.exp(-0.5 * x * x);
  return x > 0 ? 1 - tail : tail;
}

/**
 * Quantile of a mixture of normal distributions, by bisection.
 *
 * @param parts the distributions; weights need not make 1
 * @param share 0..1, both exclusive
 * @example mixtureQuantile([{ weight: 1, mean: 2, sd: 1 }], 0.975) // 3.96
 */
export function mixtureQuantile(parts: readonly Normal[], share: number): number {
  const whole = parts.reduce((sum, part) => sum + part.weight, 0);
  let low = Math.min(...parts.map(({ mean, sd }) => mean - 8 * sd));
  let high = Math.max(...parts.map(({ mean, sd }) => mean + 8 * sd));
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    const below = parts.reduce((sum, { weight, mean, sd }) => sum + weight * normalShare((middle - mean) / sd), 0);
    if (below < share * whole) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
