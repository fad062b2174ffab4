import { airGasConstant, atmosphere, standardGravity } from "./constants.ts";
import { needNumber } from "./needNumber.ts";

/**
 * Altitude at which the standard atmosphere has a pressure: the inverse of {@link standardPressure}.
 *
 * @param p air pressure, Pa; 22,632 to 107,478
 * @returns geopotential height above sea level, m
 * @throws RangeError outside 22,632 to 107,478 Pa
 * Source: ISO 2533:1975 and ICAO Doc 7488, troposphere.
 * @example
 * standardAltitude(89874.6); // 1000 m
 */
export function standardAltitude(p: number): number {
  needNumber("pressure", p, 22632, 107478, "Pa");
  return (288.15 / 0.0065) * (1 - (p / atmosphere) ** ((airGasConstant * 0.0065) / standardGravity));
}
