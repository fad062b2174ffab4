import type { FittedLine } from "./fitLine.ts";
import { hottestBath, type Prepared } from "./prepare.ts";
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
  { facts, boil, line: g, salts }: Prepared,
): Pick<WaterBalance, "points" | "misread"> {
  const plainWater = salts.curve.water;
  const sigma = trial.solved[trial.explanations[0]?.noise ?? 0]?.sigma ?? 0.33;
  const slot = new Map(g.blocks.flatMap((block, i) => block.ids.map((id) => [id, i] as const)));
  const misread: { id: string; off: number; reason: string }[] = [];
  const exactly = (time: number, order: number) => {
    const { water, steam, T, perKilogram } = line.glanceAt(z, time, order);
    return { water, steam, T, perKilogram: Math.min(-1e-6, perKilogram) };
  };
  // A logger's rows lie so close together that straight lines between some hundred of them are as good.
  const modelAt = facts.readings.length > 400 ? onStraightLines(knots(facts, g.pours), exactly) : exactly;
  const points = facts.readings.map((reading) => {
    const { water, steam, T, perKilogram } = modelAt(reading.time, reading.order);
    const off = reading.T - T;
    // Beside the line by as much water as moves the boiling point by what the reading is off.
    const gone = steam + Math.max(-0.9 * water, Math.min(0.9 * water, -off / perKilogram));
    const standardUncertainty = -sigma / perKilogram;
    const point = { id: reading.id, time: reading.time, gone, standardUncertainty };
    const i = slot.get(reading.id);
    if (i === undefined) {
      if (reading.time >= boil.time && (reading.T < plainWater || reading.T > hottestBath)) {
        const reason = "no boiling bath can read that";
        misread.push({ id: reading.id, off, reason });
        return { ...point, weight: 0, because: reason };
      }
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

interface Model {
  readonly water: number;
  readonly steam: number;
  readonly T: number;
  readonly perKilogram: number;
}

function knots({ readings }: Prepared["facts"], pours: Prepared["line"]["pours"]): number[] {
  const first = readings[0]?.time ?? 0;
  const span = (readings[readings.length - 1]?.time ?? 0) - first;
  const times = new Set(Array.from({ length: 301 }, (_, i) => first + (span * i) / 300));
  for (const { time } of pours) for (const after of [0, 5, 15, 30, 60, 120]) times.add(time + after);
  return [...times].sort((a, b) => a - b);
}

function onStraightLines(
  times: readonly number[],
  exactly: (time: number, order: number) => Model,
): (time: number) => Model {
  const models = times.map((time) => exactly(time, Number.MAX_SAFE_INTEGER));
  let i = 0;
  // Readings come in time order, so the place only moves on.
  return (time) => {
    while (i < times.length - 2 && (times[i + 1] ?? Infinity) <= time) i++;
    const a = models[i];
    const b = models[i + 1] ?? a;
    if (!a || !b) return exactly(time, Number.MAX_SAFE_INTEGER);
    const from = times[i] ?? time;
    const share = Math.min(1, Math.max(0, (time - from) / Math.max(1e-9, (times[i + 1] ?? from) - from)));
    const mixed = (key: keyof Model) => a[key] + share * (b[key] - a[key]);
    return { water: mixed("water"), steam: mixed("steam"), T: mixed("T"), perKilogram: mixed("perKilogram") };
  };
}
