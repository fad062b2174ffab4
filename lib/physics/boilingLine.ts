import { molarMass } from "./constants.ts";
import { nitrateMolality } from "./nitrateMolality.ts";
import { nitriteFactor, potassiumNitrateFactor } from "./saltMolality.ts";
import { saturationPressureUnchecked } from "./saturationPressure.ts";
import { saturationTemperatureUnchecked } from "./saturationTemperature.ts";
import { sodaBoilingCelsius } from "./sodaBoilingCelsius.ts";

/**
 * What a pressure fixes: where plain water boils, K, and by how much the hydroxide equation misses that at zero salt.
 * The miss (0.04 K at sea level, 0.16 K at the most) is taken out in full at zero salt and fades as the eighth power
 * of the water mass fraction, so plain water boils on the saturation line and strong brine as published.
 */
export interface BoilingLine {
  readonly lnKilopascal: number;
  readonly pressure: number;
  readonly water: number;
  readonly miss: number;
}

/** The constants of a pressure, Pa (not checked). */
export function boilingLine(p: number): BoilingLine {
  const lnKilopascal = Math.log(p / 1000);
  const water = saturationTemperatureUnchecked(p);
  return { lnKilopascal, pressure: p, water, miss: water - 273.15 - sodaBoilingCelsius(0, lnKilopascal) };
}

/** Boiling point, K, of a solution of sodium hydroxide alone with u kg for each kg of water. */
export function sodaBoilingPoint(line: BoilingLine, u: number): number {
  const lnWater = -Math.log1p(u);
  const fade = Math.exp(8 * lnWater);
  return 273.15 + sodaBoilingCelsius(lnWater, line.lnKilopascal) + line.miss * fade;
}

/**
 * How much of the water the salts account for, by Zdanovskii, Stokes and Robinson's rule: sum of m/m0, where m0 is the
 * molality at which that salt alone would boil at T. The brine boils at T where the sum is 1. Arguments: kg of each
 * salt per kg of water; u is the hydroxide solution (kg/kg) that boils at T.
 */
export function waterAccounted(
  line: BoilingLine,
  u: number,
  T: number,
  hydroxide: number,
  nitrate: number,
  nitrite: number,
  potassiumNitrate: number,
): number {
  let sum = hydroxide / u;
  if (nitrate + nitrite + potassiumNitrate === 0) return sum;
  const aw = Math.min(Math.max(line.pressure / saturationPressureUnchecked(T), 0.1), 1 - 1e-13);
  const m0 = nitrateMolality(aw);
  if (nitrate > 0) sum += nitrate / (molarMass.sodiumNitrate * m0);
  if (nitrite > 0) sum += nitrite / (molarMass.sodiumNitrite * m0 * nitriteFactor(aw));
  if (potassiumNitrate > 0) sum += potassiumNitrate / (molarMass.potassiumNitrate * m0 * potassiumNitrateFactor(aw));
  return sum;
}
