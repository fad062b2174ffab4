import { usualUnit } from "../measure/siUnit.ts";
import type { Dimension } from "../measure/types.ts";

/**
 * The unit that a line is shown in: the one written for it, else the usual one of its kind.
 * @param dimension What the line measures.
 * @param written The line's unit, if it has one.
 * @returns The unit: of the SI where nothing is usual.
 * @example unitShown({ mass: 1 }, "kg") // "kg"
 */
export function unitShown(dimension: Dimension, written: string | undefined): string {
  return written ?? usualUnit(dimension, "US");
}
