import { zeroCelsius } from "./constants.ts";
import { needNumber } from "./needNumber.ts";
import { needBrine, shareOf } from "./readBrine.ts";
import { saltVolume } from "./saltVolume.ts";
import { sodaDensity } from "./sodaDensity.ts";
import type { Brine } from "./types.ts";
import { waterDensity } from "./waterDensity.ts";

/**
 * Density of a brine with all its salt dissolved.
 *
 * @param brine kg of each salt per kg of water; `{}` is plain water
 * @param T temperature, K; 273.15 to 473.15
 * @returns density, kg/m³
 * @throws RangeError outside the range; hydroxide at most 20 wt% (of hydroxide and water) from 0 °C, 30 from 10 °C,
 * 50 from 20 °C, 60 from 60 °C, 70 from 70 °C, 80 from 150 °C
 *
 * Hydroxide: Olsson, Jernqvist and Aly, Int. J. Thermophys. 18 (1997) 779, good to 0.3 %. The other salts by their
 * apparent volumes, Laliberte, J. Chem. Eng. Data 54 (2009) 1725: at bath strength and heat beyond its data, so take
 * a mixture as known to 2 % (95 %, a judgement).
 * @example
 * brineDensity({ sodiumHydroxide: 0.89, sodiumNitrate: 0.445 }, 417.6); // 1,528 kg/m³: 12.7 lb a gallon
 */
export function brineDensity(brine: Brine, T: number): number {
  needBrine(brine);
  needNumber("temperature", T, 273.15, 473.15, "K");
  const hydroxide = shareOf(brine, "sodiumHydroxide");
  const nitrate = shareOf(brine, "sodiumNitrate");
  const nitrite = shareOf(brine, "sodiumNitrite");
  const potassium = shareOf(brine, "potassiumNitrate");
  const salt = hydroxide + nitrate + nitrite + potassium;
  if (salt === 0) return waterDensity(T);
  const solute = salt / (1 + salt);
  const t = T - zeroCelsius;
  let volume = (1 + hydroxide) / sodaDensity(1 / (1 + hydroxide), T);
  if (nitrate > 0) volume += nitrate * saltVolume("sodiumNitrate", solute, t);
  if (nitrite > 0) volume += nitrite * saltVolume("sodiumNitrite", solute, t);
  if (potassium > 0) volume += potassium * saltVolume("potassiumNitrate", solute, t);
  return (1 + salt) / volume;
}
