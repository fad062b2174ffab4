import type { FittedLine } from "./fitLine.ts";
import { boilingTimes, notWrittenBy } from "./likeliestCourse.ts";
import type { Prepared } from "./prepare.ts";
import { doubtUnder } from "./readOff.ts";
import type { WaterBalance } from "./types.ts";

export type Course = WaterBalance["course"];

/**
 * The bath over time under the likeliest explanation: at even steps, and before and after each pour.
 *
 * @param fitted the fitted line
 * @param prepared the log
 * @example courseOf(fitted, prepared)[0].water
 */
export function courseOf(fitted: FittedLine, { line, thermometer }: Prepared): Course {
  const { z, trial, straight } = fitted;
  const likely = trial.explanations[0];
  const solved = trial.solved[likely?.noise ?? 0];
  return [...boilingTimes(line, 90)]
    .sort((a, b) => a - b)
    .map((time) => {
      const added = notWrittenBy(fitted, time);
      const bath = fitted.line.bathAt(z, time);
      const water = bath.water + added;
      const ratio = Math.exp(fitted.line.lnRatioAt(z, time).value) * (bath.water / water);
      const reading = fitted.line.readingAt(z, time);
      const boilingPoint = reading.T + reading.perKilogram * added - thermometer.offset;
      const gust = { by: -reading.perKilogram * straight.rate, time: time - straight.start };
      const u = solved ? doubtUnder({ value: 0, by: reading.by, gust, direct: [] }, solved) : 0;
      return { time, water, ratio, boilingPoint, standardUncertainty: Math.min(20, u) };
    });
}
