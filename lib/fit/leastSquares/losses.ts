import type { Loss } from "./types.ts";

/** How a loss counts a residual r, beside r². */
export interface Weighing {
  /** What r counts as. */
  readonly cost: (r: number) => number;
  /** Half the slope of the cost by r, over r: 1 for the square. */
  readonly pull: (r: number) => number;
  /** Half the curvature of the cost: 1 for the square. */
  readonly bend: (r: number) => number;
}

/** The cost of residuals under a robust loss; undefined for the square. (Huber 1964; the forms are the usual ones.) */
export function weighingOf(loss: Loss): Weighing | undefined {
  if (loss === "square") return undefined;
  const { kind, scale } = loss;
  if (kind === "Huber")
    return {
      cost: (r) => (Math.abs(r) <= scale ? r * r : scale * (2 * Math.abs(r) - scale)),
      pull: (r) => (Math.abs(r) <= scale ? 1 : scale / Math.abs(r)),
      bend: (r) => (Math.abs(r) <= scale ? 1 : 0),
    };
  const root = (r: number) => Math.sqrt(1 + (r / scale) ** 2);
  // 2 scale² (√(1 + z) - 1), written so that small z keeps its digits.
  return {
    cost: (r) => (2 * r * r) / (1 + root(r)),
    pull: (r) => 1 / root(r),
    bend: (r) => root(r) ** -3,
  };
}
