import { exact } from "../measure/measuredValue.ts";
import type { Value } from "../measure/types.ts";
import { findUnit } from "../measure/unit.ts";

/**
 * A number of a formula as an amount without doubt. A temperature is taken as a point on the scale, or as a difference.
 * @param number The number as written.
 * @param unit Its unit, if one was written.
 * @param point Whether °F, °C and K are meant as points on the scale.
 * @returns The amount in SI.
 * @throws RangeError for a text that is no unit.
 * @example literalValue(212, "°F", true).value // 373.15
 */
export function literalValue(number: number, unit: string | undefined, point: boolean): Value {
  if (unit === undefined) return exact(number, {});
  const plain = findUnit(unit);
  if (!plain) throw new RangeError(`unknown unit: ${unit}; a unit of the table expected`);
  const scale = point && isTemperature(unit) ? findUnit(unit, "temperature") : undefined;
  if (scale) return exact((number + (scale.offset ?? 0)) * scale.factor, scale.dimension);
  return exact(number * plain.factor, plain.dimension);
}

/**
 * Whether a unit may mean a point on a scale of temperature.
 * @param unit The unit as written.
 * @returns true for °F, °C and K under any of their spellings.
 * @example isTemperature("deg F") // true
 */
export function isTemperature(unit: string): boolean {
  return findUnit(unit, "temperature")?.dimension.point === true;
}
