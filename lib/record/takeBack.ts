import { later } from "./later.ts";
import { listNames } from "./listNames.ts";
import { mergeItem } from "./mergeItem.ts";
import { same } from "./same.ts";
import type { Kept, Settings, ShopRecord } from "./types.ts";

function settingsBack(current: Settings, before: Settings, after: Settings, now: string): Settings {
  const units = before.units === after.units ? current.units : before.units;
  const reopen = before.openRun !== after.openRun && current.openRun === after.openRun;
  const openRun = reopen ? before.openRun : current.openRun;
  if (units === current.units && openRun === current.openRun) return current;
  const { openRun: _, ...rest } = current;
  const changed = later(current.changed ?? "", now);
  return { ...rest, units, changed, ...(openRun === undefined ? {} : { openRun }) };
}

/**
 * Takes one change back out of a record that may have gone on since: only what that change touched returns to what it
 * was, so that what another tab wrote in the meantime stands. An item that the change added is thrown away, not gone.
 *
 * @param record - the record as it is now.
 * @param before - as it was before the change.
 * @param after - as it was right after it.
 * @param now - when, ISO 8601.
 * @returns the record; calling it with `before` and `after` exchanged does the change again.
 * @example
 * const before = newRecord();
 * const after = changeSettings(before, { units: "metric" }, thisMoment().now);
 * takeBack(after, before, after, thisMoment().now).settings.units; // "US"
 */
export function takeBack(record: ShopRecord, before: ShopRecord, after: ShopRecord, now: string): ShopRecord {
  const lists = listNames.map((list) => {
    const old = new Map(before[list].map((item) => [item.id, item as Kept]));
    const next = new Map(after[list].map((item) => [item.id, item as Kept]));
    const items = record[list].map((item: Kept): Kept => {
      const [was, became] = [old.get(item.id), next.get(item.id)];
      if (was === became || (was !== undefined && same(was, became))) return item;
      const changed = later(item.changed, now);
      if (became === undefined) return { ...item, removed: false, changed };
      if (was === undefined) return { ...item, removed: true, changed };
      const back = mergeItem(became, was, item, "mine").item;
      const { history: _, ...plain } = back;
      return { ...plain, changed, ...(was.history === undefined ? {} : { history: was.history }) };
    });
    return [list, items] as const;
  });
  const settings = settingsBack(record.settings, before.settings, after.settings, now);
  return { ...record, settings, ...Object.fromEntries(lists) };
}
