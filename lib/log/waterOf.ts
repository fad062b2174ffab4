import { inUnit, isUnread, type Written } from "../measure/index.ts";
import type { AmountReader } from "./amountReader.ts";

/**
 * A mass of water as a written amount in a unit, its text such that reading it again gives the same.
 *
 * @param kilograms kg, any finite number
 * @param unit a unit of water ("fl oz", "lb")
 * @param read the log's reader of amounts
 * @returns the amount, or undefined where it cannot be written
 * @example
 * waterOf(0.70847, "fl oz", read)?.unit // "fl oz"
 */
export function waterOf(kilograms: number, unit: string, read: AmountReader): Written | undefined {
  const number = Number(inUnit(kilograms, { mass: 1 }, unit).toPrecision(10));
  const written = read(`${number} ${unit}`, "water", unit);
  return isUnread(written) ? undefined : written;
}
