import { at } from "./at.ts";
import type { FittedLine } from "./fitLine.ts";
import { steamUnsaidBy } from "./likeliestCourse.ts";
import type { Reading } from "./logFacts.ts";
import { hottestBath, type Prepared } from "./prepare.ts";
import type { WaterBalance } from "./types.ts";

interface Model {
  readonly water: number;
  readonly steam: number;
  readonly T: number;
  readonly perKilogram: number;
}

/** What one reading says. */
interface Says {
  /** K beside the line. */
  readonly off: number;
  readonly gone: number;
  readonly standardUncertainty: number;
  readonly weight: number;
  /** K by which it is misread, where it probably is. */
  readonly misread?: number;
}

/** For each reading the number of its block at the boil, -1 for none: blocks hold readings in the log's own order. */
function slotsOf(readings: readonly Reading[], blocks: Prepared["line"]["blocks"]): Int32Array {
  const slots = new Int32Array(readings.length).fill(-1);
  let block = 0;
  let place = 0;
  readings.forEach(({ id }, i) => {
    const ids = blocks[block]?.ids;
    if (ids?.[place] !== id) return;
    slots[i] = block;
    place++;
    if (place < ids.length) return;
    block++;
    place = 0;
  });
  return slots;
}

/** What readings say one after the other, by their numbers in the log. */
function saying(
  { line, z, trial, misread: slips }: FittedLine,
  { facts, line: g }: Prepared,
  slots: Int32Array,
): (reading: Reading, number: number) => Says {
  const sigma = trial.solved[trial.explanations[0]?.noise ?? 0]?.sigma ?? 0.33;
  const exactly = (time: number, order: number) => {
    const { water, steam, T, perKilogram } = line.glanceAt(z, time, order);
    const more = steamUnsaidBy(trial, time);
    return {
      water: water - more,
      steam: steam + more,
      T: T - perKilogram * more,
      perKilogram: Math.min(-1e-6, perKilogram),
    };
  };
  // A logger's rows lie so close together that straight lines between some hundred of them are as good.
  const modelAt = facts.readings.length > 400 ? onStraightLines(knots(facts, g.pours), exactly) : exactly;
  return (reading, number) => {
    const { water, steam, T, perKilogram } = modelAt(reading.time, reading.order);
    const off = reading.T - T;
    // Beside the line by as much water as moves the boiling point by what the reading is off.
    const gone = steam + Math.max(-0.9 * water, Math.min(0.9 * water, -off / perKilogram));
    const standardUncertainty = -sigma / perKilogram;
    const i = at(slots, number);
    if (i < 0) return { off, gone, standardUncertainty, weight: 0 };
    const share = slips[i]?.share ?? 0;
    const alone = (g.blocks[i]?.ids.length ?? 1) === 1;
    const odd = alone ? share : Math.abs(off) > 5 * sigma + 2 ? 1 : 0;
    if (odd <= 0.5) return { off, gone, standardUncertainty, weight: 1 - odd };
    const shift = alone ? (slips[i]?.off ?? off) : off;
    return { off, gone, standardUncertainty, weight: 1 - odd, misread: shift };
  };
}

/** Whether no boiling bath can show what stands there. */
function impossible({ time, T }: Reading, { boil, salts }: Prepared): boolean {
  return time >= boil.time && (T < salts.curve.water || T > hottestBath);
}

/**
 * What each reading says about the water by itself, and which readings do not belong.
 *
 * @param fitted the fitted line
 * @param prepared the log it was fitted to
 * @example pointsOf(fitted, prepared).points.length // one for each reading that is not struck out
 */
