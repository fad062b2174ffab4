import type { Prepared } from "./prepare.ts";
import type { BalanceGivens, WaterBalance } from "./types.ts";

/**
 * The hold of a run: from parts in to the last parts out, or to the last row; without such rows from the first reading
 * at or above the lower limit of the band; without a band from the first boil. `from` says which.
 *
 * @param prepared the log
 * @param givens for the target and the band
 * @example holdOf(prepared, { salts, pressure, target: 416, band: 1.7 }).from // "parts in"
 */
export function holdOf(
  { facts, boil, thinned, thermometer, line }: Prepared,
  givens: BalanceGivens,
): WaterBalance["hold"] {
  const into = facts.parts.find((part) => part.goesIn);
  const out = facts.parts.filter((part) => !part.goesIn).at(-1);
  const end = out && (!into || out.time > into.time) ? out.time : line.end;
  if (into && into.time < end) return { start: into.time, end, from: "parts in" };
  if (givens.target !== undefined && givens.band !== undefined) {
    const limit = givens.target - givens.band;
    const first = thinned.find(
      (block) => block.time >= boil.time - 1e-9 && block.T - thermometer.offset >= limit && block.time < end,
    );
    if (first) return { start: first.time, end, from: "first reading in the band or above" };
  }
  return { start: Math.min(boil.time, end), end, from: "first boil" };
}
