import { at } from "../../bath/at.ts";
import type { FittedLine } from "../../bath/fitLine.ts";
import { boilingTimes, likeliestSolved, notWrittenBy } from "../../bath/likeliestCourse.ts";
import type { Prepared } from "../../bath/prepare.ts";
import { under } from "../../bath/readOff.ts";
import { before } from "../../bath/waterLine.ts";
import type { FireLine } from "./fireLine.ts";
import type { FittedMoment } from "./types.ts";

const steps = 120;

/**
 * The fitted bath over time under the likeliest explanation, from its heat-up to the end, with its 95 % spread.
 *
 * @param prepared the log
 * @param fitted its fit
 * @param line its line
 * @example courseOfFit(prepared, fitted, line)[0]?.T // K
 */
export function courseOfFit(prepared: Prepared, fitted: FittedLine, line: FireLine): readonly FittedMoment[] {
  const { line: g, thermometer } = prepared;
  const { trial, straight } = fitted;
  const { z } = straight;
  const solved = likeliestSolved(trial);
  const warmFrom = line.warming.blocks[0]?.time;
  const times = boilingTimes(g, steps);
  // When exactly it came to the boil nobody saw: between the last reading before and the boil the line is straight.
  const warmTo = line.warming.blocks.at(-1)?.time;
  if (warmFrom !== undefined && warmTo !== undefined)
    for (let i = 0; i <= 60; i++) times.add(warmFrom + ((warmTo - warmFrom) * i) / 60);
  const lag = before.lag.value * Math.exp(before.lag.u * at(z, line.index.lag));
  return [...times]
    .sort((a, b) => a - b)
    .map((time) => {
      const boils = time >= g.start;
      const added = notWrittenBy(fitted, time);
      const bath = line.bathAt(z, Math.max(g.start, time));
      // Below the boil a thermometer that follows late shows what the bath was a moment before.
      const reading = line.readingAt(z, boils ? time : Math.min(g.start - 1, time + lag));
      const shift = boils ? reading.perKilogram * added : 0;
      const gust = { by: -reading.perKilogram * straight.rate, time: time - straight.start };
      // The likeliest gusts are in it too: the course goes through the readings, not beside them.
      const asked = { value: reading.T, by: reading.by, gust, direct: [] };
      const read = solved ? under(asked, solved) : { mean: reading.T, variance: 0 };
      const T = read.mean + shift - thermometer.offset;
      const half = 1.96 * Math.min(40, Math.sqrt(read.variance));
      const water = bath.water + added;
      const boilingPoint = boils ? T : line.boilsAt(z, g.start, bath.water).T - thermometer.offset;
      return { time, T, low: T - half, high: T + half, water, boilingPoint, boils };
    });
}
