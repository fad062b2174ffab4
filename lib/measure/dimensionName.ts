import { sameDimension } from "./dimension.ts";
import { kinds } from "./kinds.ts";
import type { Dimension } from "./types.ts";

/** Base quantities in the order that a unit names them. */
export const baseSymbols = [
  ["mass", "kg"],
  ["length", "m"],
  ["temperature", "K"],
  ["money", "$"],
  ["time", "s"],
] as const;

/**
 * A dimension in words, for messages: "a weight", "a difference of temperatures"; one that has no name is
 * spelled out in SI units ("a quantity in kg² s^-1").
 *
 * @example
 * dimensionName({ length: 3 }) // "a volume"
 */
export function dimensionName(dimension: Dimension): string {
  for (const { dimension: known, says } of kinds.values()) if (sameDimension(known, dimension)) return says;
  const parts = baseSymbols.flatMap(([base, symbol]) => {
    const exponent = dimension[base] ?? 0;
    if (exponent === 0) return [];
    return [exponent === 1 ? symbol : `${symbol}^${Number(exponent.toFixed(3))}`];
  });
  return `a quantity in ${parts.join(" ")}`;
}
