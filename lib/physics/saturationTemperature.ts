import { needNumber } from "./needNumber.ts";
import { saturationLine as n } from "./saturationLine.ts";

/**
 * Temperature at which plain water boils under a pressure.
 *
 * @param p pressure, Pa; 611.213 to 22,064,000
 * @returns temperature, K
 * @throws RangeError outside 611.213 Pa to 22.064 MPa
 * Source: IAPWS R7-97(2012), industrial formulation 1997, region 4, eq. 31.
 * @example
 * saturationTemperature(101325); // 373.1243 K: 99.974 °C, not 100
 */
export function saturationTemperature(p: number): number {
  return saturationTemperatureUnchecked(needNumber("pressure", p, 611.213, 22.064e6, "Pa"));
}

/** The same without the check of its range, for inner loops that have made it. */
export function saturationTemperatureUnchecked(p: number): number {
  const beta = Math.sqrt(Math.sqrt(p / 1e6));
  const e = beta * beta + n[3] * beta + n[6];
  const f = n[1] * beta * beta + n[4] * beta + n[7];
  const g = n[2] * beta * beta + n[5] * beta + n[8];
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  const sum = n[10] + d;
  return (sum - Math.sqrt(sum * sum - 4 * (n[9] + n[10] * d))) / 2;
}
