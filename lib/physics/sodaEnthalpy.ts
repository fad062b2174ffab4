import { zeroCelsius } from "./constants.ts";
import { plain } from "./needNumber.ts";
import { polynomial } from "./polynomial.ts";
import { stepped } from "./stepped.ts";
import { waterEnthalpy } from "./waterEnthalpy.ts";

const above = Float64Array.of(1288.4485, -4387.8908, 4938.2298, -1841.189);
const below = Float64Array.of(1, -0.49649131, -4.0915144, 7.2887292, -3.0202651);
const l = Float64Array.of(
  2.3087919,
  -9.0004252,
  167.59914,
  -1051.6368,
  3394.3378,
  -6115.0986,
  6220.8249,
  -3348.8098,
  743.87432,
);
const m = Float64Array.of(0.0230286, -0.37866056, 2.4529593, -8.2693542, 15.728833, -16.944427, 9.6254192, -2.2410628);
const n = Float64Array.of(
  -8.5131313e-5,
  0.0013652823,
  -0.0087568741,
  0.029200398,
  -0.054882983,
  0.058418034,
  -0.032787483,
  0.0075445993,
);

const leastWater = [
  [0, 0.78],
  [4, 0.68],
  [10, 0.58],
  [15, 0.54],
  [26, 0.44],
  [37, 0.4],
  [48, 0.34],
  [60, 0.3],
  [71, 0.28],
  [82, 0.24],
  [93, 0.22],
] as const;

function published(water: number, t: number): number {
  const cold = polynomial(above, water) / polynomial(below, water);
  return cold + (polynomial(l, water) + (polynomial(m, water) + polynomial(n, water) * t) * t) * t;
}

/**
 * Enthalpy, J per kg of solution of sodium hydroxide alone, from its water mass fraction and T, K. The equation misses
 * plain water by up to 3.5 kJ/kg below 145 °C; the miss is taken out there and fades as the eighth power of the water
 * fraction, so that plain water is exact and strong brine as published.
 * Source: Olsson, Jernqvist and Aly, Int. J. Thermophys. 18 (1997) 779.
 */
export function sodaEnthalpy(water: number, T: number): number {
  const t = T - zeroCelsius;
  return 1000 * published(water, t) + (waterEnthalpy(T) - 1000 * published(1, t)) * water ** 8;
}

/** Throws where the hydroxide equation does not reach: too strong for the temperature. */
export function needSodaEnthalpy(water: number, T: number): void {
  const least = stepped(leastWater, T - zeroCelsius);
  if (water >= least - 1e-12) return;
  const strength = plain(100 * (1 - water));
  throw new RangeError(
    `invalid brine: ${strength} wt% sodium hydroxide; 0 to ${plain(100 * (1 - least))} wt% at ${plain(T)} K`,
  );
}
