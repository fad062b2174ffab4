import { type Cholesky, cholesky, dot, products, solve } from "./cholesky.ts";
import { decays } from "./decays.ts";
import { gustCovariance } from "./gustCovariance.ts";
import type { WaterLine } from "./waterLine.ts";

// Of this file, not of at.ts: only so do all engines work it in where a fit spends its time.
const at = (list: Float64Array, i: number): number => list[i] as number;

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
  /** What is left of each row: rows minus line. */
  readonly off: Float64Array;
  /** What is left of each row when the guess is taken back: rows minus line, plus slopes times guess. */
  readonly r: Float64Array;
  /** Rows × doubts. */
  readonly slopes: readonly Float64Array[];
  /** Covariance of the fire's gusts up to the rows, s², and of the thermometer's wandering, K², rows × rows. */
  readonly gusts: Float64Array;
  readonly wander: Float64Array;
  /** s²: covariance of the gusts up to each row with those up to another time, s after the first boil. */
  readonly gustsWith: (time: number) => Float64Array;
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
  { u: 0.22, tau: 2400 },
] as const;

/** s²: covariance of the gusts between two times after the first boil. */
export function gustsBetween(s: number, t: number): number {
  let sum = 0;
  for (const { u, tau } of gusts) sum += u * u * gustCovariance(s, t, tau);
  return sum;
}

/** What the times of the rows alone say: gusts and wandering between each two. */
function between(rows: readonly Row[], start: number): Pick<Straight, "gusts" | "wander" | "gustsWith"> {
  const n = rows.length;
  const since = Float64Array.from(rows, ({ time }) => time - start);
  const blowing = gusts.map(({ u, tau }) => ({ u, tau, fall: decays(since, tau) }));
  const gustsWith = (time: number) => {
    const list = new Float64Array(n);
    for (const { u, tau, fall } of blowing) {
      const own = Math.exp(-Math.abs(time) / tau);
      for (let i = 0; i < n; i++)
        list[i] = at(list, i) + u * u * gustCovariance(at(since, i), time, tau, at(fall.left, i), own);
    }
    return list;
  };
  const all = new Float64Array(n * n);
  const wander = new Float64Array(n * n);
  for (let i = 0; i < n; i++) all.set(gustsWith(at(since, i)), i * n);
  for (const { u, tau } of wanderings) {
    const { between: fallen } = decays(since, tau);
    for (let i = 0; i < n; i++)
      for (let j = 0; j <= i; j++) wander[i * n + j] = at(wander, i * n + j) + u * u * fallen(i, j);
  }
  for (let i = 0; i < n; i++) for (let j = 0; j < i; j++) wander[j * n + i] = at(wander, i * n + j);
  return { gusts: all, wander, gustsWith };
}

/** What the line makes of the rows at a guess of its doubts. */
export type Seen = Pick<Straight, "z" | "off" | "r" | "slopes" | "perKilogram">;

/**
 * What the line makes of rows at z, and how that hangs on the doubts there.
 *
 * @param line the line
 * @param rows what was seen
 * @param z a guess of the doubts
 * @example seenAt(line, rows, new Float64Array(line.doubts.length)).off // K
 */
export function seenAt(line: WaterLine, rows: readonly Row[], z: Float64Array): Seen {
  const off = new Float64Array(rows.length);
  const r = new Float64Array(rows.length);
  const perKilogram = new Float64Array(rows.length);
  const slopes = rows.map((row, i) => {
    if (row.kind === "fact") {
      const { value, by } = row.predict(z);
      off[i] = row.y - value;
      r[i] = at(off, i) + dot(by, z);
      return by;
    }
    const { T, by, perKilogram: k } = line.readingAt(z, row.time, row.order);
    off[i] = row.y - T;
    r[i] = at(off, i) + dot(by, z);
    perKilogram[i] = k;
    return by;
  });
  return { z, off, r, slopes, perKilogram };
}

/**
 * Makes the line straight about a guess of its doubts.
 *
 * @param line the line
 * @param rows what was seen
 * @param seen what the line makes of the rows there
 * @param start s, first boil
 * @param previous the same rows made straight about another guess
 * @example straighten(line, rows, seenAt(line, rows, new Float64Array(line.doubts.length)), 0)
 */
export function straighten(
  line: WaterLine,
  rows: readonly Row[],
  seen: Seen,
  start: number,
  previous?: Straight,
): Straight {
  const n = rows.length;
  const rate = line.rate(seen.z);
  const { gusts, wander, gustsWith } = previous ?? between(rows, start);
  const shared = products(seen.slopes);
  const read = Float64Array.from(rows, (row, i) => (row.kind === "reading" ? at(seen.perKilogram, i) * rate : 0));
  for (let i = 0; i < n; i++) {
    const row = rows[i] as Row;
    if (row.kind === "reading")
      for (let j = 0; j <= i; j++) {
        if (rows[j]?.kind !== "reading") continue;
        const k = i * n + j;
        shared[k] = at(shared, k) + at(read, i) * at(read, j) * at(gusts, k) + at(wander, k);
      }
    shared[i * n + i] = at(shared, i * n + i) + row.extra;
  }
  return { rows, ...seen, gusts, wander, gustsWith, shared, rate, start };
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
    v[i * n + i] = at(v, i * n + i) + (row.kind === "reading" ? sigma * sigma : 0) + (loose?.[i] ?? 0);
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
