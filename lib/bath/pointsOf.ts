import type { FittedLine } from "./fitLine.ts";
import type { Prepared } from "./prepare.ts";
import type { WaterBalance } from "./types.ts";

/**
 * What each reading says about the water by itself, and which readings do not belong.
 *
 * @param fitted the fitted line
 * @param prepared the log it was fitted to
 * @example pointsOf(fitted, prepared).points.length // one for each reading that is not struck out
 */
export function pointsOf(
  { line, z, trial, misread: slips }: FittedLine,
  { facts, boil, line: g }: Prepared,
): Pick<WaterBalance, "points" | "misread"> {
  const sigma = trial.solved[trial.explanations[0]?.noise ?? 0]?.sigma ?? 0.33;
  const slot = new Map(g.blocks.flatMap((block, i) => block.ids.map((id) => [id, i] as const)));
  const misread: { id: string; off: number; reason: string }[] = [];
  const points = facts.readings.map((reading) => {
    const { water, steam } = line.bathAt(z, reading.time);
    const seen = line.readingAt(z, reading.time, reading.order);
    const perKilogram = Math.min(-1e-6, seen.perKilogram);
    const off = reading.T - seen.T;
    // Beside the line by as much water as moves the boiling point by what the reading is off.
    const gone = steam + Math.max(-0.9 * water, Math.min(0.9 * water, -off / perKilogram));
    const standardUncertainty = -sigma / perKilogram;
    const point = { id: reading.id, time: reading.time, gone, standardUncertainty };
    const i = slot.get(reading.id);
    if (i === undefined) {
      const because =
        reading.time < boil.time ? "before the bath boiled" : "the fire was out, or the bath not at the boil";
      return { ...point, weight: 0, because };
    }
    const share = slips[i]?.share ?? 0;
    const alone = (g.blocks[i]?.ids.length ?? 1) === 1;
    const odd = alone ? share : Math.abs(off) > 5 * sigma + 2 ? 1 : 0;
    if (odd <= 0.5) return { ...point, weight: 1 - odd };
    const shift = alone ? (slips[i]?.off ?? off) : off;
    const because = `about ${Math.abs(shift * 1.8).toFixed(0)} °F ${shift > 0 ? "above" : "below"} what the other readings say`;
    misread.push({ id: reading.id, off: shift, reason: because });
    return { ...point, weight: 1 - odd, because };
  });
  return { points, misread };
}
