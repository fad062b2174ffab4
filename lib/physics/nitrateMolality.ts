import { polynomial } from "./polynomial.ts";

const a = Float64Array.of(1.34966, -5.20116, 11.49011, -14.4138, 9.07037, -2.29769);
const dilute = 32.2756;
const molesPerKilogram = 55.50868;

/**
 * Molality (mol per kg of water) of the sodium nitrate solution over which the water activity is `aw`, 0.1 to 1.
 * Supersaturated below 0.74. The source changes from a polynomial to a logarithm at 0.97 with a step of 0.5 %;
 * here one glides into the other from 0.95 to 0.98, so that a fit sees no step.
 * Source: Zaveri, Easter, Fast and Peters, J. Geophys. Res. 113 (2008) D13204 (25 °C); that the polynomial gives the
 * salt's mole fraction and the logarithm's form are from memory, confirmed by the checks in test/published.
 */
export function nitrateMolality(aw: number): number {
  if (aw >= 0.98) return -dilute * Math.log(aw);
  const x = polynomial(a, aw);
  const strong = (molesPerKilogram * x) / (1 - x);
  if (aw <= 0.95) return strong;
  const s = (aw - 0.95) / 0.03;
  const share = s * s * (3 - 2 * s);
  return strong + share * (-dilute * Math.log(aw) - strong);
}
