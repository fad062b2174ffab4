import { later } from "./later.ts";
import { listNames } from "./listNames.ts";
import type { ListName, Lists, ShopRecord } from "./types.ts";

/** What an edit may change of an item: anything but its id and its stamp. */
export type Patch<L extends ListName> = Partial<Omit<Lists[L], "id" | "changed">>;

/**
 * The item of a list that has an id, thrown away or not.
 *
 * @returns the item, undefined if there is none.
 * @example
 * itemOf(newRecord(), "runs", "r1"); // undefined
 */
export function itemOf<L extends ListName>(record: ShopRecord, list: L, id: string): Lists[L] | undefined {
  const items: readonly { readonly id: string }[] = record[list];
  return items.find((item) => item.id === id) as Lists[L] | undefined;
}

/**
 * The record with one item changed, all else the same objects as before.
 *
 * @param record - the record.
 * @param list - which list the item is in.
 * @param id - the item's id.
 * @param change - the fields to replace, or a function from the item to them.
 * @param now - when, ISO 8601; the item's stamp becomes this or a moment after what it was.
 * @throws RangeError for an id that the list does not hold.
 * @example
 * const bath = newBath("Own salts", {}, thisMoment());
 * const record = addBath(newRecord(), bath);
 * changeItem(record, "baths", bath.id, { name: "Ready mix" }, thisMoment().now).baths[0].name; // "Ready mix"
 */
export function changeItem<L extends ListName>(
  record: ShopRecord,
  list: L,
  id: string,
  change: Patch<L> | ((item: Lists[L]) => Patch<L>),
  now: string,
): ShopRecord {
  if (!listNames.includes(list)) throw new RangeError(`unknown list: ${list}; ${listNames.join(", ")} are allowed`);
  const item = itemOf(record, list, id);
  if (item === undefined) throw new RangeError(`unknown id: ${id}; an id among the ${list} of the record is allowed`);
  const patch = typeof change === "function" ? change(item) : change;
  const changed = { ...item, ...patch, id, changed: later(item.changed, now) };
  const items: readonly unknown[] = record[list];
  return { ...record, [list]: items.map((other) => (other === item ? changed : other)) };
}

/**
 * The record with one item more, at the end of its list.
 *
 * @throws RangeError if the list holds that id already.
 * @example
 * addItem(newRecord(), "baths", newBath("Ready mix", {}, thisMoment())).baths.length; // 1
 */
export function addItem<L extends ListName>(record: ShopRecord, list: L, item: Lists[L]): ShopRecord {
  if (itemOf(record, list, item.id) !== undefined) {
    throw new RangeError(`ambiguous id: ${item.id}; an id that none of the ${list} has is allowed`);
  }
  return { ...record, [list]: [...record[list], item] };
}
