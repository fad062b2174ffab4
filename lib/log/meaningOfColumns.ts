import type { Column } from "./column.ts";
import type { Units } from "./decideUnits.ts";
import type { Role } from "./heading.ts";
import type { Placing } from "./placeTimes.ts";
import type { EntryKind, Run } from "./types.ts";

const kinds = new Map<Role, EntryKind>([
  ["temperature", "reading"],
  ["water", "addition"],
  ["water total", "addition"],
  ["depth", "depth"],
  ["level", "level"],
  ["cylinder", "cylinder"],
  ["salt in", "salt in"],
]);

const says = new Map<Role, string>([
  ["date", "date"],
  ["time", "time"],
  ["temperature", "temperature of the bath"],
  ["water", "water poured"],
  ["water total", "water poured so far"],
  ["depth", "depth of the liquid"],
  ["level", "water left in the jug"],
  ["cylinder", "weight of the cylinder"],
  ["salt in", "salt put in"],
  ["burner", "burner"],
  ["parts", "parts"],
  ["event", "what happened"],
  ["remark", "remarks"],
  ["struck", "crossed out"],
  ["row number", "number of the row, left out"],
  ["other temperature", "not the bath's temperature, left aside"],
  ["unknown", "not known"],
]);

/**
 * What each column of a log was taken for, to show beside the log.
 *
 * @param columns the table's columns, none for typed lines
 * @param leftAside places of temperature columns that are not the bath's
 * @param units units taken where none was written
 * @param placing what the times were taken to mean
 * @returns heading and meaning of each column
 * @example
 * meaningOfColumns([{ index: 0, role: "time", heading: "min" }], new Set(), new Map(), placing)[0]?.taken // "time: minutes"
 */
export function meaningOfColumns(
  columns: readonly Column[],
  leftAside: ReadonlySet<number>,
  units: Units,
  placing: Placing,
): NonNullable<Run["columns"]> {
  return columns.map(({ role, heading, unit, index }) => {
    if (leftAside.has(index)) return { heading, taken: "another temperature, left aside" };
    const kind = kinds.get(role);
    const taken = unit ?? (kind === undefined ? undefined : units.get(kind));
    const what = says.get(role) ?? role;
    if (role === "time")
      return {
        heading,
        taken: unit === undefined ? what : `${what}, ${placing.number === "minutes" ? unit : placing.number}`,
      };
    return { heading, taken: taken === undefined || role === "other temperature" ? what : `${what}, ${taken}` };
  });
}
