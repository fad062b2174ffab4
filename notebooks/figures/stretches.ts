import type { BandStretch } from "../../lib/figure/index.ts";

interface Point {
  readonly time: number;
  readonly temperature: number;
}

/** Cuts a hold where the straight lines between its readings cross the limits of the band. */
export function stretches(
  readings: readonly Point[],
  { low, high }: { readonly low: number; readonly high: number },
  hold: { readonly start: number; readonly end: number },
): readonly BandStretch[] {
  const at = (time: number): number => {
    const after = readings.findIndex((point) => point.time >= time);
    const b = readings[after] ?? readings.at(-1);
    const a = readings[after - 1] ?? b;
    if (!a || !b) return Number.NaN;
    return b.time > a.time
      ? a.temperature + ((b.temperature - a.temperature) * (time - a.time)) / (b.time - a.time)
      : b.temperature;
  };
  if (readings.length === 0 || !(hold.end > hold.start)) return [];
  const cuts = [hold.start, hold.end];
  readings.forEach((b, i) => {
    const a = readings[i - 1];
    if (!a) return;
    cuts.push(b.time);
    for (const limit of [low, high]) {
      const share = (limit - a.temperature) / (b.temperature - a.temperature);
      if (share > 0 && share < 1) cuts.push(a.time + share * (b.time - a.time));
    }
  });
  const inside = [...new Set(cuts)].filter((time) => time >= hold.start && time <= hold.end).sort((a, b) => a - b);
  const found: BandStretch[] = [];
  inside.forEach((end, i) => {
    const start = inside[i - 1];
    if (start === undefined) return;
    const middle = at((start + end) / 2);
    const side = middle > high ? "over" : middle < low ? "under" : "inside";
    const last = found.at(-1);
    if (last?.side === side) found[found.length - 1] = { ...last, end };
    else found.push({ start, end, side });
  });
  return found;
}
