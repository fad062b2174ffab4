export interface RoundedHalf {
  /** The half-width as it is shown. */
  readonly shown: number;
  /** Decimals of it and of the value beside it; below zero for tens, hundreds … */
  readonly decimals: number;
}

/**
 * A half-width rounded to `decimals`: up, unless the nearest hides less than a twentieth of it.
 *
 * @example
 * roundHalf(0.34, 1) // 0.4
 */
export function roundHalf(half: number, decimals: number): number {
  if (half === 0 || half === Number.POSITIVE_INFINITY) return half;
  const scale = 10 ** Math.abs(decimals);
  const steps = decimals > 0 ? half * scale : half / scale;
  const near = Math.round(steps);
  const count = near >= 0.95 * steps ? near : Math.ceil(steps);
  return decimals > 0 ? count / scale : count * scale;
}

/**
 * A half-width with the digits it deserves (JCGM 100:2008, 7.2.6, allows two at most, and rounding up): one, two where
 * the first is a 1; never shown more than a twentieth too narrow.
 *
 * @param half above 0, finite
 * @example
 * roundedHalf(0.34) // { shown: 0.4, decimals: 1 }
 */
export function roundedHalf(half: number): RoundedHalf {
  const power = Math.floor(Math.log10(half));
  const decimals = (half / 10 ** power < 1.95 ? 1 : 0) - power;
  return { shown: roundHalf(half, decimals), decimals };
}
