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
  // Plain indexing of one kind of array, four sums side by side: these loops are where a fit spends its time.
  const lower = new Float64Array(size * size);
  let logDeterminant = 0;
  for (let i = 0; i < size; i++) {
    const row = i * size;
    for (let j = 0; j <= i; j++) {
      const other = j * size;
      let sum = matrix[row + j] as number;
      let [b, c, d] = [0, 0, 0];
      let k = 0;
      for (; k + 3 < j; k += 4) {
        sum -= (lower[row + k] as number) * (lower[other + k] as number);
        b += (lower[row + k + 1] as number) * (lower[other + k + 1] as number);
        c += (lower[row + k + 2] as number) * (lower[other + k + 2] as number);
        d += (lower[row + k + 3] as number) * (lower[other + k + 3] as number);
      }
      for (; k < j; k++) b += (lower[row + k] as number) * (lower[other + k] as number);
      sum -= b + (c + d);
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
 * x of L x = b, V = L Lᵀ given by its factor: bᵀ V⁻¹ b is the sum of its squares.
 *
 * @param factor of V
 * @param b as many numbers as V has rows
 * @example half(cholesky(Float64Array.of(4, 0, 0, 9), 2), [4, 9]) // 2, 3
 */
export function half({ size, lower }: Cholesky, b: ArrayLike<number>): Float64Array {
  const x = Float64Array.from(b);
  for (let i = 0; i < size; i++) {
    const row = i * size;
    let sum = x[i] as number;
    let other = 0;
    let k = 0;
    for (; k + 1 < i; k += 2) {
      sum -= (lower[row + k] as number) * (x[k] as number);
      other += (lower[row + k + 1] as number) * (x[k + 1] as number);
    }
    if (k < i) sum -= (lower[row + k] as number) * (x[k] as number);
    x[i] = (sum - other) / (lower[row + i] as number);
  }
  return x;
}

/**
 * x of V x = b, V given by its factor.
 *
 * @param factor of V
 * @param b as many numbers as V has rows
 * @example solve(cholesky(Float64Array.of(4, 0, 0, 9), 2), [4, 9]) // 1, 1
 */
export function solve(factor: Cholesky, b: ArrayLike<number>): Float64Array {
  const { size, lower } = factor;
  const x = half(factor, b);
  for (let i = size - 1; i >= 0; i--) {
    const row = i * size;
    const own = (x[i] as number) / (lower[row + i] as number);
    x[i] = own;
    for (let k = 0; k < i; k++) x[k] = (x[k] as number) - (lower[row + k] as number) * own;
  }
  return x;
}

/**
 * Diagonal of V⁻¹, V given by its factor.
 *
 * @param factor of V
 * @example inverseDiagonal(cholesky(Float64Array.of(4, 0, 0, 9), 2)) // 0.25, 0.111
 */
export function inverseDiagonal({ size, lower }: Cholesky): Float64Array {
  // Rows of L⁻¹ one after the other; V⁻¹ is its transpose times itself.
  const inverse = new Float64Array(size * size);
  const squares = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    const row = i * size;
    for (let k = 0; k < i; k++) {
      const l = lower[row + k] as number;
      const other = k * size;
      for (let j = 0; j <= k; j++) inverse[row + j] = (inverse[row + j] as number) - l * (inverse[other + j] as number);
    }
    const own = 1 / (lower[row + i] as number);
    inverse[row + i] = 1;
    for (let j = 0; j <= i; j++) {
      const x = (inverse[row + j] as number) * own;
      inverse[row + j] = x;
      squares[j] = (squares[j] as number) + x * x;
    }
  }
  return squares;
}

/**
 * Products of every two of some lists of one length.
 *
 * @param lists the lists
 * @returns lists × lists numbers, row after row; of the upper triangle nothing is promised
 * @example products([Float64Array.of(1, 2), Float64Array.of(3, 4)])[2] // 11
 */
export function products(lists: readonly Float64Array[]): Float64Array {
  const n = lists.length;
  const all = new Float64Array(n * n);
  for (let i = 0; i < n; i += 2) {
    const a = lists[i] as Float64Array;
    const b = lists[i + 1] ?? a;
    const below = i + 1 < n;
    const length = a.length;
    // Two by two, so that each number is fetched half as often.
    for (let j = 0; j <= i; j += 2) {
      const c = lists[j] as Float64Array;
      const d = lists[j + 1] ?? c;
      let [ac, ad, bc, bd] = [0, 0, 0, 0];
      for (let k = 0; k < length; k++) {
        const x = a[k] as number;
        const y = b[k] as number;
        const u = c[k] as number;
        const v = d[k] as number;
        ac += x * u;
        ad += x * v;
        bc += y * u;
        bd += y * v;
      }
      all[i * n + j] = ac;
      if (j + 1 < n) all[i * n + j + 1] = ad;
      if (!below) continue;
      all[(i + 1) * n + j] = bc;
      if (j + 1 < n) all[(i + 1) * n + j + 1] = bd;
    }
  }
  return all;
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
