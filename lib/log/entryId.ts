import type { EntryKind } from "./types.ts";

/**
 * An id that no entry has yet: where the entry comes from, its kind, and a number.
 *
 * @param taken ids in use; the new one is added
 * @param origin the source line, or "page" for an entry made by hand
 * @param kind the entry's kind
 * @returns the id
 * @example
 * entryId(new Set(), "12", "parts in") // "12-parts-in-1"
 */
export function entryId(taken: Set<string>, origin: string, kind: EntryKind): string {
  const stem = `${origin}-${kind.replace(" ", "-")}-`;
  for (let number = 1; ; number += 1) {
    const id = `${stem}${number}`;
    if (taken.has(id)) continue;
    taken.add(id);
    return id;
  }
}
