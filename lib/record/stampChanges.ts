import { later } from "./later.ts";
import { listNames } from "./listNames.ts";
import { same } from "./same.ts";
import type { Fact, Kept, ShopRecord, Was } from "./types.ts";

const factsOf = (item: Kept): ReadonlyMap<string, Fact> =>
  new Map("facts" in item ? Object.entries(item.facts as Record<string, Fact>) : []);

/** What an item no longer says: facts with another text, another name, another outcome. */
function wasOf(before: Kept, after: Kept, at: string): Was[] {
  const facts = factsOf(after);
  const changed = [...factsOf(before)]
    .filter(([line, fact]) => facts.get(line)?.text !== fact.text)
    .map(([line, fact]) => ({ at, what: line, was: fact.text }));
  for (const field of ["name", "outcome"]) {
    const [old, now] = [Reflect.get(before, field), Reflect.get(after, field)];
    if (typeof old === "string" && old !== now) changed.push({ at, what: field, was: old });
  }
  return changed;
}

function stamp(before: Kept | undefined, after: Kept, now: string): Kept {
  if (before === undefined || before === after) return after;
  const { changed: oldStamp, ...old } = before;
  const { changed: newStamp, ...rest } = after;
  if (same(old, rest)) return before;
  const changed = newStamp > oldStamp ? newStamp : later(oldStamp, now);
  const was = same(before.history, after.history) ? wasOf(before, after, changed) : [];
  return { ...after, changed, ...(was.length > 0 ? { history: [...(after.history ?? []), ...was] } : {}) };
}

/**
 * Makes any edit of a record safe to keep: whatever changed gets a later stamp and its history, and an item that the
 * edit left out comes back flagged as thrown away, since items never vanish.
 *
 * @param before - the record as it was.
 * @param after - as the edit gave it.
 * @param now - when, ISO 8601.
 * @returns `before` itself if nothing changed.
 * @example
 * const record = addBath(newRecord(), newBath("Ready mix", {}, thisMoment()));
 * stampChanges(record, { ...record, baths: [] }, thisMoment().now).baths[0].removed; // true
 */
export function stampChanges(before: ShopRecord, after: ShopRecord, now: string): ShopRecord {
  if (before === after) return before;
  const lists = listNames.map((list) => {
    const old = new Map(before[list].map((item) => [item.id, item as Kept]));
    const items = after[list].map((item) => stamp(old.get(item.id), item, now));
    const ids = new Set(items.map(({ id }) => id));
    const leftOut = before[list].filter(({ id }) => !ids.has(id));
    for (const item of leftOut) {
      items.push(item.removed === true ? item : { ...item, removed: true, changed: later(item.changed, now) });
    }
    return [list, same(before[list], items) ? before[list] : items] as const;
  });
  const { changed: _before, ...oldSettings } = before.settings;
  const { changed: _after, ...newSettings } = after.settings;
  const settings = same(oldSettings, newSettings)
    ? before.settings
    : { ...after.settings, changed: later(before.settings.changed ?? "", now) };
  const stamped = { ...after, settings, ...Object.fromEntries(lists) };
  return same(before, stamped) ? before : stamped;
}
