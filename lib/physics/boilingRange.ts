import { zeroCelsius } from "./constants.ts";
import { needNumber, plain } from "./needNumber.ts";
import { saturationPressureUnchecked } from "./saturationPressure.ts";
import { stepped } from "./stepped.ts";

/** Where the correlations of the boiling line hold. */
export const lowestPressureMixed = 65_000;
export const lowestPressureSoda = 5_000;
export const highestPressure = 105_000;
export const highestTemperatureMixed = 438.15;
export const highestTemperatureSoda = 473.15;
export const lowestActivity = 0.1;
/** kg of hydroxide per kg of water: the most that the search looks at. */
export const strongestSoda = 3.9;

/** Throws where the pressure lies outside what the salts of a brine allow. */
export function needBoilingPressure(p: number, mixed: boolean): void {
  if (mixed) needNumber("pressure", p, lowestPressureMixed, highestPressure, "Pa", "with nitrate or nitrite");
  else needNumber("pressure", p, lowestPressureSoda, highestPressure, "Pa", "for sodium hydroxide alone");
}

const leastWaterSteps = [
  [0, 0.582],
  [20, 0.5],
  [60, 0.353],
  [70, 0.3],
  [150, 0.2],
] as const;

/** Least water mass fraction of the hydroxide equation at a temperature, K (Olsson et al. 1997, range of validity). */
export function leastWater(T: number): number {
  return stepped(leastWaterSteps, T - zeroCelsius);
}

/** Why a brine that boils at T under p, as strong as u kg of hydroxide per kg of water, is out of range; or nothing. */
export function outOfRange(T: number, p: number, u: number, mixed: boolean): string | undefined {
  const hottest = mixed ? highestTemperatureMixed : highestTemperatureSoda;
  if (!(T <= hottest)) return `brines that boil at no more than ${plain(hottest)} K`;
  if (mixed && p < lowestActivity * saturationPressureUnchecked(T)) return "water activity of at least 0.1";
  // A whisker of slack: the ends of the range are themselves allowed.
  if (!(1 / (1 + u) >= leastWater(T) - 1e-12)) {
    return `strength of at most ${plain(100 * (1 - leastWater(T)))} wt% sodium hydroxide at ${plain(T)} K`;
  }
  return undefined;
}
