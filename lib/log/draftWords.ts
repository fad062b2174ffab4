import type { Draft } from "./draft.ts";
import { draftLine, type LineContext } from "./draftLine.ts";
import { draftRow, type RowContext } from "./draftRow.ts";
import { plainText } from "./plainText.ts";

/**
 * A row under a heading whose cells only single blanks separate: by columns if every word finds one, else as a typed
 * line with the heading's units.
 *
 * @param text the row
 * @param number its line in the source
 * @param context the table's columns
 * @param line how this log writes times and numbers
 * @returns the draft
 * @example
 * draftWords("5 280 12 parts in", 3, columnsOfTimeTempWaterNotes, line).findings.length // 3
 */
export function draftWords(text: string, number: number, context: RowContext, line: LineContext): Draft {
  const words = plainText(text).split(" ");
  const { columns } = context;
  const last = columns.at(-1);
  const numbers = last?.role === "remark" || last?.role === "event" ? columns.length - 1 : columns.length;
  const rest = words.slice(numbers).join(" ");
  const fits = words.length === numbers || (words.length > numbers && numbers < columns.length);
  if (fits && words.slice(0, numbers).every((word) => /^[-~+]?\d[\d:.,]*$|^[-–—]+$/.test(word))) {
    return draftRow({ line: number, cells: [...words.slice(0, numbers), ...(rest === "" ? [] : [rest])] }, context);
  }
  const draft = draftLine(text, number, line);
  const unitOf = (kind: string) =>
    columns.find(({ role }) => role === (kind === "reading" ? "temperature" : kind === "addition" ? "water" : kind))
      ?.unit;
  const findings = draft.findings.map((finding) => {
    const unit = /^[\d.,]+$/.test(finding.amount ?? "") ? unitOf(finding.kind) : undefined;
    return unit === undefined ? finding : { ...finding, unit };
  });
  return { ...draft, findings };
}
