import type { Column, Table } from "./column.ts";
import type { Role } from "./heading.ts";
import { inferColumns } from "./inferColumns.ts";
import type { Row } from "./splitRows.ts";

const replaceable: ReadonlySet<Role> = new Set(["unknown", "row number", "event", "other temperature"]);

/**
 * A table whose heading names no column of times or of temperatures, with that column found by what stands in it:
 * headings in another language, or none over the first column.
 *
 * @param table the table by its heading
 * @param body the rows below the heading
 * @param decimalComma whether "144,5" is a decimal in this log
 * @returns the table, its missing columns named where they can be made out
 * @example
 * completeColumns(table, rows, false).columns[0]?.role // "time"
 */
export function completeColumns(table: Table, body: readonly Row[], decimalComma: boolean): Table {
  const missing = (["time", "temperature"] as const).filter(
    (role) => !table.columns.some((column) => column.role === role),
  );
  if (missing.length === 0 || body.some(({ starts }) => starts !== undefined)) return table;
  const inferred = inferColumns(body, decimalComma);
  if (inferred === undefined) return table;
  const columns = table.columns.map((column): Column => {
    const role = inferred.columns[column.index]?.role;
    const found = missing.find((one) => one === role);
    return found === undefined || !replaceable.has(column.role) ? column : { ...column, role: found };
  });
  return { ...table, columns };
}
