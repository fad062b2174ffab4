import { airGasConstant, atmosphere, standardGravity } from "./constants.ts";
import { needNumber } from "./needNumber.ts";

const seaLevelTemperature = 288.15;
const lapse = 0.0065;
const exponent = standardGravity / (airGasConstant * lapse);

/**
 * Air pressure of the standard atmosphere at an altitude: the best guess where there is no barometer. Weather moves
 * the true pressure by about 1 % either way.
 *
 * @param altitude geopotential height above sea level, m; -500 to 11,000
 * @returns pressure, Pa
 * @throws RangeError outside -500 to 11,000 m
 * Source: ISO 2533:1975 and ICAO Doc 7488, troposphere.
 * @example
 * standardPressure(1000); // 89874.6 Pa
 */
export function standardPressure(altitude: number): number {
  needNumber("altitude", altitude, -500, 11000, "m");
  return atmosphere * (1 - (lapse * altitude) / seaLevelTemperature) ** exponent;
}
