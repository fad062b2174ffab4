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
  // Plain indexing of one kind of array: these three loops are where a fit spends its time.
  const lower = new Float64Array(size * size);
  let logDeterminant = 0;
  for (let i = 0; i < size; i++) {
    const row = i * size;
    for (let j = 0; j <= i; j++) {
      const other = j * size;
      let sum = matrix[row + j] as number;
      for (let k = 0; k < j; k++) sum -= (lower[row + k] as number) * (lower[other + k] as number);
      if (i === j) {
        if (!(sum > 0))
          throw new RangeError(`invalid covariance: ${sum} left in row ${i}; a positive matrix is needed`);
        lower[row + i] = Math.sqrt(sum);
        logDeterminant += Math.log(sum);
      } else lower[row + j] = sum / (lower[other + j] as number);
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
    const row = i * size;
    let sum = x[i] as number;
    for (let k = 0; k < i; k++) sum -= (lower[row + k] as number) * (x[k] as number);
    x[i] = sum / (lower[row + i] as number);
  }
  for (let i = size - 1; i >= 0; i--) {
    const row = i * size;
    const own = (x[i] as number) / (lower[row + i] as number);
    x[i] = own;
    for (let k = 0; k < i; k++) x[k] = (x[k] as number) - (lower[row + k] as number) * own;
  }
  return x;
}

/**
 * Sum of the products of two lists of one length.
 *
 * @param a numbers
 * @param b as many
 * @example dot(Float64Array.of(1, 2), Float64Array.of(3, 4)) // 11
 */
export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

/** Stands for a list that is not there. */
export const nothing = new Float64Array(0);
