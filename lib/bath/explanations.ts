import { at } from "./at.ts";
import { cholesky, dot, nothing, solve } from "./cholesky.ts";
import type { Solved } from "./gaussianLine.ts";

/**
 * One thing that may have gone wrong in a log: a pour that nobody wrote down, a reading that was misread, or a fire
 * that was changed without a word.
 */
export interface Suspect {
  readonly kind: "pour" | "misread" | "fire" | "burner";
  /** Row of a misread reading; number of the gap for a pour. */
  readonly index: number;
  /** Two suspects of one place exclude each other. */
  readonly place?: number;
  /** What one unit (kg, K) of it does to each row. */
  readonly column: Float64Array;
  readonly mean: number;
  readonly u: number;
  /** Pours that it stands for. */
  readonly count: number;
  /** ln of the odds before the readings speak. */
  readonly lnOdds: number;
  /** s: when the burner was changed, and kg of steam that one unit of it makes by a time. */
  readonly time?: number;
  readonly steam?: (until: number) => number;
}

/** One explanation of the log: which suspects are guilty, under which noise, and how likely that is. */
export interface Explanation {
  readonly guilty: readonly number[];
  readonly noise: number;
  /** 0..1; all explanations together make 1. */
  readonly weight: number;
  /** How much of each guilty suspect, in kg or K, with covariance row after row. */
  readonly amounts: Float64Array;
  readonly covariance: Float64Array;
}

/** What the explanations share: for each noise, V⁻¹ of every suspect's column and the products between them. */
export interface Trial {
  readonly solved: readonly Solved[];
  readonly suspects: readonly Suspect[];
  readonly weighed: readonly (readonly Float64Array[])[];
  readonly explanations: readonly Explanation[];
  /** ln of how likely the log is under all of them together. */
  readonly lnEvidence: number;
}

interface Evidence {
  readonly ln: number;
  readonly amounts: Float64Array;
  readonly covariance: Float64Array;
}

/**
 * ln of how likely it is that a maker who wrote some pours forgot some more, against none: beta-binomial with one in
 * sixteen forgotten before anything is known of the maker.
 */
function lnForgotten(unwritten: number, written: number): number {
  let ln = 0;
  for (let k = 1; k <= unwritten; k++) ln += Math.log(k / (written + 15 + k));
  return ln;
}

/**
 * Weighs every explanation of a log that the readings leave likely, unwritten pours and misread readings against each
 * other: taking outliers away first would swallow the pours.
 *
 * @param solved the line solved for each noise that is thought possible, with ln of its prior
 * @param suspects what may have gone wrong
 * @param written number of pours written
 * @param most explanations looked at
 * @example explain([{ solved, lnPrior: 0 }], [], 4, 400).explanations.length // 1
 */
export function explain(
  solved: readonly { readonly solved: Solved; readonly lnPrior: number }[],
  suspects: readonly Suspect[],
  written: number,
  most: number,
): Trial {
  const noises = solved.map(({ solved: s }) => s);
  const weighed = noises.map((s) => suspects.map(({ column }) => solve(s.factor, column)));
  const products = noises.map((_, k) =>
    suspects.map(({ column }) => suspects.map((_, j) => dot(column, weighed[k]?.[j] ?? nothing))),
  );
  const pulls = noises.map((s) => suspects.map(({ column }) => dot(column, s.weighed)));

  const evidence = (guilty: readonly number[], k: number): Evidence => {
    const m = guilty.length;
    const base = (noises[k] as Solved).logEvidence + (solved[k]?.lnPrior ?? 0);
    if (m === 0) return { ln: base, amounts: new Float64Array(0), covariance: new Float64Array(0) };
    const precision = new Float64Array(m * m);
    const rest = new Float64Array(m);
    let ln = base;
    guilty.forEach((a, i) => {
      const suspect = suspects[a] as Suspect;
      let through = 0;
      guilty.forEach((b, j) => {
        const g = products[k]?.[a]?.[b] ?? 0;
        precision[i * m + j] = g;
        through += g * (suspects[b] as Suspect).mean;
      });
      precision[i * m + i] = at(precision, i * m + i) + 1 / suspect.u ** 2;
      const pull = pulls[k]?.[a] ?? 0;
      rest[i] = pull - through;
      ln += suspect.mean * (pull - through / 2) - Math.log(suspect.u);
    });
    const factor = cholesky(precision, m);
    const shift = solve(factor, rest);
    ln += 0.5 * dot(rest, shift) - 0.5 * factor.logDeterminant;
    const covariance = new Float64Array(m * m);
    for (let i = 0; i < m; i++) {
      const unit = new Float64Array(m);
      unit[i] = 1;
      covariance.set(solve(factor, unit), i * m);
    }
    return { ln, amounts: shift.map((x, i) => x + (suspects[at(guilty, i)]?.mean ?? 0)), covariance };
  };

  const prior = (guilty: readonly number[]) => {
    let ln = 0;
    let unwritten = 0;
    for (const a of guilty) {
      const suspect = suspects[a] as Suspect;
      ln += suspect.lnOdds;
      if (suspect.kind === "pour") unwritten += suspect.count;
    }
    return ln + lnForgotten(unwritten, written);
  };

  const crowded = (guilty: readonly number[]) => {
    const places = guilty.flatMap((a) => suspects[a]?.place ?? []);
    return new Set(places).size < places.length;
  };

  const tried = new Map<string, { guilty: readonly number[]; ln: number; by: Evidence[] }>();
  const attempt = (guilty: readonly number[]) => {
    const key = guilty.join();
    const known = tried.get(key);
    if (known) return known;
    const by = noises.map((_, k) => evidence(guilty, k));
    const ln = prior(guilty) + logSum(by.map((e) => e.ln));
    const entry = { guilty, ln, by };
    tried.set(key, entry);
    return entry;
  };
  let best = attempt([]).ln;
  const open = [attempt([])];
  const done = new Set<string>();
  while (open.length > 0 && tried.size < most) {
    open.sort((a, b) => b.ln - a.ln);
    const next = open.shift();
    if (!next || next.ln < best - 5) break;
    const key = next.guilty.join();
    if (done.has(key)) continue;
    done.add(key);
    for (let a = 0; a < suspects.length && tried.size < most; a++) {
      const guilty = next.guilty.includes(a)
        ? next.guilty.filter((b) => b !== a)
        : [...next.guilty, a].sort((x, y) => x - y);
      if (tried.has(guilty.join()) || guilty.length > 8 || crowded(guilty)) continue;
      const entry = attempt(guilty);
      best = Math.max(best, entry.ln);
      open.push(entry);
    }
  }
  const kept = [...tried.values()].filter((entry) => entry.ln > best - 9);
  const all = logSum(kept.map((entry) => entry.ln));
  const explanations = kept
    .flatMap(({ guilty, by }) =>
      by.map((e, noise) => ({
        guilty,
        noise,
        weight: Math.exp(prior(guilty) + e.ln - all),
        amounts: e.amounts,
        covariance: e.covariance,
      })),
    )
    .filter(({ weight }) => weight > 1e-6)
    .sort((a, b) => b.weight - a.weight);
  return { solved: noises, suspects, weighed, explanations, lnEvidence: all };
}

/** ln of the sum of exponentials, without overflow. */
export function logSum(list: readonly number[]): number {
  const high = Math.max(...list);
  return high + Math.log(list.reduce((sum, x) => sum + Math.exp(x - high), 0));
}
