import { keyed } from "./keyed.ts";
import { listNames } from "./listNames.ts";
import type { ShopRecord } from "./types.ts";

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;

function deep(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(deep);
  if (!isObject(value)) return value;
  return keyed(Object.entries(value).map(([key, inner]) => [key, deep(inner)] as const));
}

/**
 * The same record with everything that is keyed by a maker's words (facts, answers to questions, notebooks) in
 * objects without a prototype, so that asking for a line called "constructor" gives nothing rather than a function.
 * Log entries have fixed keys and stay ordinary objects, which are smaller and faster.
 *
 * @param record - a record that was checked.
 * @example
 * safeKeys(newRecord()).runs.length; // 0
 */
export function safeKeys(record: ShopRecord): ShopRecord {
  const safe = (item: object): object => {
    const result: Record<string, unknown> = { ...item };
    for (const field of ["facts", "hints", "notebook"]) {
      if (Object.hasOwn(result, field)) result[field] = deep(result[field]);
    }
    return result;
  };
  const lists = listNames.map((list) => [list, record[list].map(safe)] as const);
  return { ...record, ...Object.fromEntries(lists) };
}
