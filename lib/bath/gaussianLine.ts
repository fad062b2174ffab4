import { at } from "./at.ts";
import { type Cholesky, cholesky, dot, solve } from "./cholesky.ts";
import { gustCovariance } from "./gustCovariance.ts";
import type { WaterLine } from "./waterLine.ts";

/** One thing that was seen: a temperature, or another fact, such as what the feed jug lost. */
export type Row = Reading | Fact;

export interface Reading {
  readonly kind: "reading";
  readonly time: number;
  readonly order: number;
  /** K. */
  readonly y: number;
  /** K² beside the noise that all readings share. */
  readonly extra: number;
}

export interface Fact {
  readonly kind: "fact";
  readonly source: string;
  readonly time: number;
  readonly order: number;
  /** In a unit of its own. */
  readonly y: number;
  /** Variance, in that unit. */
  readonly extra: number;
  /** What the line makes of it, and how that hangs on the doubts. */
  readonly predict: (z: Float64Array) => { readonly value: number; readonly by: Float64Array };
  /** What one kg more adds to it that went in at a time without being written. */
  readonly perPour: (poured: number) => number;
}

/** The line made straight about one guess of its doubts. */
export interface Straight {
  readonly rows: readonly Row[];
  readonly z: Float64Array;
  /** What is left of each row when the guess is taken back: rows minus line, plus slopes times guess. */
  readonly r: Float64Array;
  /** Rows × doubts. */
  readonly slopes: readonly Float64Array[];
  /** Covariance of the fire's gusts up to the rows, s², and of the thermometer's wandering, K², rows × rows. */
  readonly gusts: Float64Array;
  readonly wander: Float64Array;
  /** Covariance without the readings' own noise, rows × rows. */
  readonly shared: Float64Array;
  /** K for each kg more water, for each row. */
  readonly perKilogram: Float64Array;
  /** kg/s now. */
  readonly rate: number;
  readonly start: number;
}

export interface Solved {
  readonly straight: Straight;
  readonly factor: Cholesky;
  /** V⁻¹ r. */
  readonly weighed: Float64Array;
  readonly logEvidence: number;
  readonly sigma: number;
}

/** Gusts of the fire: 7 % for some minutes, 10 % for half an hour (a judgement). */
const gusts = [
  { u: 0.07, tau: 200 },
  { u: 0.1, tau: 1500 },
] as const;
/** K: the thermometer's slow wandering, of some minutes and of most of an hour (a tip that is moved), and s how slow. */
const wanderings = [
  { u: 0.083, tau: 480 },
  { u: 0.15, tau: 2400 },
] as const;

/** s²: covariance of the gusts between two times after the first boil. */
export function gustsBetween(s: number, t: number): number {
  let sum = 0;
  for (const { u, tau } of gusts) sum += u * u * gustCovariance(s, t, tau);
  return sum;
}

/** What the times of the rows alone say: gusts and wandering between each two. */
function between(rows: readonly Row[], start: number): Pick<Straight, "gusts" | "wander"> {
  const n = rows.length;
  const gusts = new Float64Array(n * n);
  const wander = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      const s = (rows[i] as Row).time;
      const t = (rows[j] as Row).time;
      const k = i * n + j;
      gusts[k] = gustsBetween(s - start, t - start);
      wander[k] = wanderings.reduce((sum, { u, tau }) => sum + u * u * Math.exp(-Math.abs(s - t) / tau), 0);
      gusts[j * n + i] = at(gusts, k);
      wander[j * n + i] = at(wander, k);
    }
  return { gusts, wander };
}

/**
 * Makes the line straight about z.
 *
 * @param line the line
 * @param rows what was seen
 * @param z a guess of the doubts
 * @param start s, first boil
 * @param previous the same rows made straight about another guess
 * @example straighten(line, rows, new Float64Array(line.doubts.length), 0)
 */
export function straighten(
  line: WaterLine,
  rows: readonly Row[],
  z: Float64Array,
  start: number,
  previous?: Straight,
): Straight {
  const n = rows.length;
  const r = new Float64Array(n);
  const perKilogram = new Float64Array(n);
  const slopes = rows.map((row, i) => {
    if (row.kind === "fact") {
      const { value, by } = row.predict(z);
      r[i] = row.y - value + dot(by, z);
      return by;
    }
    const { T, by, perKilogram: k } = line.readingAt(z, row.time, row.order);
    r[i] = row.y - T + dot(by, z);
    perKilogram[i] = k;
    return by;
  });
  const rate = line.rate(z);
  const { gusts, wander } = previous ?? between(rows, start);
  const shared = new Float64Array(n * n);
  rows.forEach((a, i) => {
    for (let j = 0; j <= i; j++) {
      const b = rows[j] as Row;
      let v = dot(slopes[i] as Float64Array, slopes[j] as Float64Array);
      if (a.kind === "reading" && b.kind === "reading") {
        v += at(perKilogram, i) * at(perKilogram, j) * rate * rate * at(gusts, i * n + j) + at(wander, i * n + j);
      }
      if (i === j) v += a.extra;
      shared[i * n + j] = v;
    }
  });
  return { rows, z, r, slopes, gusts, wander, shared, perKilogram, rate, start };
}

/**
 * The likeliest doubts for one noise of the readings, and how likely the log is under it.
 *
 * @param straight the line made straight
 * @param sigma K, standard deviation of one reading
 * @param loose K² more for single rows, where a reading may be wrong
 * @example solveStraight(straight, 0.33).logEvidence
 */
export function solveStraight(straight: Straight, sigma: number, loose?: ArrayLike<number>): Solved {
  const n = straight.rows.length;
  const v = Float64Array.from(straight.shared);
  straight.rows.forEach((row, i) => {
    v[i * n + i] = at(v, i * n + i) + (row.kind === "reading" ? sigma * sigma : 0) + (loose ? at(loose, i) : 0);
  });
  const factor = cholesky(v, n);
  const weighed = solve(factor, straight.r);
  const logEvidence = -0.5 * (dot(straight.r, weighed) + factor.logDeterminant);
  return { straight, factor, weighed, logEvidence, sigma };
}

/** The doubts that a solution makes likeliest: z = slopesᵀ V⁻¹ r. */
export function likeliest({ straight, weighed }: Solved): Float64Array {
  const z = new Float64Array(straight.z.length);
  straight.slopes.forEach((by, i) => {
    for (let k = 0; k < z.length; k++) z[k] = at(z, k) + at(by, k) * at(weighed, i);
  });
  return z;
}
