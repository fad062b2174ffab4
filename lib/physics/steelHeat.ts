import { zeroCelsius } from "./constants.ts";
import { needNumber } from "./needNumber.ts";

/**
 * Heat that parts of carbon steel take up.
 *
 * @param mass kg, 0 or more
 * @param from K; 273.15 to 873.15
 * @param to K; 273.15 to 873.15; below `from` the heat is given off and the result is below zero
 * @returns J
 * @throws RangeError outside these ranges
 * Source: EN 1993-1-2:2005, 3.4.1.2, 425 + 0.773 t - 1.69e-3 t² + 2.22e-6 t³ J/(kg K) from 20 to 600 °C, integrated;
 * from 0 to 20 °C carried on. Handbook values for plain carbon steel lie within 3 % of it.
 * @example
 * steelHeat(1, 293.15, 417.6); // 58780 J: 1 kg from 20 °C to the bath's 292 °F
 */
export function steelHeat(mass: number, from: number, to: number): number {
  needNumber("mass of steel", mass, 0, 1e6, "kg");
  needNumber("temperature", from, 273.15, 873.15, "K");
  needNumber("temperature", to, 273.15, 873.15, "K");
  return mass * (enthalpy(to - zeroCelsius) - enthalpy(from - zeroCelsius));
}

/** J/kg over 0 °C. */
function enthalpy(t: number): number {
  return t * (425 + t * (0.773 / 2 + t * (-1.69e-3 / 3 + t * (2.22e-6 / 4))));
}
