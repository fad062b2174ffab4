import { amountReader } from "./amountReader.ts";
import { buildEntries } from "./buildEntries.ts";
import { chooseSeparator } from "./chooseSeparator.ts";
import { cleanText } from "./cleanText.ts";
import { decideOrder } from "./decideOrder.ts";
import { decideUnits } from "./decideUnits.ts";
import { decideWater } from "./decideWater.ts";
import { usesDecimalComma } from "./decimalComma.ts";
import { draftAll } from "./draftAll.ts";
import { meaningOfColumns } from "./meaningOfColumns.ts";
import { readWrittenLog } from "./readWrittenLog.ts";
import { resolveTimes } from "./resolveTimes.ts";
import { openInquiry } from "./settle.ts";
import { splitRows } from "./splitRows.ts";
import { startOfRun } from "./startOfRun.ts";
import { timesFromStart } from "./timesFromStart.ts";
import type { Hints, LogReading, Run } from "./types.ts";

/** Rows beyond this many are left out, and a problem says so. */
const mostRows = 500_000;

/**
 * Reads a maker's log in whatever shape it came: a table with any separator and heading or none, or typed lines. It
 * always gives the likeliest reading, with the questions that would change it and a list of what was not understood.
 * Nothing is dropped in silence: what is not understood is a problem and stays in the run as a remark.
 *
 * @param text the log; never throws, whatever it holds
 * @param hints answers to questions by their id, from an earlier reading
 * @returns run: entries in time order, times in s from the first row, temperatures in K, water and weights in kg,
 *   depths in m, burner as a share; problems: line from 1; questions: what the log leaves open
 * @throws TypeError if the text is no string (a file must be decoded first)
 * @example
 * readLog("7:40 pm 284 boils\n7:46 291 parts in\n7:51 3 cups").run.entries.map(({ kind }) => kind)
 * // ["reading", "remark", "reading", "parts in", "addition"]
 */
export function readLog(text: string, hints: Hints = {}): LogReading {
  if (typeof text !== "string") throw new TypeError(`invalid log: ${typeof text}; a string is needed`);
  const inquiry = openInquiry(hints);
  const { problems } = inquiry;
  const written = readWrittenLog(text);
  if (written !== undefined) return { ...written, problems: [...problems, ...written.problems], questions: [] };
  const source = cleanText(text);
  problems.push(...source.problems);
  const separator = chooseSeparator(source.lines);
  const split = splitRows(source, separator);
  problems.push(...split.problems);
  let { rows } = split;
  if (rows.length > mostRows) {
    problems.push({
      line: rows[mostRows]?.line ?? mostRows,
      read: `${rows.length} rows`,
      expected: `at most ${mostRows} rows`,
      remedy: "The rows from here on were left out. Thin the log or split it.",
    });
    rows = rows.slice(0, mostRows);
  }
  const decimalComma = usesDecimalComma(source.lines, separator);
  const { drafts, table, leftAside } = draftAll(rows, separator, decimalComma, inquiry);
  const columns = table?.columns ?? [];
  const unit = columns.find(({ role }) => role === "time")?.unit;
  const lines = drafts.map(({ line }) => line);
  const marks = drafts.map(({ mark }) => mark);
  const resolved = resolveTimes({ marks, lines, ...(unit === undefined ? {} : { unit }) }, inquiry);
  const { times, earliest } = timesFromStart(drafts, resolved.times, problems);
  const units = decideUnits(drafts, decimalComma, inquiry);
  const water = decideWater(drafts, columns, decimalComma, inquiry);
  const order =
    water === "since the row before" ? "before the pour" : decideOrder(drafts, table === undefined, units, inquiry);
  const read = amountReader(decimalComma);
  const entries = buildEntries(drafts, times, { units, water, order, read, decimalComma }, inquiry);
  const start = earliest === undefined ? undefined : startOfRun(marks, resolved.times, earliest, resolved.placing);
  const known = meaningOfColumns(columns, leftAside, units, resolved.placing);
  const run: Run = {
    entries,
    ...(start === undefined ? {} : { start }),
    ...(known.length === 0 ? {} : { columns: known }),
  };
  if (!entries.some(({ kind }) => kind === "reading") && problems.length === 0) {
    problems.push({
      line: 1,
      read: text.trim() === "" ? "nothing" : "no row with a temperature",
      expected: "rows with a time and a temperature, such as 7:46 291",
      remedy: "Type or paste the log: one row for each reading, with its time first.",
    });
  }
  return { run, problems: problems.sort((one, other) => one.line - other.line), questions: inquiry.questions };
}
