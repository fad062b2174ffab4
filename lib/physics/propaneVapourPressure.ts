import { needNumber } from "./needNumber.ts";

/**
 * Pressure in a cylinder that holds liquid propane, by the temperature of the liquid: colder than the air while gas is
 * drawn. More than this no regulator can pass on.
 *
 * @param T temperature of the liquid, K; 231 to 320 (propane boils at 231 K under one atmosphere)
 * @returns absolute pressure, Pa
 * @throws RangeError outside 231 to 320 K
 * Source: Antoine's equation, log10 p/bar = 3.98292 - 819.296/(T - 24.417), NIST Chemistry WebBook, 230.6 to 320.7 K
 * (from memory); within 5 % of a trade table from -20 to 110 °F.
 * @example
 * propaneVapourPressure(294.26); // 884500 Pa: 114 psi over the air's at 70 °F
 */
export function propaneVapourPressure(T: number): number {
  needNumber("temperature of the propane", T, 231, 320, "K");
  return 1e5 * 10 ** (3.98292 - 819.296 / (T - 24.417));
}
