import { kindOfDimension } from "../measure/kindOf.ts";
import type { Dimension } from "../measure/types.ts";
import { unitFor } from "../measure/unitFor.ts";

/**
 * The unit that a line is shown in: the one written for it, else the usual one of its kind.
 * @param dimension What the line measures.
 * @param written The line's unit, if it has one.
 * @returns The unit; "" for a dimension without a kind.
 * @example unitShown({ mass: 1 }, "kg") // "kg"
 */
export function unitShown(dimension: Dimension, written: string | undefined): string {
  const kind = kindOfDimension(dimension);
  return written ?? (kind === undefined ? "" : unitFor(kind, "US"));
}
