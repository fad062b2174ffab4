import { polynomial } from "./polynomial.ts";

const k = Float64Array.of(
  -113.93947,
  209.82305,
  494.77153,
  6860.833,
  2676.6433,
  -21740.328,
  -34750.872,
  -20122.157,
  -4102.989,
);
const l = Float64Array.of(
  16.240074,
  -11.864008,
  -223.47305,
  -1650.3997,
  -5997.3118,
  -12318.744,
  -15303.153,
  -11707.48,
  -5364.9554,
  -1338.5412,
  -137.96889,
);
const m = Float64Array.of(
  -226.80157,
  293.17155,
  5081.8791,
  36752.126,
  131262,
  259399.54,
  301696.22,
  208617.9,
  81774.024,
  15648.526,
  906.29769,
);

/**
 * Boiling point in °C of a solution of sodium hydroxide alone, from the logarithm of its water mass fraction and of
 * the pressure in kPa. The published vapour pressure equation, ln p = (a1 + a2 t)/(t - a3), solved for t.
 * Source: Olsson, Jernqvist and Aly, Int. J. Thermophys. 18 (1997) 779.
 */
export function sodaBoilingCelsius(lnWater: number, lnKilopascal: number): number {
  return (polynomial(k, lnWater) + polynomial(m, lnWater) * lnKilopascal) / (lnKilopascal - polynomial(l, lnWater));
}
