import { answerOf } from "./answer.ts";
import { bandStretches } from "./bandStretches.ts";
import { bandTime, between } from "./bandTime.ts";
import type { Course } from "./courseOf.ts";
import type { FittedLine } from "./fitLine.ts";
import type { Prepared } from "./prepare.ts";
import type { Answer, WaterBalance } from "./types.ts";

/** s after a pour in which thermometer and bath still mix: a reading then says little of where the bath stands. */
const settling = 45;

/**
 * Time of the hold inside target ± band, s, and the stretches it is made of. Readings that do not belong are left out; between readings the bath follows
 * the course that its pours give it.
 *
 * @param prepared the log
 * @param fitted the fitted line
 * @param course of the bath
 * @param target K
 * @param band K, half-width
 * @param hold s, from and to
 * @param misread readings left out
 * @example inBandOf(prepared, fitted, course, 416, 1.7, hold, []).inBand.value
 */
export function inBandOf(
  { thermometer, thinned, boil, line }: Prepared,
  fitted: FittedLine,
  course: Course,
  target: number,
  band: number,
  hold: WaterBalance["hold"],
  misread: WaterBalance["misread"],
): { readonly inBand: Answer; readonly stretches: NonNullable<WaterBalance["stretches"]> } {
  const bad = new Set(misread.map(({ id }) => id));
  const readings = thinned
    .filter((block) => !bad.has(block.id) && block.time >= boil.time - 1e-9)
    .filter(({ time }) => !line.pours.some((pour) => time >= pour.time && time < pour.time + settling))
    .map(({ time, T }) => ({ time, T: T - thermometer.offset }));
  const likely = fitted.trial.explanations[0];
  const sigma = fitted.trial.solved[likely?.noise ?? 0]?.sigma ?? 0.33;
  const shape = course.map(({ time, boilingPoint }) => ({ time, T: boilingPoint }));
  const times = shape.map(({ time }) => time);
  const limits = [target - band, target + band] as const;
  const work = (reading: number) =>
    bandTime(readings, (time) => between(shape, time), times, limits, [hold.start, hold.end], {
      fixed: thermometer.u,
      reading,
    });
  const { value, u, low, high, path } = work(sigma);
  const fixed = Math.min(u, work(0).u);
  const components = new Map([
    ["thermometer", fixed],
    ["readings", Math.sqrt(u * u - fixed * fixed)],
  ]);
  return {
    inBand: answerOf(value, [low, high], { time: 1 }, components),
    stretches: bandStretches(path, limits, [hold.start, hold.end]),
  };
}
