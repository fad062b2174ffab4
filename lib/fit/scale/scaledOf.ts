import { answerOfDraws } from "./answerOfDraws.ts";
import { cylinderGives } from "./cylinderGives.ts";
import type { Drawn } from "./drawsOf.ts";
import { heatOfGas } from "./gasOf.ts";
import { remarksOf } from "./remarksOf.ts";
import type { ScaledSetup, ScaleOptions } from "./types.ts";
import { powerAt, timeAlong } from "./warmingPath.ts";

/** The answers of a scaling that are read off each draw. */
export type DrawnAnswer =
  | "boilOff"
  | "heatUp"
  | "timeTo10Below"
  | "gas"
  | "gasToBoil"
  | "cylinderDraw"
  | "driftUnfed"
  | "heatIntoBath"
  | "share"
  | "losses";

/**
 * What each answer comes to in each draw, SI as in `ScaledSetup`.
 *
 * @example valuesOf(worlds).boilOff.length === worlds.draws.length // true
 */
export function valuesOf({ scene, draws }: Drawn): Readonly<Record<DrawnAnswer, readonly number[]>> {
  const last = scene.path.T.length - 1;
  const heatUp = draws.map((one) => timeAlong(scene.path, last, one.heating, one.capacity));
  return {
    boilOff: draws.map((one) => one.boilOff),
    heatUp,
    timeTo10Below: draws.map((one) => timeAlong(scene.path, scene.tenBelow, one.heating, one.capacity)),
    gas: draws.map((one) => one.gas),
    gasToBoil: draws.map((one, i) => one.gas * (heatUp[i] as number)),
    cylinderDraw: draws.map((one) => one.gas * heatOfGas),
    driftUnfed: draws.map((one) => one.driftUnfed),
    heatIntoBath: draws.map((one) => one.net),
    share: draws.map((one) => one.share),
    losses: draws.map((one) => one.lost),
  };
}

/**
 * The answers of a scaling from its draws: `scaleSetup` says what they are.
 *
 * @example scaledOf(drawsOf(fit, from, to, options), options).boilOff.value // kg/s
 */
export function scaledOf(drawn: Drawn, options: ScaleOptions, values = valuesOf(drawn)): ScaledSetup {
  const { scene, draws, weights, worth } = drawn;
  const of = (name: DrawnAnswer) => answerOfDraws(values[name], weights);
  const boilOff = of("boilOff");
  const cylinder = options.cylinder && cylinderGives(options.cylinder, scene.air);
  const answers = {
    boilOff,
    feed: boilOff,
    heatUp: of("heatUp"),
    timeTo10Below: of("timeTo10Below"),
    gas: of("gas"),
    gasToBoil: of("gasToBoil"),
    cylinderDraw: of("cylinderDraw"),
    driftUnfed: of("driftUnfed"),
    heatIntoBath: of("heatIntoBath"),
    share: of("share"),
    losses: of("losses"),
    boilsSteadily: boilsSteadily(drawn),
  };
  return {
    ...answers,
    ...(cylinder ? { cylinderGives: cylinder } : {}),
    draws: draws.length,
    worth,
    remarks: remarksOf(drawn, answers, options, cylinder),
  };
}

/**
 * Share of the worlds whose fire beats what a quiet surface would evaporate at the boil: there it bubbles.
 *
 * @example boilsSteadily(drawsOf(fit, from, to, options)) // 0..1
 */
export function boilsSteadily({ scene, draws, weights }: Drawn): number {
  const last = scene.path.T.length - 1;
  const sum = draws.reduce(
    (all, one, i) => all + (powerAt(scene.path, last, one.heating) > 0 ? (weights[i] as number) : 0),
    0,
  );
  return Math.min(1, sum);
}
