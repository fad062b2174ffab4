import type { Columns } from "./triangular.ts";
import { type Spectrum, spectrumOf, trustedStep } from "./trustRegion.ts";

/** The residuals made linear about some parameters, in scaled steps: |R s + q|² and the room to each bound. */
export interface Linear {
  readonly triangle: Columns;
  /** Qᵀ of the residuals, as long as there are parameters. */
  readonly q: Float64Array;
  /** Half the slope of the sum of squares: Rᵀ q. */
  readonly gradient: Float64Array;
  /** How far each scaled parameter may go down (0 or below) and up (0 or above). */
  readonly down: Float64Array;
  readonly up: Float64Array;
  /** Spectra that were worked out already, by the columns in them. */
  readonly spectra: Map<string, Spectrum>;
}

/** R s + q. */
export function residualOf({ triangle, q }: Linear, step: Float64Array): Float64Array {
  const left = Float64Array.from(q);
  step.forEach((size, j) => {
    if (size === 0) return;
    const column = triangle[j] as Float64Array;
    for (let i = 0; i <= j; i += 1) left[i] = (left[i] as number) + size * (column[i] as number);
  });
  return left;
}

const squareOf = (list: Float64Array) => list.reduce((sum, each) => sum + each * each, 0);

/** By how much the linear residuals' sum of squares falls: -(2 q + R s)·R s, without the cancelling of a difference. */
export function fallOf(linear: Linear, step: Float64Array): number {
  const left = residualOf(linear, step);
  let fall = 0;
  left.forEach((each, i) => {
    const before = linear.q[i] as number;
    fall += (before - each) * (before + each);
  });
  return fall;
}

export function spectrum(linear: Linear, columns: readonly number[]): Spectrum {
  const key = columns.join();
  const found = linear.spectra.get(key) ?? spectrumOf(linear.triangle, columns);
  linear.spectra.set(key, found);
  return found;
}

/** Whether a parameter lies on a bound that the sum of squares pushes it against. */
export const isPushed = ({ gradient, down, up }: Linear, j: number) =>
  (down[j] === 0 && (gradient[j] as number) > 0) || (up[j] === 0 && (gradient[j] as number) < 0);

export interface Bounded {
  readonly step: Float64Array;
  /** By how much the linear residuals' sum of squares falls. */
  readonly expected: number;
  /** The damping of a step that meets no bound. */
  readonly damping: number | undefined;
}

/**
 * The best step inside the trust radius and the bounds. Parameters that would cross a bound are put on it one by one,
 * the first to arrive first, and the step of the others is worked out again with them there. (Cutting the whole step
 * short instead, or clipping each parameter, stops fits away from their minimum.)
 */
export function boundedStep(linear: Linear, radius: number): Bounded {
  const count = linear.q.length;
  const held = new Float64Array(count);
  const free = Array.from({ length: count }, (_, j) => j).filter((j) => !isPushed(linear, j));
  let best: Float64Array = held;
  let bestFall = 0;
  const consider = (step: Float64Array) => {
    const fall = fallOf(linear, step);
    if (fall <= bestFall) return;
    best = step;
    bestFall = fall;
  };
  while (free.length > 0) {
    const budget = Math.sqrt(Math.max(0, radius * radius - squareOf(held)));
    const { step: part, damping } = trustedStep(spectrum(linear, free), residualOf(linear, held), budget);
    let share = 1;
    let first = -1;
    part.forEach((size, k) => {
      const j = free[k] as number;
      const room = (size < 0 ? linear.down[j] : linear.up[j]) as number;
      if (Math.abs(room) >= Math.abs(size) * share) return;
      share = room / size;
      first = k;
    });
    const step = Float64Array.from(held);
    part.forEach((size, k) => {
      step[free[k] as number] = size * share;
    });
    if (first < 0) {
      consider(step);
      if (free.length === count) return { step: best, expected: bestFall, damping };
      break;
    }
    const j = free[first] as number;
    held[j] = ((part[first] as number) < 0 ? linear.down[j] : linear.up[j]) as number;
    step[j] = held[j];
    consider(step);
    free.splice(first, 1);
  }
  return { step: best, expected: bestFall, damping: undefined };
}
