import type { Separator } from "./chooseSeparator.ts";
import type { Column, Table } from "./column.ts";
import { heading } from "./heading.ts";
import { plainText } from "./plainText.ts";
import type { Row } from "./splitRows.ts";

const deepest = 40;
const longestHeading = 60;

/**
 * The row of a table that names its columns, in any order and wording, with a row of units below it if there is one.
 *
 * @param rows rows from the top
 * @param separator what separates their cells
 * @returns the columns and where the table's body begins, or undefined
 * @example
 * findHeading([{ line: 1, cells: ["Time", "Bath °F"] }], ",")?.columns[1]?.unit // "°F"
 */
export function findHeading(rows: readonly Row[], separator: Separator): Table | undefined {
  const end = Math.min(rows.length, deepest);
  for (let at = 0; at < end; at += 1) {
    const row = rows[at];
    if (row === undefined) continue;
    const split = headingCells(row, separator) ?? headingAbove(row, rows[at + 1]);
    if (split === undefined) continue;
    const units = unitCells(rows[at + 1], split.cells.length);
    const columns = split.cells.map((cell, index): Column => {
      const below = units?.[index] ?? "";
      const { role, unit } = heading(below === "" ? cell : `${cell} (${below.replace(/[()[\]]/g, "")})`);
      const start = split.starts?.[index];
      const place = start === undefined ? {} : { start };
      const name = plainText(cell) === "" ? `column ${index + 1}` : split.starts === undefined ? cell.trim() : cell;
      return { index, role, heading: name, ...(unit === undefined ? {} : { unit }), ...place };
    });
    return { columns, from: at + (units === undefined ? 1 : 2), line: row.line, headingText: row.cells.join("\u0001") };
  }
  return undefined;
}

function headingCells(
  row: Row,
  separator: Separator,
): { cells: readonly string[]; starts?: readonly number[] } | undefined {
  const only = row.cells.length === 1 ? (row.cells[0] ?? "") : undefined;
  const bare = only?.replace(/^\s*(?:#|\/\/)\s*/, "");
  let cells = row.cells;
  if (bare !== undefined && bare !== only && separator.length === 1) cells = bare.split(separator);
  else if (bare !== undefined) cells = bare.trim().split(/\s+/);
  const trimmed = cells.map((cell) => plainText(cell.slice(0, longestHeading + 1)));
  const filled = trimmed.filter((cell) => cell !== "");
  if (filled.length < 2 || filled.some((cell) => cell.length > longestHeading || /^[-+~]?[\d.½¼¾]/.test(cell)))
    return undefined;
  const roles = filled.map((cell) => heading(cell).role);
  const known = roles.filter((role) => role !== "unknown");
  const essential = roles.some((role) => role === "time" || role === "temperature" || role === "water");
  const needed =
    bare !== undefined && cells !== row.cells && separator.length !== 1
      ? filled.length
      : Math.max(2, filled.length / 3);
  if (!essential || new Set(known).size < 2 || known.length < needed) return undefined;
  return row.starts === undefined || cells !== row.cells ? { cells } : { cells, starts: row.starts };
}

/** A row of words over a row of numbers, one of the words being known: a heading in another language. */
function headingAbove(
  row: Row,
  below: Row | undefined,
): { cells: readonly string[]; starts?: readonly number[] } | undefined {
  if (below === undefined || row.cells.length < 2 || below.cells.length !== row.cells.length) return undefined;
  const cells = row.cells.map((cell) => plainText(cell.slice(0, longestHeading + 1)));
  if (cells.some((cell) => cell === "" || cell.length > longestHeading || !/^[^\d]/.test(cell))) return undefined;
  const numeric = (cell: string | undefined) => /^[-+~]?\d/.test(plainText(cell ?? ""));
  const known = cells.some((cell, index) => heading(cell).role === "temperature" && numeric(below.cells[index]));
  return known && numeric(below.cells[0])
    ? row.starts === undefined
      ? { cells: row.cells }
      : { cells: row.cells, starts: row.starts }
    : undefined;
}

const unitOnly =
  /^[([]?(?:°? ?[fck]|deg ?[fck]|h{1,2}:mm(?::ss)?|m{1,2}:ss|min(?:utes?)?|s(?:ec(?:onds?)?)?|h(?:ou)?rs?|fl\.? ?oz|oz|cups?|ml|l|lit(?:er|re)s?|gal|lbs?|kg|g|in|cm|mm|%|am\/pm|text|words?)[)\]]?$/i;

function unitCells(row: Row | undefined, count: number): readonly string[] | undefined {
  if (row === undefined || row.cells.length > count || row.cells.length < 2) return undefined;
  const cells = row.cells.map(plainText);
  const filled = cells.filter((cell) => cell !== "" && cell !== "-");
  return filled.length > 0 && filled.every((cell) => unitOnly.test(cell))
    ? cells.map((cell) => (cell === "-" ? "" : cell))
    : undefined;
}
