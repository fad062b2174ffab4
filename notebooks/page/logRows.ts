import type { Entry, Run } from "../../lib/log/types.ts";

/** One row of the log's ledger: what stands on one line of the log at one time. */
export interface LogRow {
  readonly key: string;
  readonly time: number;
  readonly clock: string | undefined;
  readonly reading: readonly Entry[];
  readonly water: readonly Entry[];
  readonly events: readonly Entry[];
}

/** Puts a run's entries into rows, in order of time; entries of one time and line share a row. */
export function logRows(run: Run): readonly LogRow[] {
  const rows = new Map<string, { time: number; clock: string | undefined; entries: Entry[] }>();
  for (const entry of run.entries) {
    const key = entry.line > 0 ? `${entry.line}@${entry.time}` : entry.id;
    const row = rows.get(key);
    if (row) row.entries.push(entry);
    else rows.set(key, { time: entry.time, clock: entry.clock, entries: [entry] });
  }
  return [...rows].map(([key, { time, clock, entries }]) => ({
    key,
    time,
    clock,
    reading: entries.filter(({ kind }) => kind === "reading"),
    water: entries.filter(({ kind }) => kind === "addition"),
    events: entries.filter(({ kind }) => kind !== "reading" && kind !== "addition"),
  }));
}

/** Takes what the maker struck out, corrected and added over to the same log read again. Entries keep their ids. */
export function carryEdits(before: Run, after: Run): Run {
  const edited = new Map(
    before.entries.filter(({ struck, before: said }) => struck || said?.length).map((entry) => [entry.id, entry]),
  );
  const added = before.entries.filter(({ line }) => line === 0);
  const entries = after.entries.map((entry) => {
    const old = edited.get(entry.id);
    return old && old.kind === entry.kind ? { ...old, time: entry.time } : entry;
  });
  return { ...after, entries: [...entries, ...added].toSorted((a, b) => a.time - b.time) };
}
