import type { Kept } from "./types.ts";

/**
 * The items of a list that were not thrown away.
 *
 * @example
 * shown(newRecord().runs).length; // 0
 */
export function shown<T extends Kept>(items: readonly T[]): T[] {
  return items.filter((item) => item.removed !== true);
}
