import { cholesky, half } from "../../bath/cholesky.ts";
import type { Drawn } from "./drawsOf.ts";
import { type FactorName, factorNames } from "./factors.ts";
import type { Draw } from "./oneDraw.ts";

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
  const many = draws.length;
  // One row of numbers, a factor after the other: these loops are most of what this costs.
  const away = new Float64Array(size * many);
  for (const [k, name] of factorNames.entries()) {
    let mean = 0;
    for (let i = 0; i < many; i++) {
      const one = (draws[i] as Draw).factors[name];
      away[k * many + i] = one;
      mean += (weights[i] as number) * one;
    }
    for (let i = 0; i < many; i++) away[k * many + i] = (away[k * many + i] as number) - mean;
  }
  const matrix = new Float64Array(size * size);
  const weighed = new Float64Array(many);
  for (let k = 0; k < size; k++) {
    for (let i = 0; i < many; i++) weighed[i] = (weights[i] as number) * (away[k * many + i] as number);
    for (let j = 0; j <= k; j++) {
      let sum = 0;
      const row = j * many;
      for (let i = 0; i < many; i++) sum += (weighed[i] as number) * (away[row + i] as number);
      matrix[k * size + j] = sum;
    }
  }
  // A whisker, should a measurement leave a factor no room at all.
  for (let k = 0; k < size; k++) matrix[k * size + k] = (matrix[k * size + k] as number) + 1e-9;
  const root = cholesky(matrix, size);
  return (values) => {
    let mean = 0;
    let square = 0;
    const weighedValues = new Float64Array(many);
    for (let i = 0; i < many; i++) {
      const weight = weights[i] as number;
      if (weight === 0) continue;
      const y = values[i] as number;
      if (!Number.isFinite(y)) return new Map();
      mean += weight * y;
      square += weight * y * y;
      weighedValues[i] = weight * y;
    }
    const together = new Float64Array(size);
    for (let k = 0; k < size; k++) {
      let sum = 0;
      for (let i = 0; i < many; i++) sum += (weighedValues[i] as number) * (away[k * many + i] as number);
      together[k] = sum;
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
