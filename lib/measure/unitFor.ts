import { kindFacts } from "./kinds.ts";
import type { Kind, UnitSystem } from "./types.ts";

/**
 * The page's usual unit of a kind: "fl oz/min" for a flow of water in US units, "ml/min" in metric ones.
 *
 * @example
 * unitFor("pressure", "US") // "inHg"
 */
export function unitFor(kind: Kind, system: UnitSystem): string {
  return kindFacts(kind)[system];
}
