import { baseSymbols } from "./dimensionName.ts";
import { kindOfDimension } from "./kindOf.ts";
import type { Dimension, Unit, UnitSystem } from "./types.ts";
import { unitFor } from "./unitFor.ts";

const raised = new Map([
  [1, ""],
  [2, "²"],
  [3, "³"],
]);

function product(dimension: Dimension, sign: 1 | -1): readonly string[] {
  return baseSymbols.flatMap(([base, symbol]) => {
    const exponent = Number(((dimension[base] ?? 0) * sign).toFixed(3));
    return exponent > 0 ? [`${symbol}${raised.get(exponent) ?? `^${exponent}`}`] : [];
  });
}

/**
 * The unit of the SI for any dimension, spelled out of its base units: for amounts that have no name and no usual unit.
 *
 * @example
 * siUnit({ mass: 1, length: -1, time: -2 }).symbol // "kg/(m s²)"
 */
export function siUnit(dimension: Dimension): Unit {
  const [above, below] = [product(dimension, 1), product(dimension, -1)];
  const over = below.length > 1 ? `(${below.join(" ")})` : below.join("");
  const symbol = over === "" ? above.join(" ") : `${above.join(" ") || "1"}/${over}`;
  return { symbol, dimension, factor: 1 };
}

/**
 * The unit that an amount is shown in where nobody chose one: the usual one of its kind, else the SI's.
 *
 * @example
 * usualUnit({ mass: 1 }, "US") // "lb"
 */
export function usualUnit(dimension: Dimension, system: UnitSystem): string {
  const kind = kindOfDimension(dimension);
  return kind === undefined ? siUnit(dimension).symbol : unitFor(kind, system);
}
