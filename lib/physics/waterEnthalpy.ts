import { needNumber } from "./needNumber.ts";
import { criticalTemperature, saturationSlope } from "./saturatedWater.ts";
import { waterDensity } from "./waterDensity.ts";

/**
 * Enthalpy of plain liquid water at the pressure of its own steam, counted from liquid water at 0 °C (strictly: from
 * the triple point, 0.04 kJ/kg away).
 *
 * @param T temperature, K; 273.15 to 647
 * @returns enthalpy, J/kg
 * @throws RangeError outside 273.15 to 647 K
 * Source: IAPWS SR1-86(1992), eqs. 4 and 6.
 * @example
 * waterEnthalpy(373.15); // 419162.8 J/kg
 */
export function waterEnthalpy(T: number): number {
  const theta = needNumber("temperature", T, 273.15, 647, "K") / criticalTemperature;
  const alpha =
    -1135.905627715 -
    5.65134998e-8 * theta ** -19 +
    2690.66631 * theta +
    127.287297 * theta ** 4.5 -
    135.003439 * theta ** 5 +
    0.981825814 * theta ** 54.5;
  return 1000 * alpha + (T / waterDensity(T)) * saturationSlope(T);
}
