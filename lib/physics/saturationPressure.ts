import { needNumber } from "./needNumber.ts";
import { saturationLine as n } from "./saturationLine.ts";

/**
 * Pressure at which plain water boils at a temperature.
 *
 * @param T temperature, K; 273.15 to 647.096
 * @returns pressure, Pa
 * @throws RangeError outside 273.15 to 647.096 K
 * Source: IAPWS R7-97(2012), industrial formulation 1997, region 4, eq. 30.
 * @example
 * saturationPressure(373.15); // 101417.98 Pa, a little more than one atmosphere
 */
export function saturationPressure(T: number): number {
  return saturationPressureUnchecked(needNumber("temperature", T, 273.15, 647.096, "K"));
}

/** The same without the check of its range, for inner loops that have made it. */
export function saturationPressureUnchecked(T: number): number {
  const theta = T + n[9] / (T - n[10]);
  const a = theta * theta + n[1] * theta + n[2];
  const b = n[3] * theta * theta + n[4] * theta + n[5];
  const c = n[6] * theta * theta + n[7] * theta + n[8];
  const root = (2 * c) / (-b + Math.sqrt(b * b - 4 * a * c));
  return 1e6 * root * root * root * root;
}
