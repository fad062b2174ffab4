import { inverseDiagonal } from "./cholesky.ts";
import { explain, type Suspect, type Trial } from "./explanations.ts";
import { median } from "./firstBoil.ts";
import {
  likeliest,
  type Row,
  type Seen,
  type Solved,
  type Straight,
  seenAt,
  solveStraight,
  straighten,
} from "./gaussianLine.ts";
import { jugRow } from "./jugRow.ts";
import { likeliestSolved } from "./likeliestCourse.ts";
import type { Prepared } from "./prepare.ts";
import { unsaidFires } from "./unsaidFire.ts";
import { unwrittenPours } from "./unwrittenPours.ts";
import { type WaterLine, waterLine } from "./waterLine.ts";

// Of this file, not of at.ts: only so do all engines work it in where a fit spends its time.
const at = (list: Float64Array, i: number): number => list[i] as number;

/** What a fit that knows more than the water adds to it. */
export interface More {
  readonly line?: WaterLine;
  readonly rows?: readonly Row[];
  readonly suspects?: (straight: Straight) => readonly Suspect[];
  /** K: one reading's noise, where it is known. */
  readonly noise?: number;
  /** Standard deviation of the ln of the gaps between pours, where the maker's rhythm is known. */
  readonly rhythm?: number;
}

export interface FittedLine {
  readonly line: WaterLine;
  readonly straight: Straight;
  readonly trial: Trial;
  /** Likeliest doubts under the likeliest explanation. */
  readonly z: Float64Array;
  /** For each row, those of the line's readings first: how likely it is a mis-read, and by how much it is off then, K. */
  readonly misread: readonly { readonly share: number; readonly off: number }[];
  /** Middle time of each suspected pour, by suspect number. */
  readonly pourTimes: ReadonlyMap<number, number>;
}

/** K: 0.4, 0.6, 0.9 and 1.4 °F, rounding included, and how likely each is before the log speaks. */
const noises = [
  { sigma: 0.11, prior: 0.3 },
  { sigma: 0.22, prior: 1 },
  { sigma: 0.33, prior: 1 },
  { sigma: 0.5, prior: 1 },
  { sigma: 0.78, prior: 0.5 },
] as const;
/** K: the noise that a reading is held to until the noises are weighed. */
const usual = 0.33;
/** A misread reading may be anything: 12 °F, in 1.5 % of the readings (a judgement). */
const slip = { u: 6.7, share: 0.015 };
const rateDoubt = 1;

/** How far each row lies from what all others say, in its own standard deviations. */
function leftOut({ factor, weighed }: Solved): Float64Array {
  const own = inverseDiagonal(factor);
  return weighed.map((w, i) => w / Math.sqrt(at(own, i)));
}

/** K: how far the readings lie from the line, in the middle of them. */
function distance(rows: readonly Row[], { off }: Seen): number {
  return median(rows.flatMap(({ kind }, i) => (kind === "reading" ? [Math.abs(at(off, i))] : [])));
}

/**
 * Fits the line to a log: first the likeliest doubts with outliers held loosely, then every explanation by unwritten
 * pours and misread readings weighed against the others.
 *
 * @param prepared the log in the line's shape
 * @param more a line that knows more than the water, with rows and suspects of its own
 * @example fitLine(prepare(run, givens)).trial.explanations[0].weight
 */
