/**
 * Covariance of what a gusty fire has made more or less than its mean by two times: an Ornstein-Uhlenbeck process
 * of unit variance, integrated from time 0 (Gardiner, Handbook of Stochastic Methods, 4.4; from memory).
 *
 * @param s s from time 0; below 0 for what it made between then and time 0, taken off
 * @param t s from time 0, as `s`
 * @param tau s, how long a gust lasts
 * @param leftOfS exp(-|s| / tau), where it is at hand
 * @param leftOfT exp(-|t| / tau), where it is at hand
 * @returns s²
 * @example gustCovariance(60, 60, 1e9) // 3600: a gust that never ends
 */
export function gustCovariance(
  s: number,
  t: number,
  tau: number,
  leftOfS = Math.exp(-Math.abs(s) / tau),
  leftOfT = Math.exp(-Math.abs(t) / tau),
): number {
  const a = Math.abs(s);
  const b = Math.abs(t);
  const small = Math.max(a, b) / tau;
  const opposite = s < 0 !== t < 0;
  if (opposite && small >= 1e-3) return -tau * tau * (1 - leftOfS) * (1 - leftOfT);
  // The terms cancel where the times are short against the gust.
  if (small < 1e-3) return opposite ? -a * b : a * b;
  // Of two exponentials that are at hand the quotient is quicker than a third, as long as neither has vanished.
  const apart = small > 600 ? Math.exp(-Math.abs(a - b) / tau) : a > b ? leftOfS / leftOfT : leftOfT / leftOfS;
  return tau * tau * ((2 * Math.min(a, b)) / tau - 1 + leftOfS + leftOfT - apart);
}
