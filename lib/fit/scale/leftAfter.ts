import { cholesky, half } from "../../bath/cholesky.ts";

/**
 * Share of the width of some numbers that is left once readings that go with them were taken: the root of one less the
 * share of the variance that a straight line through the readings explains.
 *
 * @param values what is asked, one for each draw
 * @param columns what each reading would say in each draw
 * @param noises standard deviation by which each reading is off
 * @param weights of the draws, summing to 1
 * @returns 0..1
 * @example leftAfter([1, 2, 3], [[1, 2, 3]], [0.1], [1 / 3, 1 / 3, 1 / 3]) // 0.1216
 */
export function leftAfter(
  values: readonly number[],
  columns: readonly (readonly number[])[],
  noises: readonly number[],
  weights: ArrayLike<number>,
): number {
  const many = values.length;
  const weight = Float64Array.from(weights);
  const centred = (list: readonly number[]) => {
    const away = Float64Array.from(list);
    let middle = 0;
    for (let i = 0; i < many; i++) middle += (weight[i] as number) * (away[i] as number);
    for (let i = 0; i < many; i++) away[i] = (away[i] as number) - middle;
    return away;
  };
  const together = (a: Float64Array, b: Float64Array) => {
    let sum = 0;
    for (let i = 0; i < many; i++) sum += (weight[i] as number) * (a[i] as number) * (b[i] as number);
    return sum;
  };
  const y = centred(values);
  const x = columns.map(centred);
  const size = x.length;
  const matrix = new Float64Array(size * size);
  x.forEach((a, i) => {
    x.forEach((b, j) => {
      matrix[i * size + j] = together(a, b) + (i === j ? (noises[i] as number) ** 2 : 0);
    });
  });
  const explained = half(
    cholesky(matrix, size),
    x.map((a) => together(a, y)),
  ).reduce((sum, one) => sum + one * one, 0);
  const variance = together(y, y);
  return variance > 0 ? Math.sqrt(Math.max(0, 1 - explained / variance)) : 1;
}
