import Papa from "papaparse";
import type { Entry, Run } from "./types.ts";
import { guardCell, type WrittenColumn, writtenColumns } from "./writtenColumns.ts";

/**
 * A run as a table in the form of RFC 4180 (commas, quotes, CRLF), one row an entry, that `readLog` reads back equal:
 * times, kinds, quantities, words, what was struck out and why, what entries said before. The amounts stand as the
 * maker wrote them; their SI values and standard uncertainties beside them.
 *
 * @param run a run
 * @returns text of a CSV file
 * @example
 * const { run } = readLog("time,temp F\n7:40 pm,289\n7:46 pm,292");
 * readLog(writeLog(run)).run.entries.map(({ time }) => time) // [0, 360]
 */
export function writeLog(run: Run): string {
  const rows: string[][] = [];
  const add = (cells: Partial<Record<WrittenColumn, string>>) =>
    rows.push(writtenColumns.map((name) => cells[name] ?? ""));
  if (run.start !== undefined) add({ kind: "run began", words: guardCell(run.start) });
  for (const { heading, taken } of run.columns ?? [])
    add({ kind: "column", clock: present(heading), words: present(taken) });
  for (const entry of run.entries) add(cellsOf(entry));
  const text = Papa.unparse([[...writtenColumns], ...rows], { newline: "\r\n" });
  return `${text}\r\n`;
}

function cellsOf(entry: Entry): Partial<Record<WrittenColumn, string>> {
  const { quantity } = entry;
  return {
    "time (s)": String(entry.time),
    clock: present(entry.clock),
    kind: entry.kind,
    ...(quantity === undefined
      ? {}
      : {
          amount: guardCell(quantity.text),
          unit: guardCell(quantity.unit),
          "amount in SI": String(quantity.si),
          "standard uncertainty in SI": String(quantity.standardUncertainty),
          known: quantity.known,
        }),
    words: present(entry.text),
    "ran for (s)": entry.duration === undefined ? "" : String(entry.duration),
    "struck out": entry.struck ? "x" : "",
    why: present(entry.reason),
    "said before": entry.before === undefined ? "" : JSON.stringify(entry.before),
    line: String(entry.line),
    id: guardCell(entry.id),
  };
}

/** An absent text is an empty cell; a text that is there but empty is a lone quote, which readers take off. */
function present(text: string | undefined): string {
  return text === undefined ? "" : text === "" ? "'" : guardCell(text);
}
