import { brineEnthalpyTotal, needEnthalpy, totalSalt } from "./brineEnthalpy.ts";
import type { Brine } from "./types.ts";

const step = 0.05;

/**
 * Heat capacity of a brine: the slope of `brineEnthalpy` against temperature.
 *
 * @param brine kg of each salt per kg of water; `{}` is plain water
 * @param T temperature, K; 273.15 to 473.15
 * @returns J/(kg K), per kg of brine
 * @throws RangeError as `brineEnthalpy`
 * Source: as `brineEnthalpy`, by a difference of 0.1 K (of 0.05 K at the cold end).
 * @example
 * brineHeatCapacity({ sodiumHydroxide: 0.89, sodiumNitrate: 0.445 }, 417.6); // 2902.6 J/(kg K), where plain water would have 4,290
 */
export function brineHeatCapacity(brine: Brine, T: number): number {
  needEnthalpy(brine, T);
  const low = Math.max(T - step, 273.15);
  const rise = brineEnthalpyTotal(brine, 1, T + step) - brineEnthalpyTotal(brine, 1, low);
  return rise / (T + step - low) / (1 + totalSalt(brine));
}
