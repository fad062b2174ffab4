import type { Entry } from "./types.ts";

/**
 * Entries sorted by time; those of one time keep their order.
 *
 * @param entries entries in any order
 * @returns the same entries in time order
 * @example
 * inTimeOrder([later, earlier]) // [earlier, later]
 */
export function inTimeOrder(entries: readonly Entry[]): Entry[] {
  const sorted = entries.every((entry, index) => index === 0 || entry.time >= (entries[index - 1]?.time ?? 0));
  return sorted ? [...entries] : [...entries].sort((one, other) => one.time - other.time);
}
