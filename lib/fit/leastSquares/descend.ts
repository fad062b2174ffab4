import { bent } from "./bent.ts";
import { boundedStep } from "./boundedStep.ts";
import type { Checked } from "./checkProblem.ts";
import { lengthsOf, linearise, type Place, weighed } from "./linearise.ts";
import type { Rows } from "./rows.ts";
import type { Reason } from "./types.ts";

/** Where a descent ended, and why. Without slopes, none could be had there. */
export interface Descent {
  readonly place: Place;
  readonly reason: Reason;
  readonly steps: number;
}

const finished = "at a minimum: no small change of the parameters lowers the sum";
const rounded = "at a minimum: rounding hides any further change";
const exact = "at a minimum: the residuals are nothing but rounding";
const lost = "stuck: the residuals are not finite close by";
const stuck = "stuck: no step lowers the sum, yet it is not at a minimum";

/** A minimum is where the linear residuals promise no more than this share of the cost. */
const promised = 1e-20;
/** Where no step helps, it is still a minimum if no more than this share is promised: a thousandth of a standard error. */
const hidden = 1e-6;

/** Changes of the cost below this share of it are rounding. */
const rounding = 1e-12;

const lengthOf = (list: Float64Array) => Math.sqrt(list.reduce((sum, each) => sum + each * each, 0));

/**
 * Walks down the cost by trust-region Levenberg-Marquardt steps (Moré 1978, on singular values) until it must stop. The
 * first step may be `firstRadius` times as long as the parameters, each weighed by its slopes.
 */
export function descend(rows: Rows, checked: Checked, firstRadius: number): Descent {
  let p: readonly number[] = checked.start;
  let r = rows.first;
  let scales = new Float64Array(p.length);
  let radius = Number.NaN;
  let lastPromise = Infinity;
  for (let steps = 0; ; steps += 1) {
    const slopes = rows.slopesAt(p, r);
    if (!slopes) return { place: { p, r, slopes: [] }, reason: lost, steps };
    const place = { p, r, slopes };
    const columns = weighed(place, rows);
    const lengths = lengthsOf(columns);
    scales = scales.map((each, j) => Math.max(each, lengths[j] as number));
    const cost = rows.cost(r);
    const size = lengthOf(scales.map((each, j) => each * ((p[j] as number) || (checked.typical[j] as number))));
    const stop = (reason: Reason): Descent => ({ place, reason, steps });
    /** What is still promised, as a share of the cost, with each parameter weighed by its slopes here and now. */
    const promise = () => {
      const now = linearise(place, rows, checked, columns, lengths);
      return boundedStep(now, Infinity).expected / cost;
    };
    if (cost === 0) return stop(exact);
    const linear = linearise(place, rows, checked, columns, scales);
    const newton = boundedStep(linear, Infinity).expected / cost;
    if (newton <= promised && promise() <= promised) return stop(finished);
    if (steps === checked.maxSteps) return stop("unfinished: out of steps");
    if (Number.isNaN(radius)) radius = firstRadius * size;
    for (;;) {
      const { step, expected, damping } = boundedStep(linear, radius);
      const length = lengthOf(step);
      const curved = damping && !rows.weighing ? bent({ place, rows, linear, scales }, step, damping) : step;
      const next = moved(p, curved, scales, checked);
      const found = rows.at(next);
      const fall = found ? rows.fall(r, found) : -Infinity;
      const ratio = fall / expected;
      // Where rounding hides whether the cost falls, a step is good while each promises less than the last.
      const isHidden = Math.max(expected, Math.abs(fall)) <= rounding * cost && length < 0.9 * radius;
      if (ratio > 0.75) radius = Math.max(radius, 2 * length);
      else if (!(ratio > 0.25)) radius = (found ? 0.25 : 0.1) * Math.min(radius, length);
      if (found && (ratio > 1e-4 || (isHidden && newton < 0.25 * lastPromise))) {
        if (isHidden) lastPromise = newton;
        p = next;
        r = found;
        break;
      }
      if (expected > 0.1 * rounding * cost && radius > 1e-15 * size) continue;
      if (Math.sqrt(cost) <= 1e-11 * size) return stop(exact);
      return stop(promise() <= hidden ? rounded : stuck);
    }
  }
}

/** The parameters after a step; what was put on a bound lies exactly on it. */
function moved(p: readonly number[], step: Float64Array, scales: Float64Array, { lower, upper }: Checked): number[] {
  return p.map((value, j) => {
    const by = step[j] as number;
    const scale = scales[j] as number;
    const [low, high] = [lower[j] as number, upper[j] as number];
    if (by <= (low - value) * scale) return low;
    if (by >= (high - value) * scale) return high;
    return Math.min(high, Math.max(low, value + by / scale));
  });
}
