import { later } from "./later.ts";
import { listNames } from "./listNames.ts";
import { same } from "./same.ts";
import type { Kept, ShopRecord } from "./types.ts";

/**
 * The record made to say what a copy says: for a maker who goes back to an earlier copy. Items that the copy does not
 * have are thrown away (flagged, so they can be put back), the rest becomes as the copy has it, with stamps later
 * than any here, so that another open tab takes it over rather than undoing it.
 *
 * @param record - the record as it is now.
 * @param copy - the record to go back to.
 * @param now - when, ISO 8601.
 * @example
 * const record = addBath(newRecord(), newBath("Ready mix", {}, thisMoment()));
 * putInPlace(record, newRecord(), thisMoment().now).baths[0].removed; // true
 */
export function putInPlace(record: ShopRecord, copy: ShopRecord, now: string): ShopRecord {
  const lists = listNames.map((list) => {
    const here = new Map(record[list].map((item) => [item.id, item as Kept]));
    const ids = new Set(copy[list].map(({ id }) => id));
    const taken = copy[list].map((item: Kept): Kept => {
      const mine = here.get(item.id);
      return mine === undefined || same(mine, item) ? item : { ...item, changed: later(mine.changed, now) };
    });
    const leftOut = record[list]
      .filter(({ id }) => !ids.has(id))
      .map(
        (item: Kept): Kept =>
          item.removed === true ? item : { ...item, removed: true, changed: later(item.changed, now) },
      );
    return [list, [...taken, ...leftOut]] as const;
  });
  const settings = { ...copy.settings, changed: later(record.settings.changed ?? "", now) };
  return { ...record, ...copy, id: record.id, saved: now, settings, ...Object.fromEntries(lists) };
}
