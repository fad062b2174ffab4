import Papa from "papaparse";
import { isUnread, type Knowing, kindFacts, readQuantity, type Written } from "../measure/index.ts";
import { entryId } from "./entryId.ts";
import { inTimeOrder } from "./inTimeOrder.ts";
import { measures } from "./measures.ts";
import type { Entry, EntryKind, Problem, Run } from "./types.ts";
import { bareCell, type WrittenColumn, writtenColumns } from "./writtenColumns.ts";

const kinds: readonly EntryKind[] = [...measures.keys(), "remark"];
const knowings: readonly Knowing[] = ["weighed", "measured", "guessed", "from the label", "published"];

type Cells = ReadonlyMap<WrittenColumn, string>;

/**
 * A log that `writeLog` wrote, or undefined if the text is none.
 *
 * @param source the text as it came
 * @returns the run, and a problem for each cell that was changed into something that cannot be
 * @example
 * readWrittenLog(writeLog(run))?.run // equals run
 */
export function readWrittenLog(
  source: string,
): { readonly run: Run; readonly problems: readonly Problem[] } | undefined {
  const text = source.replace(/^\ufeff/, "");
  const first = /^"?time \(s\)"?([,;\t])"?clock"?\1"?kind"?\1"?amount"?\1[^\r\n]*(\r\n|\n|\r)?/.exec(text);
  const delimiter = first?.[1];
  if (first === null || delimiter === undefined) return undefined;
  const newline = first[2] === "\n" || first[2] === "\r" ? first[2] : "\r\n";
  const parsed = Papa.parse<string[]>(text, { delimiter, newline });
  const names = parsed.data[0] ?? [];
  const problems: Problem[] = [];
  const entries: Entry[] = [];
  const columns: { heading: string; taken: string }[] = [];
  const ids = new Set<string>();
  let start: string | undefined;
  let before = 0;
  parsed.data.slice(1).forEach((row, index) => {
    if (row.length < 2 && (row[0] ?? "") === "") return;
    const cells: Cells = new Map(writtenColumns.map((name) => [name, row[names.indexOf(name)] ?? ""]));
    const line = index + 2;
    const kind = cells.get("kind") ?? "";
    if (kind === "run began") start = bareCell(cells.get("words") ?? "");
    else if (kind === "column")
      columns.push({ heading: bareCell(cells.get("clock") ?? ""), taken: bareCell(cells.get("words") ?? "") });
    else {
      const entry = entryOf(cells, row, line, before, ids, problems);
      before = entry.time;
      entries.push(entry);
    }
  });
  for (const { row = 0, message } of parsed.errors) {
    problems.push({
      line: row + 1,
      read: message,
      expected: "a table as this page saves it",
      remedy: "Look at the quotation marks of that row.",
    });
  }
  const run: Run = {
    entries: inTimeOrder(entries),
    ...(start === undefined ? {} : { start }),
    ...(columns.length === 0 ? {} : { columns }),
  };
  return { run, problems };
}

function entryOf(
  cells: Cells,
  row: readonly string[],
  line: number,
  before: number,
  ids: Set<string>,
  problems: Problem[],
): Entry {
  const cell = (name: WrittenColumn) => cells.get(name) ?? "";
  const trouble = (name: WrittenColumn, expected: string, remedy: string) =>
    problems.push({ line, read: cell(name).slice(0, 80) || "an empty cell", expected, remedy });
  const written = kinds.find((kind) => kind === cell("kind"));
  if (written === undefined)
    trouble("kind", `one of: ${kinds.join(", ")}`, "The row was kept as a remark. Correct its kind.");
  const kind = written ?? "remark";
  const time = number(cell("time (s)"));
  if (time === undefined)
    trouble("time (s)", "seconds from the first row", "It was kept at the time of the row before. Correct its time.");
  const quantity = kind === "remark" ? undefined : quantityOf(cells, kind, trouble);
  const duration = number(cell("ran for (s)"));
  if (duration === undefined && cell("ran for (s)") !== "")
    trouble("ran for (s)", "seconds", "It was left out. Correct it.");
  const said = saidBefore(cell("said before"));
  if (said === undefined && cell("said before") !== "") trouble("said before", "a list of texts", "It was left out.");
  const id = cell("id") === "" || ids.has(bareCell(cell("id"))) ? entryId(ids, `${line}`, kind) : bareCell(cell("id"));
  ids.add(id);
  const text = written === undefined ? row.filter((each) => each !== "").join(", ") : textOf(cell("words"));
  const clock = textOf(cell("clock"));
  const reason = textOf(cell("why"));
  return {
    id,
    time: time ?? before,
    ...(clock === undefined ? {} : { clock }),
    kind,
    ...(quantity === undefined ? {} : { quantity }),
    ...(text === undefined ? {} : { text }),
    ...(duration === undefined ? {} : { duration }),
    line: number(cell("line")) ?? line,
    struck: cell("struck out") !== "",
    ...(reason === undefined ? {} : { reason }),
    ...(said === undefined ? {} : { before: said }),
  };
}

function quantityOf(
  cells: Cells,
  kind: EntryKind,
  trouble: (name: WrittenColumn, expected: string, remedy: string) => void,
): Written | undefined {
  const text = bareCell(cells.get("amount") ?? "");
  const measured = measures.get(kind);
  if (text === "" || measured === undefined) return undefined;
  const unit = bareCell(cells.get("unit") ?? "");
  const read = readAgain(text, measured, unit);
  const si = number(cells.get("amount in SI") ?? "");
  const doubt = number(cells.get("standard uncertainty in SI") ?? "");
  const known = knowings.find((way) => way === cells.get("known"));
  if (read === undefined && (si === undefined || doubt === undefined)) {
    trouble("amount", "an amount with its unit", "The row was kept without it. Correct the amount.");
    return undefined;
  }
  const kept = {
    text,
    unit,
    dimension: kindFacts(measured).dimension,
    known: known ?? read?.known ?? "measured",
  } as const;
  if (read !== undefined && si !== undefined && Math.abs(read.si - si) > 1e-9 * Math.abs(si)) {
    trouble(
      "amount in SI",
      `the same as the amount, ${text} ${unit}`.trim(),
      "The amount was taken. Clear the SI cell after changing an amount by hand.",
    );
    return { ...read, known: kept.known };
  }
  return {
    ...kept,
    si: si ?? read?.si ?? 0,
    standardUncertainty: doubt !== undefined && doubt >= 0 ? doubt : (read?.standardUncertainty ?? 0),
  };
}

function readAgain(text: string, kind: Parameters<typeof kindFacts>[0], unit: string): Written | undefined {
  try {
    const read = readQuantity(text, { kind, unit });
    return isUnread(read) ? undefined : read;
  } catch {
    return undefined;
  }
}

function number(cell: string): number | undefined {
  const value = cell.trim() === "" ? Number.NaN : Number(cell);
  return Number.isFinite(value) ? value : undefined;
}

function textOf(cell: string): string | undefined {
  return cell === "" ? undefined : bareCell(cell);
}

function saidBefore(cell: string): readonly string[] | undefined {
  if (cell === "") return undefined;
  try {
    const list: unknown = JSON.parse(cell);
    return Array.isArray(list) && list.every((each) => typeof each === "string") ? list : undefined;
  } catch {
    return undefined;
  }
}
