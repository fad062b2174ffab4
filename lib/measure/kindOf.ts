import { sameDimension } from "./dimension.ts";
import { kinds } from "./kinds.ts";
import type { Dimension, Kind, Unit } from "./types.ts";

/**
 * The kind of quantity that a unit measures, as far as the unit tells: "lb" a mass, "fl oz" a volume (whether it is
 * of water only the field knows), "°F" a temperature on the scale. Undefined for one that no kind has.
 *
 * @example
 * kindOf({ symbol: "psi", dimension: { mass: 1, length: -1, time: -2 }, factor: 6894.757 }) // "pressure"
 */
export function kindOf(unit: Pick<Unit, "symbol" | "dimension">): Kind | undefined {
  if (unit.symbol === "%") return "share";
  return kindOfDimension(unit.dimension);
}

/**
 * The first kind that has a dimension.
 *
 * @example
 * kindOfDimension({ length: 1 }) // "length"
 */
export function kindOfDimension(dimension: Dimension): Kind | undefined {
  for (const [kind, facts] of kinds) if (sameDimension(facts.dimension, dimension)) return kind;
  return undefined;
}
