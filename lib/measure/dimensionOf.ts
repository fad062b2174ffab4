import { kindFacts } from "./kinds.ts";
import type { Dimension, Kind } from "./types.ts";

/**
 * What a kind measures; a dimension is what it is.
 *
 * @throws RangeError for a kind that the table does not have.
 * @example
 * dimensionOf("density") // { mass: 1, length: -3 }
 */
export function dimensionOf(kind: Kind | Dimension): Dimension {
  return typeof kind === "string" ? kindFacts(kind).dimension : kind;
}
