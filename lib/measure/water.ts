import { sameExponents } from "./dimension.ts";
import type { Dimension, Unit } from "./types.ts";

/**
 * kg of water in a m³ of a liquid measure: 998.2 kg/m³, pure water at 20 °C and one atmosphere (CIPM formula of
 * Tanaka et al., Metrologia 38 (2001) 301: 998.207; tap water within 0.05 %). A pour at 10 °C holds 0.15 % more, one
 * at 30 °C 0.26 % less: far below what a cup is good for.
 */
export const waterByVolume = 998.2;

/**
 * `unit` made to measure `dimension`, with liquid measures standing for the water they hold: "fl oz" for kg,
 * "fl oz/min" for kg/s, "lb/gal" for kg of salt to kg of water. A unit that fits already comes back as it is, one
 * that cannot fit gives undefined.
 *
 * @example
 * waterUnit({ symbol: "l", dimension: { length: 3 }, factor: 0.001 }, { mass: 1 })?.factor // 0.9982
 */
export function waterUnit(unit: Unit, dimension: Dimension): Unit | undefined {
  if (sameExponents(unit.dimension, dimension)) return unit;
  const volumes = ((unit.dimension.length ?? 0) - (dimension.length ?? 0)) / 3;
  const filled: Dimension = {
    ...unit.dimension,
    length: dimension.length ?? 0,
    mass: (unit.dimension.mass ?? 0) + volumes,
  };
  // Only the unit's own volume may be filled: lb is no unit of volume, though water would make it one.
  const emptier = Math.abs(dimension.length ?? 0) < Math.abs(unit.dimension.length ?? 0);
  if (!emptier || !Number.isInteger(volumes) || !sameExponents(filled, dimension)) return undefined;
  return { symbol: unit.symbol, dimension, factor: unit.factor * waterByVolume ** volumes };
}
