import { subtract } from "./arithmetic.ts";
import { coverage95, interval95, standardUncertainty } from "./standardUncertainty.ts";
import type { Value } from "./types.ts";

/**
 * Probability that one value is truly greater than another, 0 to 1. What both are off by together cancels: two cases
 * that share a thermometer are compared as surely as if it were exact.
 *
 * @param a one value
 * @param b the other, of the same kind
 * @param by "most" where the greater one wins, "least" where the smaller one does
 * @returns probability that a wins; 0.5 where they are exactly the same
 * @throws TypeError for values of different kinds
 * Source: the difference by JCGM 100:2008, 5.2, taken as normal; where its 95 % interval is lopsided, as two half
 * normals that meet at its value. Normal distribution: Abramowitz and Stegun, 7.1.26 (from memory), good to 1e-7.
 * @example
 * const gas = (kg, u, source) => measuredValue(kg, u, { mass: 1 }, source);
 * winsOver(gas(2, 0.3, "tank one"), gas(2.5, 0.4, "tank two"), "least"); // 0.841
 */
export function winsOver(a: Value, b: Value, by: "most" | "least" = "most"): number {
  const ahead = by === "most" ? subtract(a, b) : subtract(b, a);
  if (standardUncertainty(ahead) === 0) return ahead.value === 0 ? 0.5 : Number(ahead.value > 0);
  const [low, high] = interval95(ahead);
  const half = ahead.value > 0 ? ahead.value - low : high - ahead.value;
  if (!(half > 0)) return Number(ahead.value > 0);
  return below((coverage95 * ahead.value) / half);
}

function below(x: number): number {
  const z = Math.abs(x) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * z);
  const poly = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const tail = 0.5 * poly * Math.exp(-z * z);
  return x > 0 ? 1 - tail : tail;
}
