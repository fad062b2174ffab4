import { boilingLine, sodaBoilingPoint, waterAccounted } from "./boilingLine.ts";
import { boilingPoint, equivalentSoda } from "./boilingPoint.ts";
import { shareOf } from "./readBrine.ts";
import type { Brine } from "./types.ts";

const step = 1e-4;

/**
 * How fast the boiling point climbs as water leaves: k = -dT/d(ln W) at fixed salt. Losing 1 % of the water raises
 * the boiling point by k/100.
 *
 * @param brine kg of each salt per kg of water
 * @param p air pressure, Pa; as for `boilingPoint`
 * @returns K; 0 for plain water
 * @throws RangeError as `boilingPoint`
 * Source: derivative of `boilingPoint`, by a central difference along the boiling line (error below 1e-6 of k).
 * @example
 * boilingPointSlope({ sodiumHydroxide: 0.89, sodiumNitrate: 0.445 }, 101325); // 39.58 K: 0.40 K for 1 % of the water
 */
export function boilingPointSlope(brine: Brine, p: number): number {
  boilingPoint(brine, p);
  const a = shareOf(brine, "sodiumHydroxide");
  const b = shareOf(brine, "sodiumNitrate");
  const c = shareOf(brine, "sodiumNitrite");
  const d = shareOf(brine, "potassiumNitrate");
  if (a + b + c + d === 0) return 0;
  const line = boilingLine(p);
  const u = b + c + d > 0 ? equivalentSoda(line, a, b, c, d) : a;
  const more = u * (1 + step);
  const less = u * (1 - step);
  const hot = sodaBoilingPoint(line, more);
  const cool = sodaBoilingPoint(line, less);
  const change =
    Math.log(waterAccounted(line, less, cool, a, b, c, d)) - Math.log(waterAccounted(line, more, hot, a, b, c, d));
  return (hot - cool) / change;
}
