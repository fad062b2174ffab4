import type { BoilingLine } from "./boilingLine.ts";
import { boilingLine, sodaBoilingPoint, waterAccounted } from "./boilingLine.ts";
import { highestPressure, outOfRange, strongestSoda } from "./boilingRange.ts";
import { findZero } from "./findZero.ts";
import { needNumber, plain } from "./needNumber.ts";
import { needBrine, shareOf } from "./readBrine.ts";
import { saturationPressure } from "./saturationPressure.ts";
import type { Brine } from "./types.ts";

/**
 * Vapour pressure over a brine: the air pressure under which it would boil at that temperature. It undoes
 * `boilingPoint` where both reach, and goes on below it: a quiet bath is cooler than its boil.
 *
 * @param brine kg of each salt per kg of water; `{}` is plain water. May be supersaturated, as in `boilingPoint`.
 * @param T temperature, K; 273.15 to 438.15, for sodium hydroxide alone and plain water to 473.15
 * @returns pressure, Pa; with salts at most 105,000
 * @throws RangeError for a temperature, a share or a strength outside the range (hydroxide up to 41.8 wt% below 20 °C,
 * 50 below 60, 64.7 below 70, 70 to 150; a mix as strong as that), for a brine that would boil, for an unknown salt
 *
 * Source: as `boilingPoint`. Sodium nitrate's activity is that of 25 °C throughout; a mix has no published vapour
 * pressure below its boil to be held to: 10 % is a judgement.
 * @example
 * brineVapourPressure({ sodiumHydroxide: 1 }, 419.53); // 101337 Pa: where 50 wt% lye boils
 * brineVapourPressure({ sodiumHydroxide: 1 }, 373.15); // 17684 Pa: water's is 101418
 */
export function brineVapourPressure(brine: Brine, T: number): number {
  needBrine(brine);
  const hydroxide = shareOf(brine, "sodiumHydroxide");
  const nitrate = shareOf(brine, "sodiumNitrate");
  const nitrite = shareOf(brine, "sodiumNitrite");
  const potassium = shareOf(brine, "potassiumNitrate");
  const others = nitrate + nitrite + potassium;
  needNumber("temperature", T, 273.15, others > 0 ? 438.15 : 473.15, "K");
  if (hydroxide + others === 0) return saturationPressure(T);
  const short = (s: number) => {
    const u = Math.exp(s);
    return Math.log(waterAccounted(lineAt(T, u), u, T, hydroxide, nitrate, nitrite, potassium));
  };
  const high = Math.log(strongestSoda);
  const guess = Math.log(hydroxide + 0.3 * nitrate + 0.35 * nitrite + 0.2 * potassium);
  const u =
    others > 0 ? (short(high) > 0 ? strongestSoda : Math.exp(findZero(short, guess - 4, high, guess))) : hydroxide;
  const p = u >= strongestSoda ? Number.NaN : lineAt(T, u).pressure;
  const wrong = u >= strongestSoda ? "weaker brines" : p > highestPressure ? boils : outOfRange(T, p, u, others > 0);
  if (wrong === undefined) return p;
  throw new RangeError(
    `invalid brine: ${plain(hydroxide + others)} kg of salt per kg of water at ${plain(T)} K; ${wrong}`,
  );
}

const boils = `brines with a vapour pressure of at most ${plain(highestPressure)} Pa`;

/** The pressure, and its line, under which a solution of u kg of hydroxide per kg of water boils at T. */
function lineAt(T: number, u: number): BoilingLine {
  // On the boiling line ln p moves nearly with -1/T: each step takes the miss left in 1/T off. Four to six steps.
  let lnPressure = Math.log(saturationPressure(T)) - Math.log1p(u);
  let line = boilingLine(Math.exp(lnPressure));
  for (let i = 0; i < 40; i++) {
    const here = sodaBoilingPoint(line, u);
    const step = 5000 * (1 / here - 1 / T);
    lnPressure += step;
    line = boilingLine(Math.exp(lnPressure));
    if (Math.abs(step) < 1e-13) break;
  }
  return line;
}
