import type { LeastSquaresProblem, Prior } from "./types.ts";

/** A problem with everything said outright. */
export interface Checked {
  readonly start: readonly number[];
  readonly typical: readonly number[];
  readonly lower: readonly number[];
  readonly upper: readonly number[];
  readonly priors: readonly { readonly place: number; readonly prior: Prior }[];
  readonly maxSteps: number;
}

/** As large as the start; 1 for a start of zero, or so small that its share would be nothing. */
const usualSize = (start: number) => (Math.abs(start) > 1e-150 ? Math.abs(start) : 1);

const nth = (what: string, j: number) => `${what} of parameter ${j + 1}`;

function needLength(what: string, list: { readonly length: number } | undefined, count: number): void {
  if (list && list.length !== count)
    throw new RangeError(`invalid ${what}: ${list.length} of them; one for each of the ${count} parameters`);
}

function needAbove0(what: string, value: number): number {
  if (value > 0 && Number.isFinite(value)) return value;
  throw new RangeError(`invalid ${what}: ${value}; a number above 0 is allowed`);
}

/** Fills in what was left out and refuses what cannot be fitted. */
export function checkProblem(problem: LeastSquaresProblem): Checked {
  const start = [...problem.start];
  const count = start.length;
  if (count === 0) throw new RangeError("missing start: no parameters; at least 1 number");
  needLength("typical sizes", problem.typical, count);
  needLength("bounds", problem.bounds, count);
  needLength("priors", problem.priors, count);
  const lower = start.map((_, j) => problem.bounds?.[j]?.[0] ?? -Infinity);
  const upper = start.map((_, j) => problem.bounds?.[j]?.[1] ?? Infinity);
  start.forEach((value, j) => {
    const [low, high] = [lower[j] as number, upper[j] as number];
    if (!Number.isFinite(value)) throw new RangeError(`invalid ${nth("start", j)}: ${value}; a finite number`);
    if (!(low < high))
      throw new RangeError(`invalid ${nth("bounds", j)}: ${low} to ${high}; the lower is below the upper`);
    if (value < low || value > high)
      throw new RangeError(`invalid ${nth("start", j)}: ${value}; its bounds are ${low} to ${high}`);
  });
  const typical = start.map((value, j) => needAbove0(nth("typical size", j), problem.typical?.[j] ?? usualSize(value)));
  const priors = [...(problem.priors ?? [])].flatMap((prior, place) => (prior ? [{ place, prior }] : []));
  for (const { place, prior } of priors) {
    if (!Number.isFinite(prior.mean))
      throw new RangeError(`invalid ${nth("prior mean", place)}: ${prior.mean}; a finite number`);
    needAbove0(nth("prior uncertainty", place), prior.uncertainty);
  }
  if (problem.loss && problem.loss !== "square") needAbove0("scale of the loss", problem.loss.scale);
  if (problem.sigma !== undefined) needAbove0("sigma", problem.sigma);
  const { maxSteps = 5000 } = problem;
  if (!Number.isInteger(maxSteps) || maxSteps < 1)
    throw new RangeError(`invalid maxSteps: ${maxSteps}; a whole number of 1 or more`);
  return { start, typical, lower, upper, priors, maxSteps };
}
