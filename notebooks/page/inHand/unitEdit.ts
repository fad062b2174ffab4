import type { Edit, Line, Result } from "../../../lib/lines/index.ts";
import { clockUnit, dimensionName, findUnit, unitMeasuring, unitTable } from "../../../lib/measure/index.ts";
import type { Dimension } from "../../../lib/measure/types.ts";
import { valueIn } from "../shownIn.ts";
import type { System } from "../writtenAs.ts";

/** The edit that shows a line in another unit, or why it cannot be shown so. */
export type UnitChange = { readonly edit: Edit } | { readonly wrong: string };

/** What a line measures, if any case has come to an amount. */
export function measures(results: readonly Result[]): Dimension | undefined {
  return results.map(valueIn).find((value) => value !== undefined)?.dimension;
}

const fits = (unit: string, dimension: Dimension): boolean => {
  try {
    unitMeasuring(unit === clockUnit ? "min" : unit, dimension);
    return true;
  } catch {
    return false;
  }
};

/** Units of our table that a line could be shown in. */
export function unitsOffered(results: readonly Result[]): readonly string[] {
  const dimension = measures(results);
  if (!dimension) return [];
  return unitTable.map(({ symbol }) => symbol).filter((symbol) => symbol !== "" && fits(symbol, dimension));
}

/**
 * Shows a line in another unit in one system; where the other system has no unit of its own it follows. Without a text
 * it is the usual one of what it measures.
 */
export function unitEdit(line: Line, typed: string, system: System, results: readonly Result[]): UnitChange {
  const text = typed.trim();
  const dimension = measures(results);
  if (text !== "" && text !== clockUnit && !findUnit(text)) return { wrong: `"${text}" is no unit that is known here` };
  if (text !== "" && dimension && !fits(text, dimension))
    return { wrong: `"${text}" measures something else: this line is ${dimensionName(dimension)}` };
  const symbol = text === "" || text === clockUnit ? text : (findUnit(text)?.symbol ?? text);
  if (text === "") return { edit: { unit: undefined } };
  const metricAlone = system === "metric" && line.unit !== undefined;
  const { metricUnit } = line;
  return {
    edit: metricAlone
      ? { unit: line.unit, metricUnit: symbol }
      : { unit: symbol, ...(metricUnit !== undefined && system === "US" && { metricUnit }) },
  };
}
