import { answerOfDraws } from "./answerOfDraws.ts";
import { type Drawn, drawsOf } from "./drawsOf.ts";
import { gasOf, noGasDoubt } from "./gasOf.ts";
import type { FitToScale, Proportion, ScaleOptions, ScaleSetup } from "./types.ts";

/**
 * What plain proportion makes of the boil-off, to length and to gas, and how far that lies from what physics says: a
 * longer tank on the same fire boils off less, not more.
 *
 * @param fit of the old setup; needed, for proportion starts from it
 * @param from the old setup
 * @param to the new one
 * @param options as for `scaleSetup`
 * @returns kg/s, and the share by which it lies over (+) or under (-) the draws of `scaleSetup`
 * @throws RangeError as `scaleSetup`
 * Source: none; it is shown to be doubted.
 * @example
 * const burners = { count: 1, jetDiameter: 0.0017018, pressure: 34_474 };
 * const old = { tank: { length: 0.61, width: 0.152, depth: 0.2, liquidDepth: 0.127 }, burners };
 * const fit = { boilOff: { value: 3.3e-3, standardUncertainty: 1.7e-4 } };
 * const long = { ...old, tank: { ...old.tank, length: 1.22 } };
 * const { byLength, byGas } = plainProportion(fit, old, long, { pressure: 101_325, draws: 500 });
 * byLength.boilOff // 0.0066: twice the length, twice the boil-off, it says
 * byLength.over.value > 0.5 // true
 * byGas.boilOff // 0.0033
 */
export function plainProportion(
  fit: FitToScale,
  from: ScaleSetup,
  to: ScaleSetup,
  options: ScaleOptions,
): { readonly byLength: Proportion; readonly byGas: Proportion } {
  return proportionOf(fit, drawsOf(fit, from, to, options));
}

/**
 * The same from draws that are there already.
 *
 * @example proportionOf(fit, drawsOf(fit, from, to, options)).byLength.boilOff // kg/s
 */
export function proportionOf(
  fit: FitToScale,
  { scene, draws, weights }: Drawn,
): { readonly byLength: Proportion; readonly byGas: Proportion } {
  const { from, to, pressure } = scene;
  const says = (times: number): Proportion => {
    const boilOff = fit.boilOff.value * times;
    const over = draws.map((draw) => (draw.boilOff > 0 ? boilOff / draw.boilOff - 1 : Infinity));
    return { boilOff, over: answerOfDraws(over, weights) };
  };
  const gas = (setup: ScaleSetup) => gasOf(setup.burners, pressure, noGasDoubt);
  return { byLength: says(to.tank.length / from.tank.length), byGas: says(gas(to) / gas(from)) };
}
