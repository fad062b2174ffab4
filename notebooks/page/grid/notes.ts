import type { Result } from "../../../lib/lines/index.ts";
import type { CaseColumn } from "./rows.ts";

/** What a line has to say in place of a number, for the cases that it holds in. */
export interface RowNote {
  readonly result: Extract<Result, { state: "stopped" | "waits" | "working" }>;
  readonly cases: readonly CaseColumn[];
  /** It holds in every case that is shown. */
  readonly everywhere: boolean;
}

/** What stands beside a line that stopped, waits or tells how far it is: the same words once, with the cases they hold in. */
export function notesOf(results: readonly Result[], cases: readonly CaseColumn[]): readonly RowNote[] {
  const notes = new Map<string, { result: RowNote["result"]; cases: CaseColumn[] }>();
  results.forEach((result, index) => {
    const one = cases[index];
    if (!one || result.state === "settled" || result.state === "not given") return;
    if (result.state === "working" && result.says === undefined) return;
    const key = JSON.stringify([result.state, "says" in result ? result.says : "", "for" in result ? result.for : ""]);
    const note = notes.get(key) ?? { result, cases: [] };
    note.cases.push(one);
    notes.set(key, note);
  });
  return [...notes.values()].map((note) => ({ ...note, everywhere: note.cases.length === cases.length }));
}

/** The word that stands in the kind column: the kind, or the state where no case has a number to show. */
export function kindWord(kind: string, results: readonly Result[]): string {
  const states = new Set(results.map(({ state }) => state));
  if (states.has("stopped")) return "stopped";
  if (states.has("waits")) return "waits";
  if (states.has("working")) return "working";
  return kind;
}
