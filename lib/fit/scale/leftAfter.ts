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
  const weight = (i: number) => weights[i] as number;
  const mean = (list: readonly number[]) => list.reduce((sum, x, i) => sum + weight(i) * x, 0);
  const centred = (list: readonly number[]) => {
    const middle = mean(list);
    return list.map((x) => x - middle);
  };
  const together = (a: readonly number[], b: readonly number[]) => mean(a.map((x, i) => x * (b[i] as number)));
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
