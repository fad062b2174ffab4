import { chooseBath } from "./chooseBath.ts";
import type { Separator } from "./chooseSeparator.ts";
import type { Table } from "./column.ts";
import { completeColumns } from "./completeColumns.ts";
import type { Draft } from "./draft.ts";
import { draftLine, timesAreBare } from "./draftLine.ts";
import { draftRow } from "./draftRow.ts";
import { findHeading } from "./findHeading.ts";
import { inferColumns } from "./inferColumns.ts";
import { plainText } from "./plainText.ts";
import type { Inquiry } from "./settle.ts";
import type { Row } from "./splitRows.ts";
import { untimed } from "./untimed.ts";

export interface Drafted {
  readonly drafts: readonly Draft[];
  readonly table?: Table;
  readonly leftAside: ReadonlySet<number>;
}

/** Unknown columns of numbers are kept row by row as remarks up to this many rows. */
const mostRemarkedRows = 2000;

/**
 * All rows of a log as drafts: by the columns of its table, or line by line where it has none.
 *
 * @param rows the rows with their cells
 * @param separator what separated the cells
 * @param decimalComma whether "144,5" is a decimal in this log
 * @param inquiry where answers come from and questions and problems go to
 * @returns drafts in order, and the table if there is one
 * @example
 * draftAll([{ line: 1, cells: ["7:40 pm 284 boils"] }], "none", false, inquiry).drafts.length // 1
 */
export function draftAll(rows: readonly Row[], separator: Separator, decimalComma: boolean, inquiry: Inquiry): Drafted {
  const year = yearOf(rows);
  const named = findHeading(rows, separator);
  const table =
    named === undefined
      ? inferColumns(rows, decimalComma)
      : completeColumns(named, rows.slice(named.from), decimalComma);
  const joined = (row: Row) => row.cells.filter((cell) => cell.trim() !== "").join(separator === "none" ? " " : "; ");
  const bareTimes = timesAreBare(rows.slice(0, 200).map(joined)) || table !== undefined;
  const line = { bareTimes, year, decimalComma };
  if (table === undefined) {
    return { drafts: rows.map((row) => untimed(draftLine(joined(row), row.line, line))), leftAside: new Set() };
  }
  const body = rows.slice(table.from);
  const leftAside = chooseBath(table.columns, body, decimalComma, inquiry, table.line);
  const tooMany = body.length > mostRemarkedRows;
  const unknown = table.columns.filter(({ role, heading }) => role === "unknown" && !/^column \d/.test(heading));
  for (const { heading } of unknown) {
    inquiry.problems.push({
      line: table.line,
      read: heading.slice(0, 80),
      expected: "a heading such as time, bath °F, water fl oz, depth, burner or remarks",
      remedy: tooMany
        ? "The column was left out. Rename it if it matters."
        : "Its cells were kept as remarks. Rename it if it is something else.",
    });
  }
  const aside = new Set(leftAside);
  if (tooMany) for (const { index } of unknown) aside.add(index);
  const context = { columns: table.columns, leftAside: aside, year, decimalComma, states: new Map<number, string>() };
  const single = table.columns.length === 1 || separator === "none";
  const drafts = rows.map((row, index): Draft => {
    if (index < table.from)
      return headingDraft(row, index === table.from - 1 || row.line === table.line, joined(row), line);
    if (row.cells.every((cell) => cell.trim() === "")) return { line: row.line, findings: [], aside: true };
    if (row.cells.length > 1 && row.cells.join("\u0001") === table.headingText)
      return { line: row.line, findings: [], aside: true };
    if (single) return untimed(draftWords(row, context, line));
    if (row.cells.length === 1) return untimed(draftLine(joined(row), row.line, line));
    return untimed(draftRow(row, context));
  });
  return { drafts, table, leftAside };
}

/** A row above the table's body: a title or a comment, or something told before the first time. */
function headingDraft(row: Row, isHeading: boolean, text: string, context: Parameters<typeof draftLine>[2]): Draft {
  if (isHeading) return { line: row.line, findings: [], aside: true };
  const draft = draftLine(text, row.line, context);
  const told = draft.findings.some(
    ({ kind }) => kind === "level" || kind === "cylinder" || kind === "depth" || kind === "salt in",
  );
  if (told) return draft;
  const date = /\b(?:\d{4}-\d\d-\d\d|\d{1,2}[/.]\d{1,2}[/.]\d{2,4})\b/.exec(text)?.[0];
  const mark = date === undefined ? undefined : draftLine(date, row.line, context).mark;
  const dated = mark?.shape === "none" ? { mark } : {};
  return {
    line: row.line,
    findings: [{ kind: "remark", text: plainText(text.replace(/^\s*(?:#|\/\/)\s*/, "")) }],
    aside: true,
    ...dated,
  };
}

/** A row under a heading whose cells only blanks separate: by columns if every word finds one, else as a typed line. */
function draftWords(row: Row, context: Parameters<typeof draftRow>[1], line: Parameters<typeof draftLine>[2]): Draft {
  const text = plainText(row.cells[0] ?? "");
  const words = text.split(" ");
  const { columns } = context;
  const last = columns.at(-1);
  const numbers = last?.role === "remark" || last?.role === "event" ? columns.length - 1 : columns.length;
  const fits = words.length === numbers || (words.length > numbers && numbers < columns.length);
  if (fits && words.slice(0, numbers).every((word) => /^[-~+]?\d[\d:.,]*$/.test(word) || /^[-–—]+$/.test(word))) {
    return draftRow(
      {
        line: row.line,
        cells: [...words.slice(0, numbers), ...(words.length > numbers ? [words.slice(numbers).join(" ")] : [])],
      },
      context,
    );
  }
  const draft = draftLine(text, row.line, line);
  const unitOf = new Map(
    columns.flatMap(({ role, unit }) =>
      unit === undefined ? [] : [[role === "temperature" ? "reading" : role === "water" ? "addition" : role, unit]],
    ),
  );
  const findings = draft.findings.map((finding) => {
    const unit =
      finding.amount !== undefined && /^[\d.,]+$/.test(finding.amount) ? unitOf.get(finding.kind) : undefined;
    return unit === undefined ? finding : { ...finding, unit };
  });
  return { ...draft, findings };
}

/** The year that the log writes somewhere near its top; 2000 where it writes none. */
function yearOf(rows: readonly Row[]): number {
  for (const { cells } of rows.slice(0, 20)) {
    const found = /\b(20\d\d)\b/.exec(cells.join(" ").slice(0, 500))?.[1];
    if (found !== undefined) return Number(found);
  }
  return 2000;
}
