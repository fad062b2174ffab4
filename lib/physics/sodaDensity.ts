import { zeroCelsius } from "./constants.ts";
import { plain } from "./needNumber.ts";
import { polynomial } from "./polynomial.ts";
import { stepped } from "./stepped.ts";
import { waterDensity } from "./waterDensity.ts";

const k = Float64Array.of(5007.2279636, -25131.164248, 74107.692582, -104657.48684, 69821.773186, -18145.91181);
const l = Float64Array.of(-64.786269079, 525.34360564, -1608.4471903, 2350.9753235, -1660.9035108, 457.6437435);
const m = Float64Array.of(0.24436776978, -1.9737722344, 6.04601497138, -8.9090614947, 6.37146769397, -1.7816083111);

const strongest = [
  [0, 0.2],
  [10, 0.3],
  [20, 0.5],
  [60, 0.6],
  [70, 0.7],
  [150, 0.8],
] as const;

function published(root: number, t: number): number {
  return polynomial(k, root) + polynomial(l, root) * t + polynomial(m, root) * t * t;
}

/**
 * Density, kg/m³, of a solution of sodium hydroxide alone from its water mass fraction and T, K. The equation misses
 * plain water by up to 2 kg/m³; the miss is taken out there and fades as the eighth power of the water fraction.
 * Source: Olsson, Jernqvist and Aly, Int. J. Thermophys. 18 (1997) 779.
 */
export function sodaDensity(water: number, T: number): number {
  const t = T - zeroCelsius;
  const most = stepped(strongest, t);
  if (!(1 - water <= most + 1e-12)) {
    throw new RangeError(
      `invalid brine: ${plain(100 * (1 - water))} wt% sodium hydroxide; 0 to ${plain(100 * most)} wt% at ${plain(T)} K`,
    );
  }
  return published(Math.sqrt(water), t) + (waterDensity(T) - published(1, t)) * water ** 8;
}
