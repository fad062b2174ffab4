import { cholesky, half } from "../../bath/cholesky.ts";
import type { Drawn } from "./drawsOf.ts";
import { type FactorName, factorNames } from "./factors.ts";

/** What a width comes from: signed standard uncertainties along factors, and what goes with none of them. */
export type Sources = ReadonlyMap<FactorName | "rest", number>;

/**
 * Splits the spread of answers over the factors of their draws. Measuring has tied the factors to each other: each stands
 * here for what it tells beyond those before it, so that they are independent. Bends are left over as the rest.
 *
 * @param drawn the draws
 * @returns for one number a draw, in what the numbers are in; empty where one that counts is not finite
 * @example sourcesOf(worlds)(worlds.draws.map(({ boilOff }) => boilOff)).get("build") // kg/s
 */
export function sourcesOf({ draws, weights }: Drawn): (values: readonly number[]) => Sources {
  const size = factorNames.length;
  const factors = draws.map((one) => Float64Array.from(factorNames, (name) => one.factors[name]));
  const means = new Float64Array(size);
  factors.forEach((row, i) => {
    for (let k = 0; k < size; k++) means[k] = (means[k] as number) + (weights[i] as number) * (row[k] as number);
  });
  const matrix = new Float64Array(size * size);
  factors.forEach((row, i) => {
    for (let k = 0; k < size; k++) {
      row[k] = (row[k] as number) - (means[k] as number);
      const part = (weights[i] as number) * (row[k] as number);
      for (let j = 0; j <= k; j++) matrix[k * size + j] = (matrix[k * size + j] as number) + part * (row[j] as number);
    }
  });
  // A whisker, should a measurement leave a factor no room at all.
  for (let k = 0; k < size; k++) matrix[k * size + k] = (matrix[k * size + k] as number) + 1e-9;
  const root = cholesky(matrix, size);
  return (values) => {
    let mean = 0;
    let square = 0;
    const together = new Float64Array(size);
    for (const [i, y] of values.entries()) {
      const weight = weights[i] as number;
      if (weight === 0) continue;
      if (!Number.isFinite(y)) return new Map();
      mean += weight * y;
      square += weight * y * y;
      const row = factors[i] as Float64Array;
      for (let k = 0; k < size; k++) together[k] = (together[k] as number) + weight * y * (row[k] as number);
    }
    const parts = half(root, together);
    const explained = parts.reduce((sum, one) => sum + one * one, 0);
    const rest = Math.sqrt(Math.max(0, square - mean * mean - explained));
    return new Map<FactorName | "rest", number>([
      ...factorNames.map((name, k) => [name, parts[k] as number] as const),
      ["rest", rest],
    ]);
  };
}
