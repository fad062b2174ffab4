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

/** Density of the standard normal distribution at 0. */
const top = 1 / Math.sqrt(2 * Math.PI);

/**
 * Quantile of a mixture of normal distributions: by Newton's steps, by halves where those do not close in.
 *
 * @param parts the distributions; weights need not make 1
 * @param share 0..1, both exclusive
 * @example mixtureQuantile([{ weight: 1, mean: 2, sd: 1 }], 0.975) // 3.96
 */
export function mixtureQuantile(parts: readonly Normal[], share: number): number {
  let whole = 0;
  let low = Infinity;
  let high = -Infinity;
  let middle = 0;
  for (const { weight, mean, sd } of parts) {
    whole += weight;
    middle += weight * mean;
    low = Math.min(low, mean - 8 * sd);
    high = Math.max(high, mean + 8 * sd);
  }
  const near = 1e-15 * (high - low);
  let at = middle / whole;
  let width = high - low;
  for (let i = 0; i < 120; i++) {
    let below = -share * whole;
    let density = 0;
    for (const { weight, mean, sd } of parts) {
      const x = (at - mean) / sd;
      below += weight * normalShare(x);
      density += (weight * top * Math.exp(-0.5 * x * x)) / sd;
    }
    if (below < 0) low = at;
    else high = at;
    const step = -below / density;
    const next = at + step;
    if (Math.abs(step) <= near || !(high - low > near)) return at;
    // The approximation of the normal distribution jumps a little at its middle: steps to and fro there must end.
    const closes = i % 2 === 0 || high - low < 0.5 * width;
    if (i % 2 === 1) width = high - low;
    at = next > low && next < high && closes ? next : (low + high) / 2;
  }
  return at;
}
