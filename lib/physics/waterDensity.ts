import { needNumber } from "./needNumber.ts";
import { criticalDensity, criticalTemperature } from "./saturatedWater.ts";

/**
 * Density of plain liquid water at the pressure of its own steam (at one atmosphere it is the same within 0.005 %).
 *
 * @param T temperature, K; 273.15 to 647
 * @returns density, kg/m³
 * @throws RangeError outside 273.15 to 647 K
 * Source: IAPWS SR1-86(1992), eq. 2.
 * @example
 * waterDensity(293.15); // 998.16 kg/m³
 */
export function waterDensity(T: number): number {
  const tau = 1 - needNumber("temperature", T, 273.15, 647, "K") / criticalTemperature;
  const third = Math.cbrt(tau);
  return (
    criticalDensity *
    (1 +
      1.99274064 * third +
      1.09965342 * third ** 2 -
      0.510839303 * third ** 5 -
      1.75493479 * third ** 16 -
      45.5170352 * third ** 43 -
      6.7469445e5 * third ** 110)
  );
}
