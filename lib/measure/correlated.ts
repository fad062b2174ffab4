import { exact } from "./measuredValue.ts";
import type { Dimension, Value } from "./types.ts";

const rounding = 1e-9;

/** Rows of L, lower triangular with L Lᵀ = the matrix, which may be singular. */
function lowerRoot(matrix: readonly (readonly number[])[]): number[][] {
  const root: number[][] = [];
  matrix.forEach((row, i) => {
    const made: number[] = [];
    for (let j = 0; j < i; j += 1) {
      const above = root[j] ?? [];
      const rest = (row[j] ?? 0) - dot(made, above, j);
      const pivot = above[j] ?? 0;
      if (pivot === 0 && Math.abs(rest) > Math.sqrt(rounding)) refuse();
      made.push(pivot === 0 ? 0 : rest / pivot);
    }
    const left = (row[i] ?? 0) - dot(made, made, i);
    if (left < -rounding * (i + 1)) refuse();
    made.push(left > rounding ? Math.sqrt(left) : 0);
    root.push(made);
  });
  return root;
}

function dot(a: readonly number[], b: readonly number[], length: number): number {
  let sum = 0;
  for (let k = 0; k < length; k += 1) sum += (a[k] ?? 0) * (b[k] ?? 0);
  return sum;
}

function refuse(): never {
  throw new RangeError(
    "invalid covariance: a correlation beyond what the others leave room for; a matrix without negative eigenvalues expected",
  );
}

function checked(covariance: readonly (readonly number[])[], size: number): number[] {
  if (covariance.length !== size || covariance.some((row) => row.length !== size)) {
    throw new RangeError(`invalid covariance: ${covariance.length} rows; ${size} rows of ${size} expected`);
  }
  const widths = covariance.map((row, i) => {
    const variance = row[i] ?? Number.NaN;
    if (!(variance >= 0 && variance < Number.POSITIVE_INFINITY))
      throw new RangeError(`invalid variance: ${variance}; 0 or more expected`);
    return Math.sqrt(variance);
  });
  covariance.forEach((row, i) => {
    row.forEach((entry, j) => {
      const scale = (widths[i] ?? 0) * (widths[j] ?? 0);
      const mirrored = covariance[j]?.[i] ?? Number.NaN;
      if (!(Math.abs(entry - mirrored) <= rounding * Math.max(scale, Number.MIN_VALUE))) {
        throw new RangeError(
          `invalid covariance: ${entry} and ${mirrored} across the diagonal; the same on both sides expected`,
        );
      }
      if (Math.abs(entry) > scale * (1 + rounding)) refuse();
    });
  });
  return widths;
}

/** A number that is to be one of several: of a plain kind where no dimension is told. */
export type ToCorrelate = number | { readonly value: number; readonly dimension?: Dimension };

/** Sets that were given no name of their own, so far. */
let unnamed = 0;

/**
 * Values that share sources in just such a way that they have the covariance given: readings that were taken together,
 * or the parameters that a fit leaves.
 *
 * @param values numbers in SI and what they measure. Values of this library will do: the covariance says all of their
 * doubt, so components and 95 % intervals that they had are not taken over
 * @param covariance in the products of their SI units; symmetric; may be singular
 * @param sourceId the sources are named "<sourceId> 1", "<sourceId> 2" …; nothing else should bear these names. Left
 * out, the set gets a name that no other has had since the program started: for values that are kept, or that come from
 * another thread, give one
 * @throws RangeError for a number that is not finite, and for a matrix of the wrong size, not symmetric, or with a
 * negative eigenvalue.
 * @example
 * const [a, b] = correlated([{ value: 1, dimension: {} }, { value: 2, dimension: {} }], [[1, 0.5], [0.5, 1]]);
 * covariance(a, b) // 0.5
 */
export function correlated(
  values: readonly ToCorrelate[],
  covariance: readonly (readonly number[])[],
  sourceId?: string,
): readonly Value[] {
  const given = values.map((each) => (typeof each === "number" ? exact(each) : exact(each.value, each.dimension)));
  const widths = checked(covariance, given.length);
  const scaled = covariance.map((row, i) =>
    row.map((entry, j) => {
      const scale = (widths[i] ?? 0) * (widths[j] ?? 0);
      return scale === 0 ? 0 : entry / scale;
    }),
  );
  const root = lowerRoot(scaled);
  const source = sourceId ?? `readings taken together, set ${++unnamed}: part`;
  return given.map(({ value, dimension }, i) => {
    const components = new Map<string, number>();
    (root[i] ?? []).forEach((entry, j) => {
      if (entry !== 0) components.set(`${source} ${j + 1}`, entry * (widths[i] ?? 0));
    });
    return { value, dimension, components };
  });
}
