import { later } from "./later.ts";
import { listNames } from "./listNames.ts";
import type { Kept, ShopRecord } from "./types.ts";

const overItems = (record: ShopRecord, change: (item: Kept) => Kept): ShopRecord => ({
  ...record,
  ...Object.fromEntries(listNames.map((list) => [list, record[list].map((item: Kept) => change(item))])),
});

/**
 * The record with every item flagged as invented.
 *
 * @example
 * asInvented(addBath(newRecord(), newBath("Ready mix", {}, thisMoment()))).baths[0].invented; // true
 */
export function asInvented(record: ShopRecord): ShopRecord {
  return overItems(record, (item) => (item.invented === true ? item : { ...item, invented: true }));
}

/**
 * Whether any invented item is shown.
 *
 * @example
 * hasDemo(newRecord()); // false
 */
export function hasDemo(record: ShopRecord): boolean {
  return listNames.some((list) => record[list].some((item: Kept) => item.invented === true && item.removed !== true));
}

/**
 * The record with every invented item thrown away: flagged, so that it can be brought back.
 *
 * @param record - the record.
 * @param now - when, ISO 8601.
 * @example
 * const demo = asInvented(addBath(newRecord(), newBath("Ready mix", {}, thisMoment())));
 * hasDemo(withoutDemo(demo, thisMoment().now)); // false
 */
export function withoutDemo(record: ShopRecord, now: string): ShopRecord {
  return overItems(record, (item) =>
    item.invented === true && item.removed !== true
      ? { ...item, removed: true, changed: later(item.changed, now) }
      : item,
  );
}

/**
 * The record with the demo in it again, beside what is the maker's own: items thrown away are put back as they were
 * last, missing ones are added.
 *
 * @param record - the record.
 * @param demo - the demo's record.
 * @param now - when, ISO 8601.
 * @example
 * const demo = addBath(newRecord(), newBath("Ready mix", {}, thisMoment()));
 * hasDemo(withDemo(newRecord(), demo, thisMoment().now)); // true
 */
export function withDemo(record: ShopRecord, demo: ShopRecord, now: string): ShopRecord {
  const back = overItems(record, (item) =>
    item.invented === true && item.removed === true
      ? { ...item, removed: false, changed: later(item.changed, now) }
      : item,
  );
  const lists = listNames.map((list) => {
    const ids = new Set(back[list].map(({ id }) => id));
    return [list, [...back[list], ...asInvented(demo)[list].filter(({ id }) => !ids.has(id))]] as const;
  });
  return { ...back, ...Object.fromEntries(lists) };
}