export function fitLine(prepared: Prepared, more: More = {}): FittedLine {
  const g = prepared.line;
  const line = more.line ?? waterLine(g);
  const rows: Row[] = g.blocks.map((block, i) => ({
    kind: "reading",
    time: block.time,
    order: block.order,
    y: block.T,
    extra: prepared.extra[i] ?? 0,
  }));
  rows.push(...jugRow(prepared, line), ...(more.rows ?? []));
  let z: Float64Array = new Float64Array(line.doubts.length);
  let seen = seenAt(line, rows, z);
  let straight = straighten(line, rows, seen, g.start);
  let plain = solveStraight(straight, usual);
  for (let turn = 0; turn < 24; turn++) {
    const away = leftOut(plain);
    // Only the worst few at a time: one misread reading makes its neighbours look wrong.
    const worst = Math.max(...away.map((x, i) => (rows[i]?.kind === "reading" ? Math.abs(x) : 0)));
    const loose = away.map((x, i) =>
      rows[i]?.kind === "reading" && Math.abs(x) > Math.max(3.5, 0.5 * worst) ? slip.u ** 2 : 0,
    );
    const next = likeliest(loose.some((x) => x > 0) ? solveStraight(straight, usual, loose) : plain);
    const step = at(next, rateDoubt) - at(z, rateDoubt);
    let damp = Math.min(1, 0.7 / Math.max(1e-9, Math.abs(step)));
    const from = z;
    const before = distance(rows, seen);
    // The line bends: a step that leaves the readings further away is halved, as often as it takes.
    for (let half = 0; half < 8; half++) {
      z = from.map((x, i) => x + damp * (at(next, i) - x));
      seen = seenAt(line, rows, z);
      if (distance(rows, seen) <= Math.max(0.35, before)) break;
      damp /= 2;
    }
    straight = straighten(line, rows, seen, g.start, straight);
    plain = solveStraight(straight, usual);
    if (damp === 1 && Math.abs(step) < 2e-3) break;
  }

  const lastReading = g.blocks[g.blocks.length - 1]?.time ?? g.end;
  const lnFire = g.fire.told.map(({ lnFactor }) => lnFactor);
  const missing = unwrittenPours(
    g.pours,
    g.start,
    lastReading,
    g.pourTime,
    (time) => g.fire.done(time, lnFire),
    more.rhythm,
  );
  const pourTimes = new Map<number, number>();
  const suspects: Suspect[] = missing.map((pour, index) => {
    pourTimes.set(index, (pour.from + pour.to) / 2);
    return {
      kind: "pour",
      index,
      place: pour.from,
      column: Float64Array.from(rows, (row, i) => {
        if (row.kind === "fact") {
          let whole = 0;
          for (let k = 1; k <= pour.count; k++)
            whole += row.perPour(pour.from + ((pour.to - pour.from) * k) / (pour.count + 1));
          return whole / pour.count;
        }
        let seen = 0;
        let places = 0;
        for (let k = 1; k <= pour.count; k++) {
          for (const off of [-0.3, -0.15, 0, 0.15, 0.3]) {
            seen += line.seen(z, pour.from + ((pour.to - pour.from) * (k + off)) / (pour.count + 1), row.time);
            places++;
          }
        }
        return (at(straight.perKilogram, i) * seen) / places;
      }),
      mean: pour.mass,
      u: pour.u,
      count: pour.count,
      lnOdds: pour.lnOdds,
    };
  });
  const away = leftOut(plain);
  const firstSlip = suspects.length;
  away.forEach((x, i) => {
    if (Math.abs(x) < 2.5 || rows[i]?.kind !== "reading") return;
    const column = new Float64Array(rows.length);
    column[i] = 1;
    suspects.push({
      kind: "misread",
      index: i,
      column,
      mean: 0,
      u: slip.u,
      count: 0,
      lnOdds: Math.log(slip.share / (1 - slip.share)),
    });
  });
  const misreadings = suspects.length;
  suspects.push(...unsaidFires(g, plain), ...(more.suspects?.(straight) ?? []));
  const trial = explain(
    (more.noise === undefined ? noises : [{ sigma: more.noise, prior: 1 }]).map(({ sigma, prior }) => ({
      solved: sigma === usual ? plain : solveStraight(straight, sigma),
      lnPrior: Math.log(prior),
    })),
    suspects,
    g.pours.length,
    400,
  );
  const misread = rows.map(() => ({ share: 0, off: 0 }));
  for (const { guilty, weight, amounts } of trial.explanations) {
    guilty.forEach((a, i) => {
      const slot = a >= firstSlip && a < misreadings ? misread[suspects[a]?.index ?? -1] : undefined;
      if (!slot) return;
      slot.share += weight;
      slot.off += weight * at(amounts, i);
    });
  }
  return {
    line,
    straight,
    trial,
    z: likeliestUnder(trial),
    misread: misread.map(({ share, off }) => ({ share, off: share > 0 ? off / share : 0 })),
    pourTimes,
  };
}

function likeliestUnder(trial: Trial): Float64Array {
  return likeliest(likeliestSolved(trial) as Solved);
}
