import { zeroCelsius } from "./constants.ts";
import { needNumber } from "./needNumber.ts";
import { needBrine, shareOf } from "./readBrine.ts";
import { needSodaEnthalpy, sodaEnthalpy } from "./sodaEnthalpy.ts";
import type { Brine } from "./types.ts";

/** Heat capacity of a dissolved salt, J/(kg K). Nitrate: about what Laliberte 2009 gives at 40 to 50 wt%; the others are estimates. */
const nitrateHeat = 1350;
const nitriteHeat = 1350;
const potassiumNitrateHeat = 1100;

/**
 * Enthalpy of a brine, counted from liquid water at 0 °C; for hydroxide from the zero of its source, which leaves
 * the heat of dilution right, and for the other salts from the dissolved salt at 0 °C. `brineHeatCapacity` and
 * `evaporationHeat` are derived from it, so a balance that uses them closes.
 *
 * @param brine kg of each salt per kg of water; `{}` is plain water
 * @param T temperature, K; 273.15 to 473.15
 * @returns enthalpy, J per kg of brine
 * @throws RangeError outside the range; hydroxide (in wt% of hydroxide and water) at most 22 from 0 °C, 32 from 4, 42
 * from 10, 46 from 15, 56 from 26, 60 from 37, 66 from 48, 70 from 60, 72 from 71, 76 from 82, 78 from 93 °C
 *
 * Source: hydroxide Olsson, Jernqvist and Aly, Int. J. Thermophys. 18 (1997) 779; water IAPWS SR1-86(1992). The other
 * salts add a constant heat capacity and no heat of mixing, an approximation.
 * @example
 * brineEnthalpy({ sodiumHydroxide: 1 }, 362.65); // 507613.6 J/kg: 50 wt% at 89.5 °C
 */
export function brineEnthalpy(brine: Brine, T: number): number {
  return brineEnthalpyTotal(brine, 1, needEnthalpy(brine, T)) / (1 + totalSalt(brine));
}

/** Checks what `brineEnthalpy` needs, and gives the temperature back. */
export function needEnthalpy(brine: Brine, T: number): number {
  needBrine(brine);
  needNumber("temperature", T, 273.15, 473.15, "K");
  needSodaEnthalpy(1 / (1 + shareOf(brine, "sodiumHydroxide")), T);
  return T;
}

/** kg of all salts per kg of water. */
export function totalSalt(brine: Brine): number {
  return (
    shareOf(brine, "sodiumHydroxide") +
    shareOf(brine, "sodiumNitrate") +
    shareOf(brine, "sodiumNitrite") +
    shareOf(brine, "potassiumNitrate")
  );
}

/** Enthalpy, J, of `water` kg of water with the salts that `brine` holds for one kg (not checked). */
export function brineEnthalpyTotal(brine: Brine, water: number, T: number): number {
  const hydroxide = brine.sodiumHydroxide ?? 0;
  const solution = water + hydroxide;
  const others =
    nitrateHeat * (brine.sodiumNitrate ?? 0) +
    nitriteHeat * (brine.sodiumNitrite ?? 0) +
    potassiumNitrateHeat * (brine.potassiumNitrate ?? 0);
  return solution * sodaEnthalpy(water / solution, T) + others * (T - zeroCelsius);
}
