import { heading } from "./heading.ts";
import { plainText } from "./plainText.ts";
import type { Row } from "./splitRows.ts";

const mostRows = 12;

/**
 * A table that runs across, its headings down the left side, turned so that its headings stand on top. Other rows come
 * back as they are.
 *
 * @param rows all rows of the log
 * @returns rows with the headings first
 * @example
 * turnTable([
 *   { line: 1, cells: ["Time", "0:00", "1:30"] },
 *   { line: 2, cells: ["Temp F", "284", "285"] },
 * ])[0]?.cells // ["Time", "Temp F"]
 */
export function turnTable(rows: readonly Row[]): readonly Row[] {
  if (rows.length < 2 || rows.length > mostRows) return rows;
  const across = rows.map(
    ({ line, cells }): Row => ({ line, cells: cells.length > 1 ? cells : spread(cells[0] ?? "") }),
  );
  const roles = across.map(({ cells }) => heading(cells[0] ?? "").role);
  const figures = across.every(
    ({ cells }) => /^[-~+]?\d/.test(plainText(cells[1] ?? "")) || cells.slice(1).some((cell) => /\d/.test(cell)),
  );
  const time = roles.indexOf("time");
  const width = across.reduce((most, { cells }) => Math.max(most, cells.length), 0);
  if (time < 0 || !roles.includes("temperature") || !figures || width < 3) return rows;
  return Array.from({ length: width }, (_, at) => ({
    line: across[time]?.line ?? 1,
    cells: across.map(({ cells }) => (at === 0 ? (cells[0] ?? "").replace(/\s*:\s*$/, "") : (cells[at] ?? ""))),
  }));
}

/** "temp: 284 285 286" as a heading and its cells. */
function spread(line: string): readonly string[] {
  const match = /^\s*([^\d:]{1,40})\s*:\s+(\S.*)$/.exec(line.slice(0, 20_000));
  return match ? [match[1] ?? "", ...(match[2] ?? "").trim().split(/[\s,;]+/)] : [line];
}
