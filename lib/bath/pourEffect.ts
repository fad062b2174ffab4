import { brineHeatCapacity, evaporationHeat, steamEnthalpy, waterEnthalpy } from "../physics/index.ts";
import type { Brine } from "../physics/types.ts";
import type { BrineCurve } from "./brineCurve.ts";

/** K: tap water, about. */
const tap = 288.15;
/** The tank's own steel: some 5 % of the bath's capacity in sheet of 2 to 3 mm. */
const steel = 1.05;
/** Heats of the brine to 2 %, tap water to 8 K, the other salts' heat of mixing, which is not in it (a judgement). */
const doubt = 0.03;

/**
 * Water that a boiling bath has more of, for each kilogram poured in cold, once it stands on its boiling line again.
 * The steam goes on as the fire makes it, less what it takes to warm the pour, plus what the pour's dilution and the
 * fall of the boiling point give back: (steam - pour) / (λ + C dT/dW), in heats by kilogram.
 *
 * @param masses of the salts in the tank, kg
 * @param water in it, kg
 * @param curve their boiling line
 * @param pressure Pa
 * @returns kg for each kg, about 0.95 at bath strength, and its standard uncertainty
 * @throws RangeError as the physics does
 * Source: `evaporationHeat`, `brineHeatCapacity`; the enthalpy balance of a boiling bath.
 * @example pourEffect({ sodiumHydroxide: 8, sodiumNitrate: 4 }, 9, curve, 101_325).value
 */
export function pourEffect(
  masses: Brine,
  water: number,
  curve: BrineCurve,
  pressure: number,
): { readonly value: number; readonly u: number } {
  const total = Object.values(masses).reduce((sum, kg) => sum + kg, 0);
  const lnRatio = Math.min(curve.end.lnRatio, Math.log(total / water));
  const brine = Object.fromEntries(
    Object.entries(masses).map(([salt, kg]) => [salt, (kg / total) * Math.exp(lnRatio)]),
  ) as Brine;
  const T = curve.boils(lnRatio);
  const capacity = steel * brineHeatCapacity(brine, T) * (1 + Math.exp(lnRatio));
  const perWater = evaporationHeat(brine, pressure) + capacity * curve.slope(lnRatio);
  return { value: (steamEnthalpy(T, pressure) - waterEnthalpy(tap)) / perWater, u: doubt };
}
