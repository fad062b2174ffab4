import type { HumanErrors } from "./types.ts";

const fahrenheit = 5 / 9;

/**
 * How people and instruments err over a hold, one standard deviation each. All of it a judgement, no source; the 480 s of
 * the wandering are those that the fit of a run takes.
 *
 * @example humanErrors.late // 30 s
 */
export const humanErrors: HumanErrors = {
  late: 30,
  cupAllNight: 0.03,
  eachPour: 0.05,
  steadyFeed: 0.03,
  gusts: 0.09,
  gustTime: 250,
  thermometerFixed: 0.7 * fahrenheit,
  eachReading: 0.5 * fahrenheit,
  wandering: 0.5 * fahrenheit,
  wanderTime: 480,
};
