import { sameDimension } from "../measure/dimension.ts";
import { dimensionName } from "../measure/dimensionName.ts";
import { kinds } from "../measure/kinds.ts";
import { readQuantity } from "../measure/readQuantity.ts";
import type { Dimension } from "../measure/types.ts";
import { findUnit } from "../measure/unit.ts";

/**
 * An amount as a maker types it where only one kind makes sense: "42 in" for a length.
 * @param text What was typed; a number alone is in `unit`.
 * @param dimension What it has to be.
 * @param unit The unit when none is written.
 * @returns SI.
 * @throws Error, worded for the maker, where it cannot be read or is of another kind.
 * @example wantedIn("42 in", { length: 1 }) // 1.0668
 */
export function wantedIn(text: string, dimension: Dimension, unit?: string): number {
  const usual = unit !== undefined && unit !== "" && findUnit(unit) ? unit : undefined;
  let wrong: string | undefined;
  for (const [kind, facts] of kinds) {
    if (!sameDimension(facts.dimension, dimension)) continue;
    const read = tried(text, kind, usual) ?? readQuantity(text, { kind });
    if (!("remedy" in read)) return read.si;
    wrong ??= `"${text}": ${read.expected} was expected. ${read.remedy}`;
  }
  throw new Error(wrong ?? `"${text}": ${dimensionName(dimension)} was expected; write a number and its unit`);
}

function tried(text: string, kind: Parameters<typeof readQuantity>[1]["kind"], unit: string | undefined) {
  if (unit === undefined) return undefined;
  try {
    return readQuantity(text, { kind, unit });
  } catch {
    // The unit is of another kind than this one.
    return undefined;
  }
}
