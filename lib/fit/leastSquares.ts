import { type Checked, checkProblem } from "./leastSquares/checkProblem.ts";
import { compensatedSum } from "./leastSquares/compensated.ts";
import { covarianceOf } from "./leastSquares/covarianceOf.ts";
import { type Descent, descend } from "./leastSquares/descend.ts";
import { weighed } from "./leastSquares/linearise.ts";
import { type Rows, rowsOf } from "./leastSquares/rows.ts";
import type { LeastSquaresFit, LeastSquaresProblem, Reason } from "./leastSquares/types.ts";

/** Lengths of the first step, in lengths of the parameters: a fit that ends badly is begun again, more timidly. */
const firstRadii = [3, 0.1];

const outOfSteps: Reason = "unfinished: out of steps";

/**
 * The parameters that make the sum of the squares of some residuals least, with their standard errors.
 *
 * A trust-region Levenberg-Marquardt method: parameters are weighed by their largest slopes so far, steps come from the
 * singular values of the Jacobian, bounds are kept inside the step. Slopes are central differences relative to each
 * parameter unless they are handed in, so the residuals must be smooth. Units are the caller's. The standard errors
 * come from the slopes at the end and the residual sum over degrees of freedom (or `sigma`); they hold for small,
 * independent errors. It finds the minimum downhill of the start, which need not be the lowest.
 *
 * Always look at `converged`: a fit that is not says why in `reason`.
 *
 * Sources: J. J. Moré, "The Levenberg-Marquardt algorithm: implementation and theory" (1978); D. M. Bates and
 * D. G. Watts, "A relative offset orthogonality convergence criterion for nonlinear least squares" (1981); P. J. Huber,
 * "Robust Statistics" (1981); all from memory. Checked against NIST's Statistical Reference Datasets.
 *
 * @throws RangeError if the start is not finite or not inside its bounds, if residuals are too few, or not finite at
 * the start, or if an option is no use.
 * @example
 * const times = [0, 60, 120, 180];
 * const kelvins = [415.1, 416.0, 417.1, 418.0];
 * const fit = leastSquares({
 *   residuals: ([start, rate]) => times.map((time, i) => start + rate * time - kelvins[i]),
 *   start: [400, 0.01],
 * });
 * fit.converged // true
 * fit.parameters[1].toFixed(5) // "0.01633"
 * fit.standardErrors[1].toFixed(5) // "0.00047"
 */
export function leastSquares(problem: LeastSquaresProblem): LeastSquaresFit {
  const checked = checkProblem(problem);
  const rows = rowsOf(problem, checked);
  let best: { fit: LeastSquaresFit; cost: number } | undefined;
  for (const radius of firstRadii) {
    const descent = descend(rows, checked, radius);
    const fit = fitAt(descent, problem, checked, rows);
    const cost = rows.cost(descent.place.r);
    if (fit.converged || !best || cost < best.cost) best = { fit, cost };
    if (fit.converged || fit.reason === outOfSteps) break;
  }
  return { ...(best as { fit: LeastSquaresFit }).fit, evaluations: rows.calls() };
}

/** What a descent came to, with its standard errors and its verdict. */
function fitAt({ place, reason, steps }: Descent, { sigma }: LeastSquaresProblem, checked: Checked, rows: Rows) {
  const { p, r, slopes } = place;
  const degreesOfFreedom = r.length - p.length;
  const deviation = degreesOfFreedom > 0 ? Math.sqrt(squaresOf(rows, r) / degreesOfFreedom) : Infinity;
  const { covariance, isDetermined } =
    slopes.length > 0
      ? covarianceOf(weighed(place, rows, 0), slopes, (sigma ?? deviation) ** 2)
      : { covariance: p.map(() => p.map(() => Infinity)), isDetermined: true };
  const standardErrors = p.map((_, j) => Math.sqrt(covariance[j]?.[j] as number));
  const isAtMinimum = reason.startsWith("at a minimum");
  const isUndetermined = reason !== outOfSteps && !isDetermined;
  return {
    parameters: p,
    standardErrors,
    residualSumOfSquares: compensatedSum(rows.residuals, (i) => (r[i] as number) ** 2),
    residualStandardDeviation: deviation,
    covariance,
    degreesOfFreedom,
    converged: isAtMinimum && !isUndetermined,
    reason: isUndetermined ? "undetermined: the residuals cannot tell some parameters apart" : reason,
    atBound: p.map((value, j) =>
      value === checked.lower[j] ? "lower" : value === checked.upper[j] ? "upper" : undefined,
    ),
    steps,
    evaluations: rows.calls(),
  } satisfies LeastSquaresFit;
}

/** Sum of squares of rows, those of residuals as their loss pulls them: of which the variance is an estimate. */
function squaresOf({ weighing, residuals }: Rows, r: Float64Array): number {
  return compensatedSum(r.length, (i) => {
    const each = r[i] as number;
    return (weighing && i < residuals ? each * weighing.pull(each) : each) ** 2;
  });
}
