import type { Checked } from "./checkProblem.ts";
import { compensatedSum } from "./compensated.ts";
import { differences } from "./differences.ts";
import { type Weighing, weighingOf } from "./losses.ts";
import type { Columns } from "./triangular.ts";
import type { LeastSquaresProblem } from "./types.ts";

/** The residuals with the priors below them, each prior as one more residual. */
export interface Rows {
  /** How many of the rows are residuals. */
  readonly residuals: number;
  readonly first: Float64Array;
  readonly weighing: Weighing | undefined;
  /** All rows at some parameters; undefined where one is not finite. */
  readonly at: (p: readonly number[]) => Float64Array | undefined;
  readonly slopesAt: (p: readonly number[], r: Float64Array) => Columns | undefined;
  /** What the fit makes least. */
  readonly cost: (r: Float64Array) => number;
  /** By how much the cost falls from some rows to others, with the digits that a difference of sums would lose. */
  readonly fall: (from: Float64Array, to: Float64Array) => number;
  readonly calls: () => number;
}

/** Makes rows out of a problem; refuses one with too few residuals, or that cannot be worked out at its start. */
export function rowsOf(problem: LeastSquaresProblem, checked: Checked): Rows {
  const { start, priors } = checked;
  const sigma = problem.sigma ?? 1;
  let calls = 0;
  const ask = (p: readonly number[]) => {
    calls += 1;
    return problem.residuals([...p]);
  };
  const atStart = ask(start);
  const residuals = atStart.length;
  const count = residuals + priors.length;
  if (count < start.length) {
    const found = priors.length > 0 ? `${residuals} and ${priors.length} priors` : `${residuals}`;
    throw new RangeError(`missing residuals: ${found}; ${start.length} parameters need at least as many`);
  }
  const withPriors = (p: readonly number[], list: ArrayLike<number>): Float64Array | undefined => {
    if (list.length !== residuals)
      throw new RangeError(`invalid residuals: ${list.length} of them; ${residuals}, as at the start`);
    const rows = new Float64Array(count);
    rows.set(list);
    priors.forEach(({ place, prior }, k) => {
      rows[residuals + k] = (sigma * ((p[place] as number) - prior.mean)) / prior.uncertainty;
    });
    return rows.every(Number.isFinite) ? rows : undefined;
  };
  const first = withPriors(start, atStart);
  if (!first) {
    const bad = Array.from(atStart).findIndex((each) => !Number.isFinite(each));
    throw new RangeError(`invalid start: residual ${bad + 1} is ${atStart[bad]} there; all must be finite`);
  }
  const at = (p: readonly number[]) => withPriors(p, ask(p));
  const weighing = weighingOf(problem.loss ?? "square");
  const cost = (r: Float64Array) =>
    compensatedSum(count, (i) => {
      const each = r[i] as number;
      return weighing && i < residuals ? weighing.cost(each) : each * each;
    });
  const fall = (from: Float64Array, to: Float64Array) =>
    compensatedSum(count, (i) => {
      const [a, b] = [from[i] as number, to[i] as number];
      return weighing && i < residuals ? weighing.cost(a) - weighing.cost(b) : (a - b) * (a + b);
    });
  const { jacobian } = problem;
  const slopesAt = jacobian
    ? (p: readonly number[]) => handedIn(jacobian([...p]), residuals, count, p, checked, sigma)
    : (p: readonly number[], r: Float64Array) => differences({ rowsAt: at, ...checked }, p, r);
  return { residuals, first, weighing, at, slopesAt, cost, fall, calls: () => calls };
}

/** The slopes that were handed in, with those of the priors. */
function handedIn(
  slopes: ArrayLike<ArrayLike<number>>,
  residuals: number,
  count: number,
  p: readonly number[],
  { priors }: Checked,
  sigma: number,
): Columns | undefined {
  if (slopes.length !== residuals || Array.from(slopes).some((row) => row.length !== p.length))
    throw new RangeError(`invalid jacobian: ${slopes.length} rows; ${residuals} rows of ${p.length} slopes`);
  const columns = p.map((_, j) => {
    const column = new Float64Array(count);
    for (let i = 0; i < residuals; i += 1) column[i] = slopes[i]?.[j] as number;
    return column;
  });
  priors.forEach(({ place, prior }, k) => {
    (columns[place] as Float64Array)[residuals + k] = sigma / prior.uncertainty;
  });
  return columns.every((column) => column.every(Number.isFinite)) ? columns : undefined;
}
