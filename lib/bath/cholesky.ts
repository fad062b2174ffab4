import { at } from "./at.ts";

/** Lower triangle L of a symmetric positive matrix V = L Lᵀ, row after row. */
export interface Cholesky {
  readonly size: number;
  readonly lower: Float64Array;
  /** ln of the determinant of V. */
  readonly logDeterminant: number;
}

/**
 * Cholesky factor of a symmetric positive matrix.
 *
 * @param matrix size × size numbers, row after row; only the lower triangle is read
 * @param size rows, 1 or more
 * @throws RangeError where the matrix is not positive
 * @example cholesky(Float64Array.of(4, 0, 0, 9), 2).logDeterminant // 3.5835
 */
export function cholesky(matrix: Float64Array, size: number): Cholesky {
  const lower = new Float64Array(size * size);
  let logDeterminant = 0;
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = at(matrix, i * size + j);
      for (let k = 0; k < j; k++) sum -= at(lower, i * size + k) * at(lower, j * size + k);
      if (i === j) {
        if (!(sum > 0))
          throw new RangeError(`invalid covariance: ${sum} left in row ${i}; a positive matrix is needed`);
        lower[i * size + i] = Math.sqrt(sum);
        logDeterminant += Math.log(sum);
      } else lower[i * size + j] = sum / at(lower, j * size + j);
    }
  }
  return { size, lower, logDeterminant };
}

/**
 * x of V x = b, V given by its factor.
 *
 * @param factor of V
 * @param b as many numbers as V has rows
 * @example solve(cholesky(Float64Array.of(4, 0, 0, 9), 2), [4, 9]) // 1, 1
 */
export function solve({ size, lower }: Cholesky, b: ArrayLike<number>): Float64Array {
  const x = Float64Array.from(b);
  for (let i = 0; i < size; i++) {
    let sum = at(x, i);
    for (let k = 0; k < i; k++) sum -= at(lower, i * size + k) * at(x, k);
    x[i] = sum / at(lower, i * size + i);
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = at(x, i);
    for (let k = i + 1; k < size; k++) sum -= at(lower, k * size + i) * at(x, k);
    x[i] = sum / at(lower, i * size + i);
  }
  return x;
}

/** Sum of the products of two lists of one length. */
export function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += at(a, i) * at(b, i);
  return sum;
}
