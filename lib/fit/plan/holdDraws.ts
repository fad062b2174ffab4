import { halton, normalQuantile, type Seeded, seeded } from "./seeded.ts";
import type { HumanErrors } from "./types.ts";

/** What goes otherwise than planned in one hold. Shares are factors about 1; K; s. */
export interface HoldDraw {
  readonly heat: number;
  readonly slope: number;
  readonly feed: number;
  readonly cup: number;
  /** K that the thermometer reads too much all night; that the first reading reads too much besides. */
  readonly fixed: number;
  readonly first: number;
  /** s late with the start, and with the feed. */
  readonly startLate: number;
  readonly feedLate: number;
  /** Share of the heat over each step. */
  readonly gusts: Float64Array;
  /** K of each reading, s late in acting on it, factor of what is then poured. */
  readonly noise: Float64Array;
  readonly late: Float64Array;
  readonly pour: Float64Array;
  /** s late and factor of each planned pour. */
  readonly slugLate: Float64Array;
  readonly slug: Float64Array;
}

export interface DrawSize {
  readonly steps: number;
  readonly step: number;
  readonly readings: number;
  readonly readEvery: number;
  readonly slugs: number;
}

const primes = [2, 3, 5, 7, 11, 13, 17];

/**
 * Draws of what may go otherwise in a hold: what holds all night from Halton's sequence, shifted at random, so that few
 * draws fill it evenly; what comes and goes at random.
 *
 * @param n how many
 * @param seed of them; a greater number of draws begins with the same ones
 * @param doubts standard uncertainty of the heat and of k over water, as shares
 * @param rounding K, what the thermometer is read to
 * @param errors of people and instruments
 * @param size of the hold
 * @param from the first of them, counted from 0
 * @example holdDraws(300, 1, { heat: 0.05, slope: 0.07 }, 5 / 9, humanErrors, size).length // 300
 */
export function holdDraws(
  n: number,
  seed: number,
  doubts: { readonly heat: number; readonly slope: number },
  rounding: number,
  errors: HumanErrors,
  size: DrawSize,
  from = 0,
): readonly HoldDraw[] {
  const chance = seeded(seed);
  const shifts = primes.map(() => chance.even());
  return Array.from({ length: n }, (_, place) => {
    const i = from + place;
    const own = seeded((Math.imul(seed, 0x9e3779b9) ^ Math.imul(i + 1, 0x85ebca6b)) >>> 0);
    const even = (j: number) => (halton(i + 1, primes[j] ?? 2) + (shifts[j] ?? 0)) % 1 || 0.5;
    const z = (j: number) => normalQuantile(even(j));
    const noise = wandering(own, errors, size);
    const first = noise[0] ?? 0;
    return {
      heat: Math.max(0.2, 1 + doubts.heat * z(0)),
      slope: Math.max(0.2, 1 + doubts.slope * z(3)),
      feed: Math.max(0, 1 + errors.steadyFeed * z(2)),
      cup: Math.max(0, 1 + errors.cupAllNight * z(2)),
      fixed: errors.thermometerFixed * z(1),
      first: first + rounding * (even(6) - 0.5),
      startLate: errors.late * Math.abs(z(4)),
      feedLate: errors.late * Math.abs(z(5)),
      gusts: gusting(own, errors, size),
      noise: noise.subarray(1),
      late: lateness(own, errors, size.readings),
      pour: measured(own, errors, size.readings),
      slugLate: lateness(own, errors, size.slugs),
      slug: measured(own, errors, size.slugs),
    };
  });
}

// Plain loops: filling typed arrays by functions took a fifth of a whole plan.

/** s late, half-normal. */
function lateness(own: Seeded, errors: HumanErrors, n: number): Float64Array {
  const late = new Float64Array(n);
  for (let i = 0; i < n; i++) late[i] = errors.late * Math.abs(own.normal());
  return late;
}

/** Factors of measured pours. */
function measured(own: Seeded, errors: HumanErrors, n: number): Float64Array {
  const factors = new Float64Array(n);
  for (let i = 0; i < n; i++) factors[i] = Math.max(0, 1 + errors.eachPour * own.normal());
  return factors;
}

/** What a reading is off beyond the night's fixed error: its own, and what wanders; the first at the start. */
function wandering(own: Seeded, errors: HumanErrors, { readings, readEvery }: DrawSize): Float64Array {
  const keeps = Math.exp(-readEvery / errors.wanderTime);
  const news = Math.sqrt(1 - keeps * keeps);
  const off = new Float64Array(readings + 1);
  let wander = own.normal();
  for (let i = 0; i <= readings; i++) {
    off[i] = errors.wandering * wander + errors.eachReading * own.normal();
    wander = keeps * wander + news * own.normal();
  }
  return off;
}

/** Steps over which a gust is taken as even: 30 s are little beside the 250 s that gusts last. */
const evenSteps = 3;

/** Gusts: an Ornstein-Uhlenbeck walk. */
function gusting(own: Seeded, errors: HumanErrors, { steps, step }: DrawSize): Float64Array {
  const keeps = Math.exp((-evenSteps * step) / errors.gustTime);
  const news = Math.sqrt(1 - keeps * keeps);
  const gusts = new Float64Array(steps);
  let gust = own.normal();
  for (let i = 0; i < steps; i += evenSteps) {
    gust = keeps * gust + news * own.normal();
    const share = Math.max(0, 1 + errors.gusts * gust);
    for (let k = i; k < i + evenSteps && k < steps; k++) gusts[k] = share;
  }
  return gusts;
}
