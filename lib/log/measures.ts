import type { Kind } from "../measure/index.ts";
import type { EntryKind } from "./types.ts";

/** What the quantity of each kind of entry measures; a remark has none. */
export const measures: ReadonlyMap<EntryKind, Kind> = new Map<EntryKind, Kind>([
  ["reading", "temperature"],
  ["addition", "water"],
  ["level", "water"],
  ["salt in", "mass"],
  ["cylinder", "mass"],
  ["parts in", "mass"],
  ["parts out", "mass"],
  ["depth", "length"],
  ["burner", "share"],
]);
