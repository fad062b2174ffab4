import type { Written } from "../measure/index.ts";
import type { EntryKind } from "./types.ts";

/** 32 °F and 400 °F in K; a pour of 4 gal in kg; a depth of 6 ft in m: judgements of what a shop's bath can be. */
const coldest = 273.15;
const hottest = 477.6;
const largestPour = 15.2;
const deepest = 1.83;

/**
 * What to say of a number that is kept but does not look right, or undefined.
 *
 * @param kind the entry's kind
 * @param quantity what was read, SI
 * @returns what was expected and what to do
 * @example
 * implausible("reading", written2910F)?.expected // "a bath between 32 °F and 400 °F"
 */
export function implausible(kind: EntryKind, quantity: Written): { expected: string; remedy: string } | undefined {
  const { si } = quantity;
  const remedy = "It was kept as written. Correct it, or strike it out, if it is a slip.";
  if (kind === "reading" && !(si >= coldest && si <= hottest))
    return { expected: "a bath between 32 °F and 400 °F (0 to 204 °C)", remedy };
  if (kind === "addition" && si > largestPour) return { expected: "a pour of less than 4 gal (15 l)", remedy };
  if (kind === "depth" && !(si >= 0 && si <= deepest)) return { expected: "a depth between 0 and 6 ft", remedy };
  if (kind === "burner" && !(si >= 0 && si <= 1)) return { expected: "a share of full fire, 0 to 100 %", remedy };
  if (["salt in", "cylinder", "level", "parts in", "parts out"].includes(kind) && si < 0)
    return { expected: "a weight that is not below zero", remedy };
  return undefined;
}
