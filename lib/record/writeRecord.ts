import type { ShopRecord } from "./types.ts";

/** The order in which a record's own fields are written; fields that are not ours follow, by name. */
const order = ["schema", "kind", "id", "name", "changed", "saved", "settings", "setups", "baths", "runs", "notebooks"];

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;

const place = (key: string): number => (order.includes(key) ? order.indexOf(key) : order.length);

// Facts and a notebook's lines keep the maker's order, which says something; the rest is sorted so that two
// copies of one record compare line by line.
const keepsOrder = new Set(["facts", "hints", "notebook"]);

function tidy(value: unknown, asWritten: boolean, path: string): unknown {
  if (typeof value === "number" && !Number.isFinite(value)) {
    throw new RangeError(`invalid number: ${value} at ${path}; only finite numbers can be kept`);
  }
  if (Array.isArray(value)) return value.map((item, i) => tidy(item, asWritten, `${path}/${i}`));
  if (!isObject(value)) return value;
  const keys = Object.keys(value);
  if (!asWritten) keys.sort((a, b) => place(a) - place(b) || (a < b ? -1 : a > b ? 1 : 0));
  const result: Record<string, unknown> = Object.create(null);
  for (const key of keys) result[key] = tidy(value[key], asWritten || keepsOrder.has(key), `${path}/${key}`);
  return result;
}

/**
 * A shop record as text: JSON (RFC 8259) indented by two spaces, its own fields in a fixed order, so that the same
 * record always gives the same text. Fields that are not ours are written too.
 *
 * @param record - the record.
 * @returns the text, with a line end at its end.
 * @throws RangeError for a number that JSON cannot hold, with its place.
 * @example
 * writeRecord(newRecord()).startsWith("{"); // true
 */
export function writeRecord(record: ShopRecord): string {
  return `${JSON.stringify(tidy(record, false, ""), null, 2)}\n`;
}
