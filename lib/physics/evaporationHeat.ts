import { boilingPoint } from "./boilingPoint.ts";
import { steamEnthalpy } from "./steamEnthalpy.ts";
import type { Brine } from "./types.ts";
import { waterInBrineEnthalpy } from "./waterInBrineEnthalpy.ts";

/**
 * Heat that boils water out of a brine at its boiling point: enthalpy of the steam less that of the water in the brine.
 * More than plain water's latent heat, because the heat of dilution has to be paid back.
 *
 * @param brine kg of each salt per kg of water; `{}` gives the latent heat of plain water
 * @param p air pressure, Pa; as for `boilingPoint`, for plain water at most 1.55e6
 * @returns J per kg of water boiled off
 * @throws RangeError as `boilingPoint` and `brineEnthalpy`
 * Source: derived from `brineEnthalpy` and `steamEnthalpy`; within 3 % of what Clapeyron's equation makes of the
 * boiling curve.
 * @example
 * evaporationHeat({ sodiumHydroxide: 1 }, 101325); // 2.637e6 J/kg, 17 % more than the 2.256e6 of plain water
 */
export function evaporationHeat(brine: Brine, p: number): number {
  const T = boilingPoint(brine, p);
  return steamEnthalpy(T, p) - waterInBrineEnthalpy(brine, T);
}
