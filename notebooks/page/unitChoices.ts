import type { Given } from "../../lib/lines/index.ts";

const choices: ReadonlyMap<string, readonly string[]> = new Map([
  ["mass", ["lb", "oz", "kg", "g"]],
  ["water", ["gal", "qt", "pt", "cup", "fl oz", "l", "ml", "lb", "kg"]],
  ["length", ["in", "ft", "cm", "mm", "m"]],
  ["pressure", ["inHg", "hPa", "mbar", "kPa", "mmHg", "psi"]],
  ["temperature", ["°F", "°C"]],
  ["temperature difference", ["°F", "°C"]],
  ["time", ["min", "h", "s"]],
  ["share", ["%"]],
]);

/** Units that a blank offers for a given; the one in use is among them however it is spelt. */
export function unitChoices(line: Given, inUse: string): readonly string[] {
  const known = choices.get(line.takes ?? "") ?? [line.unit, line.metricUnit].flatMap((unit) => (unit ? [unit] : []));
  return known.includes(inUse) ? known : [inUse, ...known];
}
