import { brineEnthalpyTotal, needEnthalpy } from "./brineEnthalpy.ts";
import type { Brine } from "./types.ts";

const step = 1e-4;

/**
 * Partial enthalpy of the water in a brine: what one kg of water brings to a large bath that stays at T. Below that of
 * plain water by the heat of dilution.
 *
 * @param brine kg of each salt per kg of water; `{}` is plain water
 * @param T temperature, K; 273.15 to 473.15
 * @returns J per kg of water
 * @throws RangeError as `brineEnthalpy`
 * Source: derivative of `brineEnthalpy` by the mass of water, by a central difference.
 * @example
 * waterInBrineEnthalpy({ sodiumHydroxide: 1 }, 419.5); // 132549.99 J/kg, where plain water would have 616,420
 */
export function waterInBrineEnthalpy(brine: Brine, T: number): number {
  needEnthalpy(brine, T);
  return (brineEnthalpyTotal(brine, 1 + step, T) - brineEnthalpyTotal(brine, 1 - step, T)) / (2 * step);
}
