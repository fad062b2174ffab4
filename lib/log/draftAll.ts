import { chooseBath } from "./chooseBath.ts";
import type { Separator } from "./chooseSeparator.ts";
import type { Table } from "./column.ts";
import { completeColumns } from "./completeColumns.ts";
import type { Draft } from "./draft.ts";
import { draftLine, timesAreBare } from "./draftLine.ts";
import { draftRow } from "./draftRow.ts";
import { draftTitle, isTitle } from "./draftTitle.ts";
import { draftWords } from "./draftWords.ts";
import { findHeading } from "./findHeading.ts";
import { inferColumns } from "./inferColumns.ts";
import { isBlank } from "./isBlank.ts";
import { plainText } from "./plainText.ts";
import type { Inquiry } from "./settle.ts";
import { severalTimes } from "./severalTimes.ts";
import type { Row } from "./splitRows.ts";
import { turnTable } from "./turnTable.ts";
import { untimed } from "./untimed.ts";

export interface Drafted {
  readonly drafts: readonly Draft[];
  readonly table?: Table;
  readonly leftAside: ReadonlySet<number>;
}

/** Unknown columns are kept row by row as remarks up to this many rows. */
const mostRemarkedRows = 2000;

/**
 * All rows of a log as drafts: by the columns of its table, or line by line where it has none.
 *
 * @param source the rows with their cells
 * @param separator what separated the cells
 * @param decimalComma whether "144,5" is a decimal in this log
 * @param inquiry where answers come from and questions and problems go to
 * @returns drafts in order, and the table if there is one
 * @example
 * draftAll([{ line: 1, cells: ["7:40 pm 284 boils"] }], "none", false, inquiry).drafts.length // 1
 */
export function draftAll(
  source: readonly Row[],
  separator: Separator,
  decimalComma: boolean,
  inquiry: Inquiry,
): Drafted {
  const rows = turnTable(source);
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
    const typed = rows.flatMap((row) => severalTimes(joined(row)).map((text) => draftLine(text, row.line, line)));
    const first = typed.findIndex(({ mark, aside }) => mark !== undefined && aside === undefined);
    const drafts = typed.map((draft, index) =>
      index < first && isTitle(draft) ? draftTitle(draft.words ?? "", draft.line, line) : untimed(draft),
    );
    return { drafts, leftAside: new Set() };
  }
  const body = rows.slice(table.from);
  const leftAside = chooseBath(table.columns, body, decimalComma, inquiry, table.line);
  const skipped = unknownColumns(table, body, inquiry);
  const context = {
    columns: table.columns,
    leftAside: new Set([...leftAside, ...skipped]),
    year,
    decimalComma,
    states: new Map<number, string>(),
  };
  const single = table.columns.length === 1 || (separator === "none" && rows === source);
  const drafts = rows.map((row, index): Draft => {
    const blank = row.cells.every((cell) => cell.trim() === "");
    const heading = row.line === table.line && index < table.from;
    const repeated = row.cells.length > 1 && row.cells.join("\u0001") === table.headingText;
    if (blank || heading || repeated || index === table.from - 1) return { line: row.line, findings: [], aside: true };
    if (index < table.from) return draftTitle(joined(row), row.line, line);
    if (single) return untimed(draftWords(row.cells[0] ?? "", row.line, context, line));
    if (row.cells.length === 1) return untimed(draftLine(joined(row), row.line, line));
    return untimed(draftRow(row, context));
  });
  return { drafts, table, leftAside };
}

/** Reports the columns whose headings are not understood; gives their places where there are too many rows to keep. */
function unknownColumns(table: Table, body: readonly Row[], inquiry: Inquiry): readonly number[] {
  const tooMany = body.length > mostRemarkedRows;
  const filled = (index: number) => body.some(({ cells }) => !isBlank(plainText(cells[index] ?? "")));
  const unknown = table.columns.filter(
    ({ role, heading, index }) => role === "unknown" && (!/^column \d/.test(heading) || filled(index)),
  );
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
  return tooMany ? table.columns.filter(({ role }) => role === "unknown").map(({ index }) => index) : [];
}

/** The year that the log writes somewhere near its top; 2000 where it writes none. */
function yearOf(rows: readonly Row[]): number {
  for (const { cells } of rows.slice(0, 20)) {
    const found = /\b(20\d\d)\b/.exec(cells.join(" ").slice(0, 500))?.[1];
    if (found !== undefined) return Number(found);
  }
  return 2000;
}
