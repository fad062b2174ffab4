/** Random numbers that come again with the same seed. */
export interface Seeded {
  /** 0 to 1, never either. */
  even(): number;
  /** Mean 0, standard deviation 1. */
  normal(): number;
}

/** As many normal numbers, evenly likely: looked up, they cost a tenth of working them out; none is beyond 3.9. */
const places = 8192;
let looked: Float64Array | undefined;

function normals(): Float64Array {
  const table = new Float64Array(places);
  let squares = 0;
  for (let i = 0; i < places; i++) {
    const z = normalQuantile((i + 0.5) / places);
    table[i] = z;
    squares += z * z;
  }
  const sd = Math.sqrt(squares / places);
  for (let i = 0; i < places; i++) table[i] = (table[i] as number) / sd;
  return table;
}

/**
 * Numbers that look random (mulberry32, from memory).
 *
 * @param seed any whole number
 * @example seeded(1).even() === seeded(1).even() // true
 */
export function seeded(seed: number): Seeded {
  looked ??= normals();
  const table = looked;
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return (t ^ (t >>> 14)) >>> 0;
  };
  // The upper 13 bits choose one of 8,192.
  return { even: () => (next() + 0.5) / 4294967296, normal: () => table[next() >>> 19] as number };
}

/**
 * Standard normal quantile: Acklam's rational approximation (from memory), good to 1.2e-9 of the value.
 *
 * @param p above 0, below 1
 * @example normalQuantile(0.975) // 1.95996
 */
export function normalQuantile(p: number): number {
  if (p < 0.02425) return tail(Math.sqrt(-2 * Math.log(p)));
  if (p > 1 - 0.02425) return -tail(Math.sqrt(-2 * Math.log(1 - p)));
  const q = p - 0.5;
  const r = q * q;
  const above =
    ((((-39.69683028665376 * r + 220.9460984245205) * r - 275.9285104469687) * r + 138.357751867269) * r -
      30.66479806614716) *
      r +
    2.506628277459239;
  const below =
    ((((-54.47609879822406 * r + 161.5858368580409) * r - 155.6989798598866) * r + 66.80131188771972) * r -
      13.28068155288572) *
      r +
    1;
  return (above * q) / below;
}

function tail(q: number): number {
  const above =
    ((((-0.007784894002430293 * q - 0.3223964580411365) * q - 2.400758277161838) * q - 2.549732539343734) * q +
      4.374664141464968) *
      q +
    2.938163982698783;
  const below =
    (((0.007784695709041462 * q + 0.3224671290700398) * q + 2.445134137142996) * q + 3.754408661907416) * q + 1;
  return above / below;
}

/**
 * One coordinate of Halton's sequence, which fills the unit interval evenly.
 *
 * @param i from 1
 * @param base a prime
 * @example halton(3, 2) // 0.75
 */
export function halton(i: number, base: number): number {
  let result = 0;
  let part = 1;
  for (let n = i; n > 0; n = Math.floor(n / base)) {
    part /= base;
    result += part * (n % base);
  }
  return result;
}
