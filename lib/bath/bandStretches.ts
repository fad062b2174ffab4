import { between, type CoursePoint } from "./bandTime.ts";

/** A stretch of the hold, s from the first row, and where it stood to the band. */
export interface BandStretch {
  readonly start: number;
  readonly end: number;
  readonly side: "inside" | "over" | "under";
}

/**
 * Cuts a course where its straight lines cross the limits of a band.
 *
 * @param path in time order: s, K
 * @param limits K, lowest and highest of the band
 * @param hold s, from and to
 * @returns stretches in order that fill the hold; none for an empty course or hold
 * @example bandStretches([{ time: 0, T: 0 }, { time: 10, T: 10 }], [0, 5], [0, 10]).map(({ side }) => side) // ["inside", "over"]
 */
export function bandStretches(
  path: readonly CoursePoint[],
  limits: readonly [low: number, high: number],
  hold: readonly [from: number, to: number],
): readonly BandStretch[] {
  const [from, to] = hold;
  const [low, high] = limits;
  if (path.length === 0 || !(to > from)) return [];
  const cuts = [from, to];
  path.forEach((b, i) => {
    cuts.push(b.time);
    const a = path[i - 1];
    if (!a) return;
    for (const limit of limits) {
      const share = (limit - a.T) / (b.T - a.T);
      if (share > 0 && share < 1) cuts.push(a.time + share * (b.time - a.time));
    }
  });
  const times = [...new Set(cuts)].filter((time) => time >= from && time <= to).sort((a, b) => a - b);
  const found: BandStretch[] = [];
  times.forEach((end, i) => {
    const start = times[i - 1];
    if (start === undefined) return;
    const middle = between(path, (start + end) / 2);
    const side = middle > high ? "over" : middle < low ? "under" : "inside";
    const last = found.at(-1);
    if (last?.side === side) found[found.length - 1] = { ...last, end };
    else found.push({ start, end, side });
  });
  return found;
}
