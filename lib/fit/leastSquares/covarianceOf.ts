import { lengthsOf } from "./linearise.ts";
import { type Columns, triangular } from "./triangular.ts";
import { negligible, spectrumOf } from "./trustRegion.ts";

export interface Covariance {
  readonly covariance: number[][];
  /** Whether every parameter can be told. */
  readonly isDetermined: boolean;
}

/**
 * variance · (AᵀA)⁻¹ of weighed slopes A, from the singular values of R. With plain slopes J beside them (a robust
 * loss), variance · (AᵀA)⁻¹ JᵀJ (AᵀA)⁻¹ (Huber 1981). Infinite for parameters that the slopes cannot tell.
 */
export function covarianceOf(weighed: Columns, plain: Columns, variance: number): Covariance {
  const lengths = lengthsOf(weighed);
  const all = weighed.map((_, j) => j);
  const triangle = weighed.map((column, j) => column.map((each) => each / (lengths[j] as number)));
  triangular(triangle, new Float64Array(triangle[0]?.length ?? 0));
  const { values, right } = spectrumOf(triangle, all);
  const limit = negligible * (values[0] ?? 0);
  const told = values.flatMap((value, k) => (value > limit ? [k] : []));
  const lostWith = values.flatMap((value, k) => (value > limit ? [] : [k]));
  const direction = (j: number, k: number) => right.get(j, k) / (lengths[j] as number);
  /** (AᵀA)⁻¹, of what can be told. */
  const inverse = all.map((a) =>
    all.map((b) => told.reduce((sum, k) => sum + (direction(a, k) * direction(b, k)) / (values[k] as number) ** 2, 0)),
  );
  const middle = weighed === plain ? inverse : sandwich(inverse, plain);
  // A direction takes part in a parameter if it is more than rounding there.
  const lost = (j: number, k: number) => (Math.abs(right.get(j, k)) > 1e-6 ? right.get(j, k) : 0);
  const covariance = all.map((a) =>
    all.map((b) => {
      const infinite = lostWith.reduce((sum, k) => sum + lost(a, k) * lost(b, k), 0);
      return infinite === 0 ? (middle[a]?.[b] as number) * variance : infinite * Infinity;
    }),
  );
  return { covariance, isDetermined: lostWith.length === 0 };
}

function sandwich(inverse: readonly (readonly number[])[], plain: Columns): number[][] {
  const rows = plain[0]?.length ?? 0;
  const spread = inverse.map((row) => {
    const product = new Float64Array(rows);
    plain.forEach((column, j) => {
      for (let i = 0; i < rows; i += 1)
        product[i] = (product[i] as number) + (column[i] as number) * (row[j] as number);
    });
    return product;
  });
  return spread.map((a) => spread.map((b) => a.reduce((sum, each, i) => sum + each * (b[i] as number), 0)));
}
