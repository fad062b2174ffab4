import { at } from "./at.ts";
import { nothing } from "./cholesky.ts";
import type { Trial } from "./explanations.ts";
import type { FittedLine } from "./fitLine.ts";
import type { LineGivens } from "./waterLine.ts";

/**
 * Times at which a course is drawn: even steps from the first boil to the end, and before and after each pour.
 *
 * @param line the log in the line's shape
 * @param steps how many
 * @returns s, in no order
 * @example boilingTimes(line, 90).size
 */
export function boilingTimes({ start, end, pours }: LineGivens, steps: number): Set<number> {
  const times = new Set<number>();
  for (let i = 0; i <= steps; i++) times.add(start + ((end - start) * i) / steps);
  for (const pour of pours)
    for (const time of [pour.time - 0.5, pour.time + pour.duration]) if (time >= start && time <= end) times.add(time);
  return times;
}

/**
 * Steam that the likeliest explanation adds by a time, kg: from a fire that was changed without a word.
 *
 * @param trial the explanations
 * @param time s
 * @example steamUnsaidBy(fittedLine.trial, 600) // 0
 */
export function steamUnsaidBy({ explanations, suspects }: Trial, time: number): number {
  const likely = explanations[0];
  return (likely?.guilty ?? []).reduce(
    (sum, a, i) => sum + at(likely?.amounts ?? [], i) * (suspects[a]?.steam?.(time) ?? 0),
    0,
  );
}

/**
 * Water that the likeliest explanation adds by a time, kg: pours that were not written, less what boiled off more.
 *
 * @param fitted the fit
 * @param time s
 * @example notWrittenBy(fittedLine, 600) // 0
 */
export function notWrittenBy({ trial, pourTimes }: FittedLine, time: number): number {
  const likely = trial.explanations[0];
  return (likely?.guilty ?? []).reduce((sum, a, i) => {
    const poured = pourTimes.get(a);
    return poured !== undefined && poured <= time ? sum + at(likely?.amounts ?? [], i) : sum;
  }, -steamUnsaidBy(trial, time));
}

/**
 * The line as the likeliest explanation solves it: what it blames on suspects is taken off the rows.
 *
 * @param trial the explanations
 * @returns undefined where nothing explains the log
 * @example likeliestSolved(fittedLine.trial)?.sigma
 */
export function likeliestSolved(trial: Trial): Trial["solved"][number] | undefined {
  const likely = trial.explanations[0];
  const solved = trial.solved[likely?.noise ?? 0];
  if (!solved) return undefined;
  const weighed = Float64Array.from(solved.weighed);
  likely?.guilty.forEach((a, i) => {
    const column = trial.weighed[likely.noise]?.[a] ?? nothing;
    for (let k = 0; k < weighed.length; k++) weighed[k] = at(weighed, k) - at(likely.amounts, i) * at(column, k);
  });
  return { ...solved, weighed };
}
