import type { Line } from "../../lib/lines/index.ts";

/** The name a line goes by for machines: its key, or its name in small letters with underscores. */
export function lineKey(name: string, line: Line): string {
  return (
    line.key ??
    name
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, "_")
      .replace(/^_|_$/g, "")
  );
}

const words = new Map([
  ["lb/gal", "lb to the gallon"],
  ["kg/l", "kg to the litre"],
  ["min", "minutes"],
]);

/** A unit as it is said in a sentence: the "a minute" or "an hour" of a rate is left to the sentence. */
export function unitInWords(unit: string): string {
  return words.get(unit) ?? unit.replace(/\/(min|h)$/, "");
}
