import { at } from "./at.ts";
import { dot, nothing, solve } from "./cholesky.ts";
import type { Trial } from "./explanations.ts";
import { gustsBetween, type Solved } from "./gaussianLine.ts";
import { mixtureQuantile, type Normal } from "./mixtureQuantile.ts";
import type { Doubt } from "./waterLine.ts";

/** A number that hangs on the doubts in a straight line, near the point where the line was made straight. */
export interface Asked {
  /** At that point. */
  readonly value: number;
  /** By each doubt. */
  readonly by: Float64Array;
  /** By what the gusts have added by a time, s from the first boil: per s of fire. */
  readonly gust: { readonly by: number; readonly time: number };
  /** What one unit of each suspect adds by itself. */
  readonly direct: readonly number[];
}

export interface ReadOff {
  readonly median: number;
  readonly u: number;
  readonly low: number;
  readonly high: number;
  /** Standard uncertainty along each source, under the likeliest explanation. */
  readonly sources: ReadonlyMap<string, number>;
}

/**
 * A number under one noise, no suspect guilty: its mean, its variance, and how each row moves it.
 *
 * @param asked the number
 * @param solved the line solved for that noise
 * @example under(asked, solved).variance
 */
export function under(asked: Asked, solved: Solved) {
  const { straight, factor, weighed } = solved;
  const { rows, slopes, perKilogram, rate, start } = straight;
  const { by, time } = asked.gust;
  const q = new Float64Array(rows.length);
  for (let i = 0; i < rows.length; i++) {
    const row = rows[i] as (typeof rows)[number];
    let sum = dot(slopes[i] as Float64Array, asked.by);
    if (row.kind === "reading" && by !== 0) {
      sum += by * -at(perKilogram, i) * rate * gustsBetween(row.time - start, time);
    }
    q[i] = sum;
  }
  const gain = solve(factor, q);
  const own = dot(asked.by, asked.by) + (by === 0 ? 0 : by ** 2 * gustsBetween(time, time));
  return {
    mean: asked.value - dot(asked.by, straight.z) + dot(q, weighed),
    variance: Math.max(1e-12, own - dot(q, gain)),
    gain,
  };
}

/**
 * Reads a number off the weighed explanations: middle, doubt, 95 % interval and where the doubt comes from.
 *
 * @param asked the number
 * @param trial the explanations
 * @param doubts the line's doubts, for their sources
 * @param stretch factor on the interval about the middle
 * @example readOff(asked, trial, line.doubts, 1.03).low
 */
export function readOff(asked: Asked, trial: Trial, doubts: readonly Doubt[], stretch: number): ReadOff {
  const base = trial.solved.map((solved) => under(asked, solved));
  const parts: Normal[] = trial.explanations.map(({ guilty, noise, weight, amounts, covariance }) => {
    const { mean, variance, gain } = base[noise] as (typeof base)[number];
    const m = guilty.length;
    const effect = Float64Array.from(
      guilty,
      (a) => (asked.direct[a] ?? 0) - dot(trial.suspects[a]?.column ?? nothing, gain),
    );
    let extra = 0;
    for (let i = 0; i < m; i++)
      for (let j = 0; j < m; j++) extra += at(effect, i) * at(effect, j) * at(covariance, i * m + j);
    return { weight, mean: mean + dot(effect, amounts), sd: Math.sqrt(variance + extra) };
  });
  const median = mixtureQuantile(parts, 0.5);
  const low = median + stretch * (mixtureQuantile(parts, 0.025) - median);
  const high = median + stretch * (mixtureQuantile(parts, 0.975) - median);
  const weights = parts.reduce((sum, part) => sum + part.weight, 0);
  const mean = parts.reduce((sum, part) => sum + part.weight * part.mean, 0) / weights;
  const u = Math.sqrt(
    parts.reduce((sum, part) => sum + part.weight * (part.sd ** 2 + (part.mean - mean) ** 2), 0) / weights,
  );
  return { median, u, low, high, sources: sourcesOf(asked, trial, doubts, u) };
}

/**
 * Standard uncertainty of a number under one noise, no suspect guilty: quick, for the many points of a course.
 *
 * @param asked the number
 * @param solved the line solved for that noise
 * @example doubtUnder(asked, solved)
 */
export function doubtUnder(asked: Asked, solved: Solved): number {
  return Math.sqrt(under(asked, solved).variance);
}

function sourcesOf(asked: Asked, trial: Trial, doubts: readonly Doubt[], u: number): ReadonlyMap<string, number> {
  const likely = trial.explanations[0];
  const solved = trial.solved[likely?.noise ?? 0] as Solved;
  const { straight } = solved;
  const { gain } = under(asked, solved);
  const squares = new Map<string, number>();
  const signs = new Map<string, number>();
  const add = (source: string, entry: number) => {
    squares.set(source, (squares.get(source) ?? 0) + entry * entry);
    signs.set(source, (signs.get(source) ?? 0) + entry);
  };
  doubts.forEach(({ source }, k) => {
    let through = 0;
    straight.slopes.forEach((by, i) => {
      through += at(by, k) * at(gain, i);
    });
    add(source, at(asked.by, k) - through);
  });
  // The rest of the variance: gusts and the readings' own noise, through the gains.
  let noise = 0;
  let gust = asked.gust.by ** 2 * gustsBetween(asked.gust.time, asked.gust.time);
  const n = straight.rows.length;
  straight.rows.forEach((a, i) => {
    const own = at(solved.factor.lower, 0) >= 0 ? a.extra + (a.kind === "reading" ? solved.sigma ** 2 : 0) : 0;
    if (a.kind === "fact") {
      add(a.source, at(gain, i) * Math.sqrt(a.extra));
      return;
    }
    noise += at(gain, i) ** 2 * own;
    const k = -at(straight.perKilogram, i) * straight.rate;
    gust -= 2 * asked.gust.by * at(gain, i) * k * gustsBetween(a.time - straight.start, asked.gust.time);
    for (let j = 0; j < n; j++) {
      const b = straight.rows[j];
      if (b?.kind !== "reading") continue;
      const kb = -at(straight.perKilogram, j) * straight.rate;
      gust += at(gain, i) * at(gain, j) * k * kb * at(straight.gusts, i * n + j);
      noise += at(gain, i) * at(gain, j) * at(straight.wander, i * n + j);
    }
  });
  add("readings", Math.sqrt(Math.max(0, noise)));
  add("fire", Math.sqrt(Math.max(0, gust)));
  const told = [...squares.values()].reduce((sum, v) => sum + v, 0);
  const missing = u * u - told;
  if (missing > 1e-6 * u * u) squares.set("what was not written down", missing);
  const scale = missing < 0 && told > 0 ? u / Math.sqrt(told) : 1;
  return new Map(
    [...squares]
      .filter(([, v]) => v > 0)
      .map(([source, v]) => [source, scale * Math.sqrt(v) * ((signs.get(source) ?? 1) < 0 ? -1 : 1)]),
  );
}
