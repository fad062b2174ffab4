import { Matrix, SingularValueDecomposition } from "ml-matrix";
import type { Columns } from "./triangular.ts";

/** Singular values below this share of the largest tell nothing: differences carry some ten digits. */
export const negligible = 1e-9;

/** R of a scaled Jacobian, some columns of it, in its singular directions. */
export interface Spectrum {
  readonly columns: readonly number[];
  readonly values: readonly number[];
  /** Rows of R × directions. */
  readonly left: Matrix;
  /** Columns × directions. */
  readonly right: Matrix;
}

/** The singular value decomposition of the columns that are named, of a triangular R. */
export function spectrumOf(triangle: Columns, columns: readonly number[]): Spectrum {
  const matrix = new Matrix(triangle.length, columns.length);
  columns.forEach((column, j) => {
    for (let i = 0; i <= column; i += 1) matrix.set(i, j, triangle[column]?.[i] as number);
  });
  const { diagonal, leftSingularVectors, rightSingularVectors } = new SingularValueDecomposition(matrix);
  return { columns, values: diagonal, left: leftSingularVectors, right: rightSingularVectors };
}

export interface Trusted {
  readonly step: Float64Array;
  readonly damping: number;
}

/**
 * The step s, no longer than the radius, that makes |R s + q| least; one entry for each column of the spectrum. The
 * damping that keeps it that short is found by Newton's method on 1/|s| (Moré 1978).
 */
export function trustedStep({ values, left, right }: Spectrum, q: Float64Array, radius: number): Trusted {
  const count = values.length;
  const along = new Float64Array(count);
  for (let k = 0; k < count; k += 1)
    for (let i = 0; i < left.rows; i += 1) along[k] = (along[k] as number) + left.get(i, k) * (q[i] as number);
  const least = negligible * (values[0] ?? 0);
  const damped = (k: number, by: number) => {
    const value = values[k] as number;
    return value <= least ? 0 : ((along[k] as number) * value) / (value * value + by);
  };
  let damping = 0;
  for (let round = 0; round < 50; round += 1) {
    let square = 0;
    let slope = 0;
    for (let k = 0; k < count; k += 1) {
      const part = damped(k, damping) ** 2;
      square += part;
      if (part > 0) slope += part / ((values[k] as number) ** 2 + damping);
    }
    const length = Math.sqrt(square);
    if (length <= radius * 1.05 && (damping === 0 || length >= radius * 0.95)) break;
    const next = damping + ((length - radius) / radius) * (square / slope);
    // It comes from the left; where it oversteps, the step is merely a little short. A radius of 0 has no damping.
    if (!(next > damping) || !Number.isFinite(next)) break;
    damping = next;
  }
  const step = new Float64Array(count);
  for (let k = 0; k < count; k += 1) {
    const size = damped(k, damping);
    for (let j = 0; j < count; j += 1) step[j] = (step[j] as number) - right.get(j, k) * size;
  }
  return { step, damping };
}

/** -(RᵀR + damping)⁻¹ of a slope. */
export function dampedDescent({ values, right }: Spectrum, slope: Float64Array, damping: number): Float64Array {
  const count = values.length;
  const least = negligible * (values[0] ?? 0);
  const result = new Float64Array(count);
  for (let k = 0; k < count; k += 1) {
    const value = values[k] as number;
    if (value <= least) continue;
    let along = 0;
    for (let j = 0; j < count; j += 1) along += right.get(j, k) * (slope[j] as number);
    along /= value * value + damping;
    for (let j = 0; j < count; j += 1) result[j] = (result[j] as number) - right.get(j, k) * along;
  }
  return result;
}
