import type { BoilingLine } from "./boilingLine.ts";
import { boilingLine, sodaBoilingPoint, waterAccounted } from "./boilingLine.ts";
import { needBoilingPressure, outOfRange, strongestSoda } from "./boilingRange.ts";
import { findZero } from "./findZero.ts";
import { plain } from "./needNumber.ts";
import { needBrine, shareOf } from "./readBrine.ts";
import { saturationTemperature } from "./saturationTemperature.ts";
import type { Brine } from "./types.ts";

/**
 * Boiling point of a brine.
 *
 * @param brine kg of each salt per kg of water; `{}` is plain water. A solution may be supersaturated: whether the
 * salts stay dissolved is not looked at here (see `solubility`).
 * @param p air pressure, Pa; 65,000 to 105,000, for sodium hydroxide alone from 5,000, for plain water 611.213 to 22.064e6
 * @returns temperature, K; at most 438.15 (165 °C), for hydroxide alone 473.15 (200 °C)
 * @throws RangeError for a pressure, a share or a strength outside the range, and for an unknown salt
 *
 * Hydroxide: Olsson, Jernqvist and Aly, Int. J. Thermophys. 18 (1997) 779. Sodium nitrate: Zaveri et al., J. Geophys.
 * Res. 113 (2008) D13204. Mixing by Zdanovskii, Stokes and Robinson's rule (Rowland and May, J. Chem. Eng. Data 57
 * (2012): most systems conform within the scatter of the data). Good to +1/-3 K at bath strength (95 %, a judgement);
 * `saltCurvePrior` states what a fit should start from.
 * @example
 * boilingPoint({ sodiumHydroxide: 1 }, 101325); // 419.53 K: 50 wt% lye boils at 146 °C
 */
export function boilingPoint(brine: Brine, p: number): number {
  needBrine(brine);
  const hydroxide = shareOf(brine, "sodiumHydroxide");
  const nitrate = shareOf(brine, "sodiumNitrate");
  const nitrite = shareOf(brine, "sodiumNitrite");
  const potassium = shareOf(brine, "potassiumNitrate");
  const others = nitrate + nitrite + potassium;
  if (hydroxide + others === 0) return saturationTemperature(p);
  needBoilingPressure(p, others > 0);
  const line = boilingLine(p);
  const u = others > 0 ? equivalentSoda(line, hydroxide, nitrate, nitrite, potassium) : hydroxide;
  const T = sodaBoilingPoint(line, u);
  const wrong = u >= strongestSoda ? "weaker brines" : outOfRange(T, p, u, others > 0);
  if (wrong !== undefined) {
    throw new RangeError(
      `invalid brine: ${plain(hydroxide + others)} kg of salt per kg of water at ${plain(p)} Pa; ${wrong}`,
    );
  }
  return T;
}

/** kg of hydroxide per kg of water of the hydroxide solution that boils where this mixture does. */
export function equivalentSoda(line: BoilingLine, a: number, b: number, c: number, d: number): number {
  const excess = (s: number) => {
    const u = Math.exp(s);
    return Math.log(waterAccounted(line, u, sodaBoilingPoint(line, u), a, b, c, d));
  };
  const guess = a + 0.3 * b + 0.35 * c + 0.2 * d;
  const high = Math.log(strongestSoda);
  if (excess(high) > 0) return strongestSoda;
  return Math.exp(findZero(excess, Math.log(guess) - 4, high, Math.log(guess)));
}
