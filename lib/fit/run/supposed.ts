import { dot, nothing } from "../../bath/cholesky.ts";
import type { Fact, Solved, Straight } from "../../bath/gaussianLine.ts";
import { solveStraight } from "../../bath/gaussianLine.ts";
import { type Asked, under } from "../../bath/readOff.ts";

// Of this file, not of at.ts: only so do all engines work it in where a fit spends its time.
const at = (list: Float64Array, i: number): number => list[i] as number;

/** What a log would know besides: doubts that shrink by a factor, and things that would be seen. */
export interface Supposed {
  readonly shrinks?: ReadonlyMap<number, number>;
  readonly sees?: readonly { readonly by: Float64Array; readonly variance: number }[];
}

function withSeen(straight: Straight, sees: NonNullable<Supposed["sees"]>): Straight {
  const rows = [
    ...straight.rows,
    ...sees.map(
      ({ variance }): Fact => ({
        kind: "fact",
        source: "supposed",
        time: straight.start,
        order: 0,
        y: 0,
        extra: variance,
        predict: (z) => ({ value: 0, by: new Float64Array(z.length) }),
        perPour: () => 0,
      }),
    ),
  ];
  const slopes = [...straight.slopes, ...sees.map(({ by }) => by)];
  const n = rows.length;
  const old = straight.rows.length;
  const shared = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      if (i < old) {
        shared[i * n + j] = at(straight.shared, i * old + j);
        continue;
      }
      const own = i === j ? (rows[i]?.extra ?? 0) : 0;
      shared[i * n + j] = own + dot(slopes[i] as Float64Array, slopes[j] as Float64Array);
    }
  const longer = (list: Float64Array) => {
    const all = new Float64Array(n);
    all.set(list);
    return all;
  };
  const square = (list: Float64Array) => {
    const all = new Float64Array(n * n);
    for (let i = 0; i < old; i++) all.set(list.subarray(i * old, (i + 1) * old), i * n);
    return all;
  };
  return {
    ...straight,
    rows,
    slopes,
    shared,
    gusts: square(straight.gusts),
    wander: square(straight.wander),
    r: longer(straight.r),
    perKilogram: longer(straight.perKilogram),
  };
}

function shrunk(straight: Straight, shrinks: ReadonlyMap<number, number>): Straight {
  const n = straight.rows.length;
  const shared = Float64Array.from(straight.shared);
  for (const [k, factor] of shrinks)
    for (let i = 0; i < n; i++)
      for (let j = 0; j <= i; j++)
        shared[i * n + j] =
          at(shared, i * n + j) -
          (1 - factor * factor) * at(straight.slopes[i] ?? nothing, k) * at(straight.slopes[j] ?? nothing, k);
  const slopes = straight.slopes.map((by) => {
    const own = Float64Array.from(by);
    for (const [k, factor] of shrinks) own[k] = factor * at(own, k);
    return own;
  });
  return { ...straight, shared, slopes };
}

/**
 * Variances of numbers if this log had told more. It hangs on what is seen and how well, not on what the readings say,
 * so it can be worked out before anything is logged.
 *
 * @param asked the numbers
 * @param solved the line solved for the log's noise
 * @param supposed what would be known besides
 * @returns the variance of each number, in its unit squared
 * @example supposedVariances([asked], solved, { shrinks: new Map([[2, 0.2]]) })
 */
export function supposedVariances(
  asked: readonly Asked[],
  solved: Solved,
  { shrinks, sees }: Supposed,
): readonly number[] {
  // Nothing more is known: the line is solved already.
  if (!shrinks && !sees) return asked.map((one) => under(one, solved).variance);
  let { straight } = solved;
  if (sees) straight = withSeen(straight, sees);
  if (shrinks) straight = shrunk(straight, shrinks);
  const then = solveStraight(straight, solved.sigma);
  return asked.map((one) => {
    const by = Float64Array.from(one.by);
    for (const [k, factor] of shrinks ?? []) by[k] = factor * at(by, k);
    return under({ ...one, by }, then).variance;
  });
}
