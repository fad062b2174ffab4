import { dimensionName } from "../measure/dimensionName.ts";
import { clockUnit } from "../measure/formatQuantity.ts";
import { unitMeasuring } from "../measure/inUnit.ts";
import { findUnit } from "../measure/unit.ts";
import { isValue } from "./isValue.ts";
import type { Result } from "./types.ts";

/**
 * A worked line's result, stopped if the unit it is to be shown in measures something else.
 * @param result What the formula came to.
 * @param unit The line's unit, if it has one. A liquid measure goes for the water it holds.
 * @returns The same result, or what is wrong.
 * @example inItsUnit({ state: "settled", value: exact(1, { mass: 1 }) }, "in").state // "stopped"
 */
export function inItsUnit(result: Result, unit: string | undefined): Result {
  if (result.state !== "settled" || unit === undefined || !isValue(result.value)) return result;
  const shown = unit === clockUnit ? "min" : unit;
  if (shown !== "" && !findUnit(shown)) return { state: "stopped", says: `"${unit}" is no unit` };
  try {
    unitMeasuring(shown, result.value.dimension);
    return result;
  } catch {
    const what = dimensionName(result.value.dimension);
    return {
      state: "stopped",
      says: `this comes to ${what}, and ${shown === "" ? "a plain number" : `"${unit}"`} was expected`,
    };
  }
}
