import { airGasConstant, atmosphere, standardGravity } from "./constants.ts";
import { needNumber } from "./needNumber.ts";

const lapse = 0.0065;
const index = (airGasConstant * lapse) / standardGravity;
const factor = atmosphere ** index * (lapse / 288.15);

/**
 * Air pressure where the tank stands, from the "corrected to sea level" figure of a weather report or of a wall
 * barometer set to it (altimeter setting). A barometer that shows the pressure of its own place needs no conversion.
 *
 * @param seaLevel barometer reading corrected to sea level, Pa; 90,000 to 110,000
 * @param altitude height of the place, m; -500 to 5,000
 * @returns pressure at the place, Pa
 * @throws RangeError where either is out of its range
 * Source: altimeter setting equation of the US National Weather Service, (p^n + (p0^n L / T0) h)^(1/n), with the
 * ISO 2533:1975 constants and without the instrument's 0.3 hPa (form from memory).
 * @example
 * barometerToPressure(101325, 1000); // 89874.6 Pa, the standard atmosphere's figure
 */
export function barometerToPressure(seaLevel: number, altitude: number): number {
  needNumber("barometer reading", seaLevel, 90000, 110000, "Pa");
  needNumber("altitude", altitude, -500, 5000, "m");
  return (seaLevel ** index - factor * altitude) ** (1 / index);
}
