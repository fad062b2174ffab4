const primes = [2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83, 89];

/**
 * Evenly spread points of the unit cube that a seed makes: Halton's sequence with the digits of each place shuffled.
 * The first points stay the same when more are asked for.
 *
 * @param dimensions 1 to 24
 * @param seed whole number
 * @returns the point of a number from 0 on; every coordinate above 0 and below 1
 * @throws RangeError for another number of dimensions
 * Source: J. H. Halton, Numer. Math. 2 (1960) 84; A. B. Owen, "A randomized Halton algorithm in R" (2017); from memory.
 * @example
 * const point = quasiRandom(2, 1);
 * [0, 1, 2, 3].map((i) => Math.floor(2 * point(i)[0])).sort().join("") // "0011"
 */
export function quasiRandom(dimensions: number, seed: number): (index: number) => Float64Array {
  if (!(dimensions >= 1 && dimensions <= primes.length)) {
    throw new RangeError(`invalid dimensions: ${dimensions}; 1 to ${primes.length}`);
  }
  const even = evenNumbers(seed);
  const places = primes.slice(0, dimensions).map((base) => {
    const count = Math.ceil(32 / Math.log2(base));
    return Array.from({ length: count }, () => shuffled(base, even));
  });
  const starts = places.map(() => even());
  return (index) =>
    Float64Array.from(places, (digits, j) => {
      const base = primes[j] as number;
      let left = index;
      let part = 1;
      let sum = 0;
      for (const digit of digits) {
        part /= base;
        sum += part * (digit[left % base] as number);
        left = Math.floor(left / base);
      }
      return Math.min(1 - 1e-9, Math.max(1e-9, sum + part * (starts[j] as number)));
    });
}

/** Numbers of 0..1 that look random, the same for the same seed. */
function evenNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

function shuffled(size: number, even: () => number): readonly number[] {
  const list = Array.from({ length: size }, (_, i) => i);
  for (let i = size - 1; i > 0; i--) {
    const j = Math.floor(even() * (i + 1));
    [list[i], list[j]] = [list[j] as number, list[i] as number];
  }
  return list;
}

/**
 * Standard normal number that a share of all lie below.
 *
 * @param share above 0 and below 1
 * Source: Abramowitz and Stegun, 26.2.23 (from memory); off by less than 4.5e-4.
 * @example normalOf(0.975) // 1.96
 */
export function normalOf(share: number): number {
  const t = Math.sqrt(-2 * Math.log(Math.min(share, 1 - share)));
  const x = t - (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
  return share < 0.5 ? -x : x;
}
