import { type Linear, spectrum } from "./boundedStep.ts";
import type { Place } from "./linearise.ts";
import type { Rows } from "./rows.ts";
import { dampedDescent } from "./trustRegion.ts";

interface Bending {
  readonly place: Place;
  readonly rows: Rows;
  readonly linear: Linear;
  readonly scales: Float64Array;
}

/** How far along the step the curvature is felt for. */
const ahead = 0.1;
/** A bend of more than this share of the step is not to be trusted. */
const mostBend = 0.375;

const lengthOf = (list: Float64Array) => Math.sqrt(list.reduce((sum, each) => sum + each * each, 0));

/**
 * A damped step bent along the curve of the residuals ("geodesic acceleration": Transtrum and Sethna 2012, from
 * memory), for one more call of the residuals: in a long curved valley three to twenty times fewer steps. The plain step
 * where the bend is too strong, would cross a bound, or cannot be worked out.
 */
export function bent(bending: Bending, step: Float64Array, damping: number): Float64Array {
  const { place, rows, linear, scales } = bending;
  const { p, r, slopes } = place;
  const moves = step.map((each, j) => each / (scales[j] as number));
  const found = rows.at(p.map((each, j) => each + ahead * (moves[j] as number)));
  if (!found) return step;
  const curve = r.map((each, i) => ((found[i] as number) - each) / ahead);
  slopes.forEach((column, j) => {
    const move = moves[j] as number;
    for (let i = 0; i < curve.length; i += 1) curve[i] = (curve[i] as number) - (column[i] as number) * move;
  });
  const slope = Float64Array.from(slopes, (column, j) => {
    let sum = 0;
    for (let i = 0; i < curve.length; i += 1) sum += (column[i] as number) * (curve[i] as number);
    return ((2 / ahead) * sum) / (scales[j] as number);
  });
  const all = p.map((_, j) => j);
  const bend = dampedDescent(spectrum(linear, all), slope, damping);
  if (!(lengthOf(bend) <= mostBend * lengthOf(step))) return step;
  const curved = step.map((each, j) => each + 0.5 * (bend[j] as number));
  const isInside = curved.every((each, j) => each > (linear.down[j] as number) && each < (linear.up[j] as number));
  return isInside ? curved : step;
}
