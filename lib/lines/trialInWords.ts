import { formatWithSpread } from "../measure/formatWithSpread.ts";
import { unitMeasuring } from "../measure/inUnit.ts";
import { roundedHalf } from "../measure/roundedHalf.ts";
import type { Value } from "../measure/types.ts";
import type { Trial } from "./Trial.ts";

type Told = Omit<Trial, "value" | "says">;

/**
 * What a trial says, for the maker.
 * @param trial The trial.
 * @param value The line's amount by slopes.
 * @param unit The unit that it is shown in.
 * @param reason Why some draws came to no number.
 * @returns Two or three sentences.
 * @example trialInWords(trial, exact(1), "gal", undefined) // "Worked anew for 10,000 draws of all that it rests on, …"
 */
export function trialInWords(
  { goodEnough, linear95, trial95, draws, without, settled }: Told,
  value: Value,
  unit: string,
  reason: string | undefined,
): string {
  const range = (ends: readonly [number, number]) => endsInWords(value, ends, trial95, unit, goodEnough ? 0 : 1);
  const count = draws.toLocaleString("en-US");
  const sentences = goodEnough
    ? [`Worked anew for ${count} draws of all that it rests on, it spreads as its ± says: ${range(trial95)}.`]
    : [
        `Its ± is not good enough here: the line bends within its doubt.`,
        `Its ± says ${range(linear95)}; worked anew for ${count} draws of all that it rests on, 95 % of them lie at ${range(trial95)}.`,
      ];
  if (without > 0)
    sentences.push(`In ${share(without / draws)} of the draws there is no number and they are left out: ${reason}.`);
  if (!settled) sentences.push("The ends have not settled: take them as rough.");
  return sentences.join(" ");
}

/** Both intervals get the digits that the trial's half-width deserves, and one more where they are to be told apart. */
function endsInWords(
  value: Value,
  ends: readonly [number, number],
  [bottom, top]: readonly [number, number],
  unit: string,
  more: number,
): string {
  const middle = Math.min(Math.max(value.value, ends[0]), ends[1]);
  try {
    const { factor } = unitMeasuring(unit, value.dimension);
    const half = (top - bottom) / 2 / factor;
    const options = half > 0 ? { decimals: roundedHalf(half).decimals + more } : {};
    const { low, high, unit: named } = formatWithSpread({ ...value, value: middle, interval95: ends }, unit, options);
    return `${low} to ${high}${named === "" ? "" : `\u00a0${named}`}`;
  } catch {
    return `${ends[0].toPrecision(3)} to ${ends[1].toPrecision(3)}`;
  }
}

const share = (part: number): string => (part < 0.001 ? "less than 0.1 %" : `${(100 * part).toPrecision(2)} %`);
