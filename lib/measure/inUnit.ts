import { sameExponents } from "./dimension.ts";
import { dimensionName } from "./dimensionName.ts";
import type { Dimension, Unit } from "./types.ts";
import { unit as unitOf } from "./unit.ts";
import { waterUnit } from "./water.ts";

/**
 * The unit made to measure `dimension`: °F with its zero for a temperature on a scale and without for a difference,
 * a liquid measure by the water it holds where a mass is measured.
 *
 * @throws TypeError where the unit measures something else; RangeError for an unknown one.
 * @example
 * unitMeasuring("°F", { temperature: 1 }).offset // undefined
 */
export function unitMeasuring(unit: string | Unit, dimension: Dimension): Unit {
  const point = dimension.point === true;
  const given = typeof unit === "string" ? unitOf(unit, point ? "temperature" : "number") : unit;
  const fitted = waterUnit(given, dimension);
  if (!fitted) {
    const what = given.symbol === "" ? "no unit" : given.symbol;
    throw new TypeError(`invalid unit: ${what}; a unit of ${dimensionName(dimension)} expected`);
  }
  if (!sameExponents(dimension, { temperature: 1 })) return fitted;
  const { symbol, factor } = fitted;
  if (!point) return { symbol, dimension, factor };
  return { symbol, dimension, factor, offset: fitted.offset ?? unitOf(symbol, "temperature").offset ?? 0 };
}

/**
 * An SI value in another unit.
 *
 * @param si in SI units of `dimension`
 * @param unit name of a unit of that dimension; a liquid measure stands for its water where a mass is measured
 * @throws TypeError where the unit measures something else; RangeError for an unknown one.
 * @example
 * inUnit(0.45359237, { mass: 1 }, "oz") // 16
 */
export function inUnit(si: number, dimension: Dimension, unit: string | Unit): number {
  const { factor, offset } = unitMeasuring(unit, dimension);
  return si / factor - (offset ?? 0);
}

/**
 * A number in a unit as SI value: the way back from `inUnit`.
 *
 * @param dimension what it measures; if absent, what the unit measures by itself (°F: a point on the scale)
 * @throws TypeError where the unit measures something else; RangeError for an unknown one.
 * @example
 * fromUnit(212, "°F") // 373.15
 */
export function fromUnit(number: number, unit: string | Unit, dimension?: Dimension): number {
  const given = typeof unit === "string" ? unitOf(unit, "temperature") : unit;
  const { factor, offset } = unitMeasuring(unit, dimension ?? given.dimension);
  return (number + (offset ?? 0)) * factor;
}
