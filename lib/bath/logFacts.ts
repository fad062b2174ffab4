import type { Entry, Run } from "../log/types.ts";

export interface Reading {
  readonly id: string;
  readonly time: number;
  /** K. */
  readonly T: number;
  /** Place in the log, which says what stands before what on one time. */
  readonly order: number;
}

export interface Pour {
  readonly id: string;
  readonly time: number;
  /** kg. */
  readonly mass: number;
  /** s, 0 where it went in at once. */
  readonly duration: number;
  readonly order: number;
}

/** What a log says, sorted by kind, without what was struck out. */
export interface LogFacts {
  readonly readings: readonly Reading[];
  readonly pours: readonly Pour[];
  readonly fires: readonly { readonly time: number; readonly share: number | undefined }[];
  readonly parts: readonly { readonly time: number; readonly goesIn: boolean; readonly mass: number | undefined }[];
  readonly salts: readonly { readonly time: number; readonly mass: number }[];
  readonly levels: readonly { readonly time: number; readonly mass: number; readonly u: number }[];
  readonly depths: readonly { readonly time: number; readonly depth: number; readonly u: number }[];
  readonly remarks: readonly { readonly time: number; readonly text: string }[];
  /** s of the log's last row, a bare remark included. */
  readonly end: number;
}

/**
 * Sorts the rows of a log by kind; struck-out rows and rows without a usable number are left out.
 *
 * @param run a log
 * @example logFacts({ entries: [] }).end // 0
 */
export function logFacts(run: Run): LogFacts {
  const rows = run.entries.filter(({ struck, time }) => !struck && Number.isFinite(time));
  const orders = inTime(rows);
  const readings: Reading[] = [];
  const pours: Pour[] = [];
  const fires: LogFacts["fires"][number][] = [];
  const parts: LogFacts["parts"][number][] = [];
  const salts: LogFacts["salts"][number][] = [];
  const levels: LogFacts["levels"][number][] = [];
  const depths: LogFacts["depths"][number][] = [];
  const remarks: LogFacts["remarks"][number][] = [];
  let end = 0;
  // One pass: a logger's file has thousands of rows.
  for (let i = 0; i < rows.length; i++) {
    const order = orders?.[i] ?? i;
    const { id, time, kind, quantity, duration, text } = rows[order] as Entry;
    const si = quantity?.si;
    if (text) remarks.push({ time, text });
    end = Math.max(end, time);
    if (kind === "burner") fires.push({ time, share: si });
    else if (kind === "parts in" || kind === "parts out") parts.push({ time, goesIn: kind === "parts in", mass: si });
    else if (si === undefined || !Number.isFinite(si)) continue;
    else if (kind === "reading") readings.push({ id, time, T: si, order });
    else if (kind === "addition") {
      if (si > 0) pours.push({ id, time, mass: si, duration: Math.max(0, duration ?? 0), order });
    } else if (kind === "salt in") salts.push({ time, mass: si });
    else if (kind === "level") levels.push({ time, mass: si, u: quantity?.standardUncertainty ?? 0 });
    else if (kind === "depth") depths.push({ time, depth: si, u: quantity?.standardUncertainty ?? 0 });
  }
  return { readings, pours, fires, parts, salts, levels, depths, remarks, end };
}

/** Numbers of the rows in order of time, rows of one time as they stand; undefined where they stand so already. */
function inTime(rows: readonly Entry[]): readonly number[] | undefined {
  const timeOf = (i: number) => (rows[i] as Entry).time;
  if (rows.every(({ time }, i) => i === 0 || timeOf(i - 1) <= time)) return undefined;
  return rows.map((_, i) => i).sort((a, b) => timeOf(a) - timeOf(b) || a - b);
}
