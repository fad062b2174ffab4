import { answerOfDraws } from "./answerOfDraws.ts";
import { drawsOf } from "./drawsOf.ts";
import { boilsSteadily } from "./scaledOf.ts";
import type { FitToScale, ScaledSetup, ScaleOptions, ScaleSetup } from "./types.ts";

/**
 * The boil-off of `scaleSetup` and how likely it boils steadily, and nothing else: for many lengths one after another.
 *
 * @param fit of the old setup, or undefined
 * @param from the old setup
 * @param to the new one
 * @param options as for `scaleSetup`
 * @throws RangeError as `scaleSetup`
 * Source: as `scaleSetup`.
 * @example
 * const burners = { count: 1, jetDiameter: 0.0017018, pressure: 34_474 };
 * const old = { tank: { length: 0.61, width: 0.152, depth: 0.2, liquidDepth: 0.127 }, burners };
 * const fit = { boilOff: { value: 3.3e-3, standardUncertainty: 1.7e-4 } };
 * const options = { pressure: 101_325, draws: 200 };
 * boilOffAt(fit, old, old, options).boilOff.value === scaleSetup(fit, old, old, options).boilOff.value // true
 */
export function boilOffAt(
  fit: FitToScale | undefined,
  from: ScaleSetup,
  to: ScaleSetup,
  options: ScaleOptions,
): Pick<ScaledSetup, "boilOff" | "boilsSteadily"> {
  const drawn = drawsOf(fit, from, to, options);
  const boilOff = answerOfDraws(
    drawn.draws.map((one) => one.boilOff),
    drawn.weights,
  );
  return { boilOff, boilsSteadily: boilsSteadily(drawn) };
}
