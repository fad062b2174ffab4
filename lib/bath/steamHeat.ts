import { saturationPressure } from "../physics/saturationPressure.ts";
import { saturationTemperature } from "../physics/saturationTemperature.ts";
import { steamEnthalpy } from "../physics/steamEnthalpy.ts";
import { tabulate, type UniformTable } from "./uniformTable.ts";

let saturated: UniformTable | undefined;
let last: { readonly p: number; readonly heat: (T: number) => number } | undefined;

/**
 * Enthalpy of the steam that leaves a bath of temperature T: superheated steam of the air's pressure, and below water's
 * boiling point saturated steam (the vapour over a brine is thinner; its enthalpy is 0.5 % more at most).
 *
 * @param p Pa, air pressure
 * @returns a function of K that gives J/kg; kept for the last pressure asked for
 * @example steamHeat(101_325)(417.6) // 2765458 J/kg
 */
export function steamHeat(p: number): (T: number) => number {
  if (last?.p === p) return last.heat;
  const boils = saturationTemperature(p);
  saturated ??= tabulate((T) => steamEnthalpy(T, saturationPressure(T)), 273.15, 423.15, 5);
  const below = saturated;
  const above = tabulate((T) => steamEnthalpy(T, p), boils, boils + 110, 11);
  // Shifted to meet the other branch: they are the same number there but for the tables' own error.
  const shift = above.at(boils) - below.at(boils);
  const heat = (T: number): number => (T >= boils ? above.at(T) : below.at(T) + shift);
  last = { p, heat };
  return heat;
}
