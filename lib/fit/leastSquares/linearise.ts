import type { Linear } from "./boundedStep.ts";
import type { Checked } from "./checkProblem.ts";
import type { Rows } from "./rows.ts";
import { type Columns, triangular } from "./triangular.ts";

/** Where a fit stands: parameters, rows there, and their slopes. */
export interface Place {
  readonly p: readonly number[];
  readonly r: Float64Array;
  readonly slopes: Columns;
}

const leastBend = 0.1;

/**
 * The slopes as the loss weighs them: by the root of half the cost's curvature. That of a far residual is nearly 0;
 * `least` of its pull keeps a step finite.
 */
export function weighed({ slopes, r }: Place, { weighing, residuals }: Rows, least = leastBend): Columns {
  if (!weighing) return slopes;
  const roots = rootsOf(r, weighing, residuals, least);
  return slopes.map((column) => column.map((each, i) => each * (roots[i] as number)));
}

function rootsOf(r: Float64Array, weighing: NonNullable<Rows["weighing"]>, residuals: number, least: number) {
  return r.map((each, i) =>
    i < residuals ? Math.sqrt(Math.max(weighing.bend(each), least * weighing.pull(each))) : 1,
  );
}

/** Length of each column; 1 for a column of zeros. */
export function lengthsOf(columns: Columns): Float64Array {
  return Float64Array.from(columns, (column) => {
    let square = 0;
    for (const each of column) square += each * each;
    return Math.sqrt(square) || 1;
  });
}

/** The rows made linear, in parameters times their scales, and reduced to a triangle. */
export function linearise(place: Place, rows: Rows, checked: Checked, columns: Columns, scales: Float64Array): Linear {
  const { p, r } = place;
  const { weighing, residuals } = rows;
  const scaled = columns.map((column, j) => {
    const by = 1 / (scales[j] as number);
    return column.map((each) => each * by);
  });
  const roots = weighing && rootsOf(r, weighing, residuals, leastBend);
  const right = r.map((each, i) =>
    roots && i < residuals ? (each * weighing.pull(each)) / (roots[i] as number) : each,
  );
  triangular(scaled, right);
  const q = right.slice(0, p.length);
  const gradient = Float64Array.from(scaled, (column, j) => {
    let sum = 0;
    for (let i = 0; i <= j; i += 1) sum += (column[i] as number) * (q[i] as number);
    return sum;
  });
  const room = (limits: readonly number[]) =>
    Float64Array.from(limits, (limit, j) => (limit - (p[j] as number)) * (scales[j] as number));
  return { triangle: scaled, q, gradient, down: room(checked.lower), up: room(checked.upper), spectra: new Map() };
}
