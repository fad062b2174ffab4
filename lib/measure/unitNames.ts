import type { Kind, Unit } from "./types.ts";
import { unitTable } from "./unitTable.ts";

/** Case, full stops and runs of blanks do not matter in a name; "Fl. Oz." is "fl oz". */
function tidy(name: string): string {
  return name.replace(/\./g, "").replace(/\s+/gu, " ").trim();
}

/** "mJ" is a thousandth of a joule, "k" a thousand: neither may pass for these. */
const caseMatters: ReadonlySet<string> = new Set(["MJ", "K"]);
const exactNames = new Map<string, Unit>();
const looseNames = new Map<string, Unit>();
for (const { names, ...unit } of unitTable) {
  exactNames.set(unit.symbol, unit);
  if (!caseMatters.has(unit.symbol)) looseNames.set(unit.symbol.toLowerCase(), unit);
  for (const name of names) looseNames.set(name, unit);
}

const liquids: ReadonlySet<Kind> = new Set(["volume", "volume flow", "water", "water flow", "hourly water flow"]);

/** Names that mean one thing to a cup and another to a scale, a clock or a thermometer. */
function byKind(name: string, kind: Kind): Unit | undefined {
  const liquid = liquids.has(kind);
  const named = (symbol: string) => exactNames.get(symbol);
  const lower = name.toLowerCase();
  if (liquid && ["oz", "ozs", "ounce", "ounces"].includes(lower)) return named("fl oz");
  if (lower === "c") return liquid ? named("cup") : named("°C");
  if (kind === "time" && lower === "m") return named("min");
  return undefined;
}

/**
 * The unit of one name, without operators: "lb", "Fl. Oz.", "degrees F". Undefined for an unknown one. `kind`
 * settles what is written alike: "oz" is a weight unless a liquid is expected, "c" a cup or °C, "m" a metre or,
 * for a time, a minute.
 *
 * @example
 * namedUnit("ounces", "water")?.symbol // "fl oz"
 */
export function namedUnit(name: string, kind: Kind = "number"): Unit | undefined {
  const tidied = tidy(name);
  return byKind(tidied, kind) ?? exactNames.get(tidied) ?? looseNames.get(tidied.toLowerCase());
}

/** Every spelling that a unit may have, for suggestions. */
export const unitSpellings: readonly string[] = unitTable.flatMap(({ symbol, names }) => [symbol, ...names]);
