import { isUnread, readQuantity } from "../measure/index.ts";
import type { Expected, Written } from "../measure/types.ts";
import { entryId } from "./entryId.ts";
import type { Entry, EntryKind, Problem, Run } from "./types.ts";

const expected: Partial<Record<EntryKind, Expected>> = {
  reading: { kind: "temperature", unit: "°F" },
  addition: { kind: "water", unit: "fl oz" },
  level: { kind: "water", unit: "fl oz" },
  "salt in": { kind: "mass", unit: "lb" },
  "parts in": { kind: "mass", unit: "lb" },
  "parts out": { kind: "mass", unit: "lb" },
  cylinder: { kind: "mass", unit: "lb" },
  depth: { kind: "length", unit: "in" },
  burner: { kind: "share", unit: "" },
};

/** The unit that the run's own entries of a kind are written in, so that a bare number means the same. */
function usualUnit(run: Run, kind: EntryKind, except?: string): string | undefined {
  return run.entries.find((entry) => entry.kind === kind && entry.quantity && entry.id !== except)?.quantity?.unit;
}

function readAs(run: Run, kind: EntryKind, text: string, unit?: string): Written | Problem | undefined {
  const wanted = expected[kind];
  if (!wanted) return undefined;
  const usual = unit ?? usualUnit(run, kind) ?? wanted.unit;
  const read = readQuantity(text, { ...wanted, ...(usual === undefined ? {} : { unit: usual }) });
  if (!isUnread(read)) return read;
  return { line: 1, read: text === "" ? "nothing" : text, expected: read.expected, remedy: read.remedy };
}

const isProblem = (read: Written | Problem): read is Problem => "remedy" in read;

function replace(run: Run, id: string, change: (entry: Entry) => Entry): Run {
  if (!run.entries.some((entry) => entry.id === id)) throw new RangeError(`unknown entry: ${id}; an id of this run`);
  return { ...run, entries: run.entries.map((entry) => (entry.id === id ? change(entry) : entry)) };
}

/**
 * The run with an entry struck out; it stays in the run.
 *
 * @param run a run
 * @param id the entry's
 * @param reason in the maker's words
 * @returns a new run
 * @throws RangeError for an unknown id
 * @example
 * const run = readLog("0:00 284\n1:00 219").run;
 * strikeOut(run, run.entries[1]?.id ?? "", "mis-read").entries[1]?.struck // true
 */
export function strikeOut(run: Run, id: string, reason: string): Run {
  return replace(run, id, (entry) => ({ ...entry, struck: true, ...(reason === "" ? {} : { reason }) }));
}

/**
 * The run with a struck-out entry in it again.
 *
 * @throws RangeError for an unknown id
 * @example
 * const run = readLog("0:00 284\n1:00 219").run;
 * const id = run.entries[1]?.id ?? "";
 * putBack(strikeOut(run, id, "mis-read"), id).entries[1]?.struck // false
 */
export function putBack(run: Run, id: string): Run {
  return replace(run, id, ({ reason: _, ...entry }) => ({ ...entry, struck: false }));
}

/**
 * The run with an entry corrected; what it said before is kept with it. A bare number is in the entry's own unit.
 *
 * @param run a run
 * @param id the entry's
 * @param text what it should say: a quantity of the entry's kind, or words for a remark
 * @returns the new run, or the problem with the text
 * @throws RangeError for an unknown id
 * @example
 * const run = readLog("0:00 284 F\n1:00 219 F").run;
 * const corrected = correct(run, run.entries[1]?.id ?? "", "291");
 * "run" in corrected && corrected.run.entries[1]?.quantity?.text // "291 °F"
 */
export function correct(run: Run, id: string, text: string): { readonly run: Run } | { readonly problem: Problem } {
  const entry = run.entries.find((one) => one.id === id);
  if (!entry) throw new RangeError(`unknown entry: ${id}; an id of this run`);
  const typed = text.trim();
  const before = [...(entry.before ?? []), entry.quantity?.text ?? entry.text ?? ""];
  if (!entry.quantity) return { run: replace(run, id, (one) => ({ ...one, text: typed, before })) };
  const read = readAs(run, entry.kind, typed, entry.quantity.unit);
  if (!read) return { run };
  if (isProblem(read)) return { problem: { ...read, line: Math.max(1, entry.line) } };
  const bare = /^[\d\s.,/½¼¾⅓⅔⅛-]+$/.test(typed);
  const quantity = bare && read.unit !== "" ? { ...read, text: `${typed} ${read.unit}` } : read;
  return { run: replace(run, id, (one) => ({ ...one, quantity, before })) };
}

/**
 * The run with an entry added by hand, in its place in time; a run's ids stay as they are.
 *
 * @param run a run
 * @param made time in s from the first row (0 or more), its kind, and what it says; `clock` as it was written
 * @returns the new run, or the problem with the text
 * @throws RangeError for a time that is no number from 0 on
 * @example
 * const added = addEntry(readLog("0:00 284 F").run, { time: 60, kind: "addition", text: "2 cups" });
 * "run" in added && added.run.entries.length // 2
 */
export function addEntry(
  run: Run,
  made: { readonly time: number; readonly kind: EntryKind; readonly text: string; readonly clock?: string },
): { readonly run: Run } | { readonly problem: Problem } {
  const { time, kind, text, clock } = made;
  if (!(time >= 0 && Number.isFinite(time))) throw new RangeError(`invalid time: ${time} s; 0 or more`);
  const needsQuantity = kind === "reading" || kind === "addition";
  const read = needsQuantity ? readAs(run, kind, text.trim()) : undefined;
  if (read && isProblem(read)) return { problem: read };
  const entry: Entry = {
    id: entryId(new Set(run.entries.map(({ id }) => id)), "page", kind),
    time,
    kind,
    line: 0,
    struck: false,
    ...(clock === undefined ? {} : { clock }),
    ...(read ? { quantity: read } : { text: text.trim() }),
  };
  const after = run.entries.findIndex((one) => one.time > time);
  const place = after === -1 ? run.entries.length : after;
  return { run: { ...run, entries: [...run.entries.slice(0, place), entry, ...run.entries.slice(place)] } };
}
