import { type CellContext, cellFindings } from "./cellFindings.ts";
import { type Column, cellsByColumn } from "./column.ts";
import type { Draft } from "./draft.ts";
import type { Finding } from "./finding.ts";
import { isBlank } from "./isBlank.ts";
import { plainText } from "./plainText.ts";
import type { Row } from "./splitRows.ts";
import { type TimeMark, timeMark } from "./timeMark.ts";

export interface RowContext {
  readonly columns: readonly Column[];
  /** Columns of bath temperatures that were not taken for the bath. */
  readonly leftAside: ReadonlySet<number>;
  readonly year: number;
  readonly decimalComma: boolean;
  readonly states: Map<number, string>;
}

/**
 * A row of a table as a draft, cell by cell in the order of the columns.
 *
 * @param row the row
 * @param context its columns and how this log writes times and numbers
 * @returns the draft
 * @example
 * draftRow({ line: 2, cells: ["0:00", "284"] }, context).findings // [{ kind: "reading", amount: "284" }]
 */
export function draftRow(row: Row, context: RowContext): Draft {
  const { columns, decimalComma } = context;
  const cells = cellsByColumn(columns, row);
  const findings: Finding[] = [];
  let written = "";
  let date = "";
  let struck = false;
  let hasReading = false;
  let hasPour = false;
  if (cells.every((cell) => cell === "" || /^\s*~~.*~~\s*$/.test(cell)) && cells.some((cell) => cell !== ""))
    struck = true;
  for (const column of columns) {
    const cell = cells[column.index] ?? "";
    if (cell === "") continue;
    if (column.role === "time") written = written === "" ? cell : written;
    else if (column.role === "date") date = cell;
    else if (column.role === "struck") struck ||= !isBlank(plainText(cell)) && !/^(?:0|no|false|n)$/i.test(cell.trim());
    else if (column.role === "row number" || column.role === "other temperature" || context.leftAside.has(column.index))
      continue;
    else if (column.role !== "remark" && column.role !== "event") {
      for (const finding of cellFindings(cell, column, cellContext(context, hasReading, hasPour))) {
        if (finding.kind === "reading") hasReading = true;
        if (finding.kind === "addition") hasPour = true;
        findings.push(finding);
      }
    }
  }
  for (const column of columns) {
    if (column.role !== "remark" && column.role !== "event") continue;
    findings.push(...cellFindings(cells[column.index] ?? "", column, cellContext(context, hasReading, hasPour)));
  }
  findings.push(...beyond(cells.slice(columns.length)));
  if (/^\s*~~.*~~\s*$/.test(written)) struck = true;
  const clean = written.includes("~~") ? written.replaceAll("~~", "") : written;
  const mark = timeOf(clean, date, context.year, decimalComma);
  const blank = isBlank(plainText(clean));
  return {
    line: row.line,
    findings,
    ...(mark === undefined ? {} : { mark, clock: date === "" ? clean.trim() : `${date.trim()} ${clean.trim()}` }),
    ...(mark === undefined && !blank ? { badTime: clean.trim() } : {}),
    ...(struck ? { struck: "crossed out in the log" } : {}),
  };
}

function cellContext(context: RowContext, hasReading: boolean, hasPour: boolean): CellContext {
  return { decimalComma: context.decimalComma, states: context.states, hasReading, hasPour };
}

function timeOf(written: string, date: string, year: number, decimalComma: boolean): TimeMark | undefined {
  const text = written.trim();
  if (date.trim() === "") return timeMark(text, year, decimalComma);
  return timeMark(`${date.trim()} ${text}`, year, decimalComma) ?? timeMark(text, year, decimalComma);
}

function beyond(cells: readonly string[]): Finding[] {
  const text = cells
    .map((cell) => plainText(cell))
    .filter((cell) => !isBlank(cell))
    .join(", ");
  if (text === "") return [];
  const trouble = {
    read: text.slice(0, 80),
    expected: "no more cells than the heading has",
    remedy: "It was kept as a remark. Put text that has the separator in it between quotation marks.",
  };
  return [{ kind: "remark", text, ...(/^\p{L}/u.test(text) ? {} : { trouble }) }];
}
