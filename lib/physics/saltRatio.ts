import { boilingLine, sodaBoilingPoint, waterAccounted } from "./boilingLine.ts";
import { needBoilingPressure, outOfRange, strongestSoda } from "./boilingRange.ts";
import { findZero } from "./findZero.ts";
import { plain } from "./needNumber.ts";
import { needBrine } from "./readBrine.ts";
import type { Brine } from "./types.ts";

/**
 * kg of salt for each kg of water in a brine that boils at a temperature: the inverse of `boilingPoint`.
 *
 * @param T boiling point, K; from that of plain water under p to 438.15 (hydroxide alone 473.15)
 * @param p air pressure, Pa; as for `boilingPoint`
 * @param proportions the salts' shares by weight, on any scale: kg in the bath will do
 * @returns kg of all salts together per kg of water
 * @throws RangeError below the boiling point of water, above the range, or without any salt
 * Source: as `boilingPoint`, which it undoes to 1e-9.
 * @example
 * saltRatio(417.6, 101325, { sodiumHydroxide: 2, sodiumNitrate: 1 }); // 1.335 kg/kg at 144.45 °C
 */
export function saltRatio(T: number, p: number, proportions: Brine): number {
  needBrine(proportions);
  const a = portion(proportions, "sodiumHydroxide");
  const b = portion(proportions, "sodiumNitrate");
  const c = portion(proportions, "sodiumNitrite");
  const d = portion(proportions, "potassiumNitrate");
  const total = a + b + c + d;
  if (total === 0) throw new RangeError("missing salts: no proportions; at least one salt above 0");
  const mixed = b + c + d > 0;
  needBoilingPressure(p, mixed);
  const line = boilingLine(p);
  if (!(T >= line.water)) {
    throw new RangeError(
      `invalid temperature: ${plain(T)} K; at least ${plain(line.water)} K, where water boils at ${plain(p)} Pa`,
    );
  }
  if (T - line.water < 1e-12) return 0;
  const wrong = T > 500 ? "brines that boil at no more than 438.15 K" : undefined;
  const u = wrong === undefined ? sodaThatBoilsAt(T, line) : strongestSoda;
  const limit = wrong ?? (u >= strongestSoda ? "a lower temperature" : outOfRange(T, p, u, mixed));
  if (limit !== undefined) throw new RangeError(`invalid temperature: ${plain(T)} K at ${plain(p)} Pa; ${limit}`);
  return 1 / waterAccounted(line, u, T, a / total, b / total, c / total, d / total);
}

function portion(proportions: Brine, salt: keyof Brine): number {
  const value = proportions[salt] ?? 0;
  if (value >= 0 && value < Number.POSITIVE_INFINITY) return value;
  throw new RangeError(`invalid share of ${salt}: ${plain(value)}; 0 or more`);
}

/** kg of hydroxide per kg of water of the hydroxide solution that boils at T. */
function sodaThatBoilsAt(T: number, line: ReturnType<typeof boilingLine>): number {
  const rise = T - line.water;
  const short = (s: number) => {
    const here = sodaBoilingPoint(line, Math.exp(s)) - line.water;
    return Math.log(rise / Math.max(here, 1e-300));
  };
  const high = Math.log(strongestSoda);
  if (short(high) > 0) return strongestSoda;
  return Math.exp(findZero(short, Math.log(rise / 40) - 4, high, Math.log(rise / 45)));
}
