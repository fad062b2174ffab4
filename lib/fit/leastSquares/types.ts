/** Residuals or parameters; a typed array will do. */
export type Numbers = ArrayLike<number>;

/** What is known of a parameter beside the residuals: a normal distribution. */
export interface Prior {
  readonly mean: number;
  /** Standard uncertainty, above 0, in the parameter's unit. */
  readonly uncertainty: number;
}

/**
 * How a residual counts: as its square, or less than that when it is large, so that a mis-read row cannot pull the fit.
 * `scale` is where "large" begins, in the unit of the residuals: about one and a half standard deviations of a sound one.
 */
export type Loss = "square" | { readonly kind: "soft L1" | "Huber"; readonly scale: number };

export interface LeastSquaresProblem {
  /** The residuals at some parameters, as many each time. One that is not finite marks parameters that are impossible. */
  readonly residuals: (parameters: readonly number[]) => Numbers;
  /** Where to start; the residuals must be finite there. */
  readonly start: readonly number[];
  /** A usual size of each parameter, above 0, for steps where it is zero: as large as its start, or 1, unless said. */
  readonly typical?: readonly number[];
  /** Least and greatest allowed value of each parameter; the residuals are asked nowhere else. */
  readonly bounds?: readonly (readonly [lower: number, upper: number])[];
  /** Priors, one place a parameter; undefined for none. */
  readonly priors?: readonly (Prior | undefined)[];
  readonly loss?: Loss;
  /**
   * The slopes of the residuals, a row a residual and a column a parameter. Differences are taken without it: two
   * calls of `residuals` a parameter and step.
   */
  readonly jacobian?: (parameters: readonly number[]) => ArrayLike<Numbers>;
  /** Standard deviation of one residual, if it is known (1 when each is divided by its own). Estimated unless said. */
  readonly sigma?: number;
  /** After so many steps the fit gives up: 1000 unless said. */
  readonly maxSteps?: number;
}

/** Why a fit stopped. The first three are convergence, the others are not. */
export type Reason =
  | "at a minimum: no small change of the parameters lowers the sum"
  | "at a minimum: rounding hides any further change"
  | "at a minimum: the residuals are nothing but rounding"
  | "undetermined: the residuals cannot tell some parameters apart"
  | "unfinished: out of steps"
  | "stuck: no step lowers the sum, yet it is not at a minimum"
  | "stuck: the residuals are not finite close by";

export interface LeastSquaresFit {
  readonly parameters: readonly number[];
  /** Of each parameter: infinite where the residuals say nothing of it. */
  readonly standardErrors: readonly number[];
  /** Sum of the squares of the residuals, priors and loss left out. */
  readonly residualSumOfSquares: number;
  /** √(sum / degrees of freedom), of the priors too: what one residual is off by. Infinite without degrees of freedom. */
  readonly residualStandardDeviation: number;
  /** Parameters × parameters: infinite where the residuals say nothing. */
  readonly covariance: readonly (readonly number[])[];
  /** Residuals and priors less parameters. */
  readonly degreesOfFreedom: number;
  readonly converged: boolean;
  readonly reason: Reason;
  /** The bound that a parameter lies on. Its standard error is what it would be without the bound. */
  readonly atBound: readonly ("lower" | "upper" | undefined)[];
  /** Steps that lowered the sum. */
  readonly steps: number;
  /** Calls of `residuals`. */
  readonly evaluations: number;
}
