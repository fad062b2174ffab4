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
  const rows = run.entries
    .filter((entry) => !entry.struck && Number.isFinite(entry.time))
    .map((entry, order) => ({ entry, order }))
    .sort((a, b) => a.entry.time - b.entry.time || a.order - b.order);
  const numbers = (kind: Entry["kind"]) =>
    rows.flatMap(({ entry, order }) => {
      const si = entry.quantity?.si;
      return entry.kind === kind && si !== undefined && Number.isFinite(si)
        ? [{ entry, order, si, u: entry.quantity?.standardUncertainty ?? 0 }]
        : [];
    });
  const all = (kind: Entry["kind"]) => rows.filter(({ entry }) => entry.kind === kind);
  return {
    readings: numbers("reading").map(({ entry, order, si }) => ({ id: entry.id, time: entry.time, T: si, order })),
    pours: numbers("addition")
      .filter(({ si }) => si > 0)
      .map(({ entry, order, si }) => ({
        id: entry.id,
        time: entry.time,
        mass: si,
        duration: Math.max(0, entry.duration ?? 0),
        order,
      })),
    fires: all("burner").map(({ entry }) => ({ time: entry.time, share: entry.quantity?.si })),
    parts: rows
      .filter(({ entry }) => entry.kind === "parts in" || entry.kind === "parts out")
      .map(({ entry }) => ({ time: entry.time, goesIn: entry.kind === "parts in", mass: entry.quantity?.si })),
    salts: numbers("salt in").map(({ entry, si }) => ({ time: entry.time, mass: si })),
    levels: numbers("level").map(({ entry, si, u }) => ({ time: entry.time, mass: si, u })),
    depths: numbers("depth").map(({ entry, si, u }) => ({ time: entry.time, depth: si, u })),
    remarks: rows.flatMap(({ entry }) => (entry.text ? [{ time: entry.time, text: entry.text }] : [])),
    end: rows.reduce((last, { entry }) => Math.max(last, entry.time), 0),
  };
}
