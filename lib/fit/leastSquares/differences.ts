import type { Columns } from "./triangular.ts";

/** Cube root of the rounding unit: where the error of a central difference is least. */
const relativeStep = Math.cbrt(Number.EPSILON);

/** A change of the residuals by this share of the greatest is mostly rounding. */
const drowned = 1e-12;

const greatest = (list: Float64Array) => list.reduce((most, each) => Math.max(most, Math.abs(each)), 0);

/** What taking differences needs to know. */
export interface Differenced {
  /** Residuals at some parameters; undefined where one is not finite. */
  readonly rowsAt: (parameters: readonly number[]) => Float64Array | undefined;
  readonly typical: readonly number[];
  readonly lower: readonly number[];
  readonly upper: readonly number[];
}

/**
 * Slopes of the residuals by central differences, the step relative to the parameter; against a bound, or beside
 * parameters that are impossible, three points on the one side. Undefined where no side is finite.
 */
export function differences(given: Differenced, p: readonly number[], r: Float64Array): Columns | undefined {
  const columns: Float64Array[] = [];
  const size = greatest(r);
  for (const [j, value] of p.entries()) {
    const typical = given.typical[j] as number;
    const own = Math.abs(value) > 1e-9 * typical ? Math.abs(value) : typical;
    let column = slope(given, p, r, j, relativeStep * own);
    // Where a step of its own size drowns in rounding, a usual one may not, or one of 1.
    for (const wider of [typical, 1])
      if (own < wider && column && greatest(column) * relativeStep * own < drowned * size)
        column = slope(given, p, r, j, relativeStep * wider) ?? column;
    if (!column) return undefined;
    columns.push(column);
  }
  return columns;
}

function slope(given: Differenced, p: readonly number[], r: Float64Array, j: number, h: number) {
  const value = p[j] as number;
  const [low, high] = [given.lower[j] as number, given.upper[j] as number];
  const rowsWith = (x: number) => (x >= low && x <= high ? given.rowsAt(p.with(j, x)) : undefined);
  const [before, after] = [value - h, value + h];
  const down = rowsWith(before);
  const up = rowsWith(after);
  if (up && down) return r.map((_, i) => ((up[i] as number) - (down[i] as number)) / (after - before));
  const near = up ?? down;
  if (!near) return undefined;
  const side = up ? h : -h;
  const far = rowsWith(value + 2 * side);
  if (!far) return r.map((each, i) => ((near[i] as number) - each) / side);
  return r.map((each, i) => (4 * (near[i] as number) - 3 * each - (far[i] as number)) / (2 * side));
}
