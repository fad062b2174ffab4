import { dot, half, nothing, solve } from "./cholesky.ts";
import type { Trial } from "./explanations.ts";
import { gustsBetween, type Solved, type Straight } from "./gaussianLine.ts";
import { mixtureQuantile, type Normal } from "./mixtureQuantile.ts";
import type { Doubt } from "./waterLine.ts";

// Of this file, not of at.ts: only so do all engines work it in where a fit spends its time.
const at = (list: Float64Array, i: number): number => list[i] as number;

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

/** How far each row hangs together with a number: their covariance. */
function along({ rows, slopes, perKilogram, rate, gustsWith }: Straight, { by: doubts, gust }: Asked): Float64Array {
  const q = Float64Array.from(slopes, (own) => dot(own, doubts));
  if (gust.by === 0) return q;
  const blown = gustsWith(gust.time);
  for (let i = 0; i < q.length; i++)
    if (rows[i]?.kind === "reading") q[i] = at(q, i) - gust.by * at(perKilogram, i) * rate * at(blown, i);
  return q;
}

/** Variance of a number before any row is known. */
function alone({ by, gust }: Asked): number {
  return dot(by, by) + (gust.by === 0 ? 0 : gust.by ** 2 * gustsBetween(gust.time, gust.time));
}

/** A number under one noise, no suspect guilty. */
export interface Under {
  readonly mean: number;
  readonly variance: number;
  /** How each row moves it. */
  readonly gain: Float64Array;
}

/**
 * A number under each noise that was thought of, no suspect guilty: its mean, its variance, and how each row moves it.
 *
 * @param asked the number
 * @param solved the line solved for each noise, straight about one guess
 * @example underEach(asked, trial.solved)[0].variance
 */
export function underEach(asked: Asked, solved: readonly Solved[]): readonly Under[] {
  const [first] = solved;
  if (!first) return [];
  const { straight } = first;
  const q = along(straight, asked);
  const own = alone(asked);
  const middle = asked.value - dot(asked.by, straight.z);
  return solved.map(({ factor, weighed }) => {
    const gain = solve(factor, q);
    return { mean: middle + dot(q, weighed), variance: Math.max(1e-12, own - dot(q, gain)), gain };
  });
}

/**
 * Mean and variance of a number under one noise, no suspect guilty: quick, for the many points of a course.
 *
 * @param asked the number
 * @param solved the line solved for that noise
 * @example under(asked, solved).variance
 */
export function under(asked: Asked, { straight, factor, weighed }: Solved): Omit<Under, "gain"> {
  const q = along(straight, asked);
  const seen = half(factor, q);
  return {
    mean: asked.value - dot(asked.by, straight.z) + dot(q, weighed),
    variance: Math.max(1e-12, alone(asked) - dot(seen, seen)),
  };
}

/**
 * Reads a number off the weighed explanations: middle, doubt, 95 % interval and where the doubt comes from.
 *
 * @param asked the number
 * @param trial the explanations
 * @param doubts the line's doubts, for their sources
 * @param stretch factor on the interval about the middle
 * @param base the number under each noise, where it is at hand
 * @example readOff(asked, trial, line.doubts, 1.03).low
 */
export function readOff(
  asked: Asked,
  trial: Trial,
  doubts: readonly Doubt[],
  stretch: number,
  base: readonly Under[] = underEach(asked, trial.solved),
): ReadOff {
  const parts: Normal[] = trial.explanations.map(({ guilty, noise, weight, amounts, covariance }) => {
    const { mean, variance, gain } = base[noise] as Under;
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
  return { median, u, low, high, sources: sourcesOf(asked, trial, doubts, u, base) };
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

function sourcesOf(
  asked: Asked,
  trial: Trial,
  doubts: readonly Doubt[],
  u: number,
  base: readonly Under[],
): ReadonlyMap<string, number> {
  const likely = trial.explanations[0]?.noise ?? 0;
  const { straight, sigma } = trial.solved[likely] as Solved;
  const { gain } = base[likely] as Under;
  const { rows, slopes, perKilogram, rate } = straight;
  const squares = new Map<string, number>();
  const signs = new Map<string, number>();
  const add = (source: string, entry: number) => {
    squares.set(source, (squares.get(source) ?? 0) + entry * entry);
    signs.set(source, (signs.get(source) ?? 0) + entry);
  };
  const through = new Float64Array(doubts.length);
  slopes.forEach((by, i) => {
    const g = at(gain, i);
    for (let k = 0; k < through.length; k++) through[k] = at(through, k) + at(by, k) * g;
  });
  doubts.forEach(({ source }, k) => {
    add(source, at(asked.by, k) - at(through, k));
  });
  // The rest of the variance: gusts and the readings' own noise, through the gains.
  let noise = 0;
  let gust = asked.gust.by ** 2 * gustsBetween(asked.gust.time, asked.gust.time);
  const n = rows.length;
  const blown = asked.gust.by === 0 ? gain : straight.gustsWith(asked.gust.time);
  const read = gain.map((g, i) => (rows[i]?.kind === "reading" ? g : 0));
  const burnt = read.map((g, i) => -g * at(perKilogram, i) * rate);
  rows.forEach((a, i) => {
    if (a.kind === "fact") {
      add(a.source, at(gain, i) * Math.sqrt(a.extra));
      return;
    }
    noise += at(gain, i) ** 2 * (a.extra + sigma ** 2);
    gust -= 2 * asked.gust.by * at(burnt, i) * at(blown, i);
    gust += at(burnt, i) * dot(straight.gusts.subarray(i * n, (i + 1) * n), burnt);
    noise += at(read, i) * dot(straight.wander.subarray(i * n, (i + 1) * n), read);
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
