import { dot, nothing } from "../../bath/cholesky.ts";
import type { FittedLine } from "../../bath/fitLine.ts";
import type { Under } from "../../bath/readOff.ts";
import type { ParameterAsked } from "./parametersOf.ts";

// Of this file, not of at.ts: only so do all engines work it in where a fit spends its time.
const at = (list: Float64Array, i: number): number => list[i] as number;

/**
 * Covariance of the parameters over all explanations of the log, of the ln where a parameter cannot be below 0.
 *
 * @param asked the parameters, as questions
 * @param fitted the fit
 * @param under each of them under each noise
 * @example covarianceOf(asked, fitted, asked.map((one) => underEach(one.asked, fitted.trial.solved)))[0][0] // variance of the first
 */
export function covarianceOf(
  asked: readonly ParameterAsked[],
  { trial, straight }: FittedLine,
  under: readonly (readonly Under[])[],
): readonly (readonly number[])[] {
  const n = asked.length;
  const qs = asked.map((one) => Float64Array.from(straight.slopes, (by) => dot(by, one.asked.by)));
  const bases = trial.solved.map((_, noise) => {
    const read = under.map((each) => each[noise] as Under);
    const own = asked.map((one, i) => {
      const q = qs[i] as Float64Array;
      return asked.map((other, j) => {
        return dot(one.asked.by, other.asked.by) - dot(q, read[j]?.gain ?? nothing) + (i === j ? 1e-15 : 0);
      });
    });
    return { read, own };
  });
  const mean = new Float64Array(n);
  const second = Array.from({ length: n }, () => new Float64Array(n));
  let whole = 0;
  for (const { guilty, noise, weight, amounts, covariance } of trial.explanations) {
    if (weight < 1e-4) continue;
    whole += weight;
    const base = bases[noise];
    if (!base) continue;
    const effects = base.read.map(({ gain }) =>
      Float64Array.from(guilty, (a) => -dot(trial.suspects[a]?.column ?? nothing, gain)),
    );
    const means = Float64Array.from(base.read, (read, i) => read.mean + dot(effects[i] ?? nothing, amounts));
    const m = guilty.length;
    for (let i = 0; i < n; i++) {
      mean[i] = at(mean, i) + weight * at(means, i);
      for (let j = 0; j < n; j++) {
        let own = base.own[i]?.[j] ?? 0;
        for (let a = 0; a < m; a++)
          for (let b = 0; b < m; b++)
            own += at(effects[i] ?? nothing, a) * at(effects[j] ?? nothing, b) * at(covariance, a * m + b);
        const row = second[i] as Float64Array;
        row[j] = at(row, j) + weight * (own + at(means, i) * at(means, j));
      }
    }
  }
  return second.map((row, i) =>
    Array.from(row, (_, j) => {
      const here = at(row, j) / whole - (at(mean, i) * at(mean, j)) / whole ** 2;
      const there = at(second[j] ?? nothing, i) / whole - (at(mean, i) * at(mean, j)) / whole ** 2;
      return (here + there) / 2;
    }),
  );
}