export function pointsOf(fitted: FittedLine, prepared: Prepared): Pick<WaterBalance, "points" | "misread"> {
  const { facts, boil, line } = prepared;
  const slots = slotsOf(facts.readings, line.blocks);
  const said = saying(fitted, prepared, slots);
  const misread: { id: string; off: number; reason: string }[] = [];
  const points = facts.readings.map((reading, i) => {
    const { id, time } = reading;
    const { off, gone, standardUncertainty, weight, misread: shift } = said(reading, i);
    const point = { id, time, gone, standardUncertainty, weight };
    if (at(slots, i) < 0) {
      const because = impossible(reading, prepared)
        ? "no boiling bath can read that"
        : time < boil.time
          ? "before the bath boiled"
          : "the fire was out, or the bath not at the boil";
      if (impossible(reading, prepared)) misread.push({ id, off, reason: because });
      return { ...point, because };
    }
    if (shift === undefined) return point;
    const because = `about ${Math.abs(shift * 1.8).toFixed(0)} °F ${shift > 0 ? "above" : "below"} what the other readings say`;
    misread.push({ id, off: shift, reason: because });
    return { ...point, because };
  });
  return { points, misread };
}

/** What the readings from the first boil on say of the water, in time order, in numbers alone. */
export interface AtBoil {
  /** kg, and its standard uncertainty. */
  readonly gone: Float64Array;
  readonly standardUncertainty: Float64Array;
  /** Readings that count less than half. */
  readonly slight: number;
  /** Readings of the whole log that do not belong. */
  readonly misread: number;
}

/**
 * The same as `pointsOf`, as far as a contradiction in the log shows in it: quick, for logs of thousands of rows.
 *
 * @param fitted the fitted line
 * @param prepared the log it was fitted to
 * @example atBoil(fitted, prepared).misread // number of readings that do not belong
 */
export function atBoil(fitted: FittedLine, prepared: Prepared): AtBoil {
  const { readings } = prepared.facts;
  const slots = slotsOf(readings, prepared.line.blocks);
  const said = saying(fitted, prepared, slots);
  const boils = readings.findIndex(({ time }) => time >= prepared.boil.time - 1e-9);
  const first = boils < 0 ? readings.length : boils;
  const gone = new Float64Array(readings.length - first);
  const standardUncertainty = new Float64Array(gone.length);
  let slight = 0;
  let misread = 0;
  let counted = 0;
  const below = ({ time }: Reading) => prepared.line.fire.out.some(([from, to]) => time > from && time < to + 120);
  // A block may begin a little before the boil.
  for (let i = 0; i < readings.length; i++) {
    if (i < first && at(slots, i) < 0) continue;
    const reading = readings[i] as Reading;
    const says = said(reading, i);
    if (says.misread !== undefined || (at(slots, i) < 0 && impossible(reading, prepared))) misread++;
    // What stood below its boil, known to be so, contradicts nothing.
    if (i < first || below(reading)) continue;
    gone[counted] = says.gone;
    standardUncertainty[counted] = says.standardUncertainty;
    counted++;
    if (says.weight < 0.5) slight++;
  }
  return {
    gone: gone.subarray(0, counted),
    standardUncertainty: standardUncertainty.subarray(0, counted),
    slight,
    misread,
  };
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
  const models: (Model | undefined)[] = times.map(() => undefined);
  const modelOf = (k: number): Model => {
    const model = models[k] ?? exactly(at(times, k), Number.MAX_SAFE_INTEGER);
    models[k] = model;
    return model;
  };
  let i = 0;
  // Readings come in time order, so the place only moves on.
  return (time) => {
    while (i < times.length - 2 && at(times, i + 1) <= time) i++;
    const a = modelOf(i);
    if (i + 1 >= times.length) return a;
    const b = modelOf(i + 1);
    const from = at(times, i);
    const share = Math.min(1, Math.max(0, (time - from) / Math.max(1e-9, at(times, i + 1) - from)));
    return {
      water: a.water + share * (b.water - a.water),
      steam: a.steam + share * (b.steam - a.steam),
      T: a.T + share * (b.T - a.T),
      perKilogram: a.perKilogram + share * (b.perKilogram - a.perKilogram),
    };
  };
}
