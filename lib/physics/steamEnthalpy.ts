import { waterGasConstant } from "./constants.ts";
import { needNumber, plain } from "./needNumber.ts";
import { saturationPressureUnchecked } from "./saturationPressure.ts";
import { steamIdeal, steamResidual } from "./steamRegion.ts";

/**
 * Enthalpy of steam, on the same zero as `waterEnthalpy`. Steam that leaves a brine has the brine's temperature and the
 * air's pressure: it is superheated.
 *
 * @param T temperature, K; 273.15 to 1073.15
 * @param p pressure, Pa; above 0, at most that at which water boils at T (up to 623.15 K), never above 10 MPa
 * @returns enthalpy, J/kg
 * @throws RangeError outside the range, or where water would be liquid
 * Source: IAPWS R7-97(2012), region 2, eqs. 15 to 17.
 * @example
 * steamEnthalpy(417.6, 101325); // 2765458.2 J/kg at 144.4 °C
 */
export function steamEnthalpy(T: number, p: number): number {
  needNumber("temperature", T, 273.15, 1073.15, "K");
  // A little over the line is let through: at the boiling point itself rounding may land on either side.
  const highest = T < 623.15 ? saturationPressureUnchecked(T) * (1 + 1e-6) : 10e6;
  if (!(p > 0 && p <= Math.min(highest, 10e6))) {
    throw new RangeError(
      `invalid pressure: ${plain(p)} Pa; above 0 to ${plain(Math.min(highest, 10e6))} Pa for steam at ${plain(T)} K`,
    );
  }
  const pi = p / 1e6;
  const tau = 540 / T;
  let slope = 0;
  for (const [j, n] of steamIdeal) slope += n * j * tau ** (j - 1);
  for (const [i, j, n] of steamResidual) if (j > 0) slope += n * pi ** i * j * (tau - 0.5) ** (j - 1);
  return waterGasConstant * 540 * slope;
}
