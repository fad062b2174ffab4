import { type Kept, later, listNames, merge, putInPlace, type ShopRecord } from "../../../lib/record/index.ts";
import { count } from "./words.ts";

/** "add" puts the copy beside what is here, the later change of an item standing; "replace" goes back to the copy. */
export type How = "add" | "replace";

/**
 * The record with a copy taken in. Nothing vanishes either way. What the copy shows and was thrown away here is put
 * back, since it was asked for; the settings stay as they are here.
 *
 * @returns the record and what was done, in words.
 */
export function takeCopy(
  record: ShopRecord,
  copy: ShopRecord,
  how: How,
  now: string,
): { readonly record: ShopRecord; readonly says: readonly string[] } {
  if (how === "replace") return { record: putInPlace(record, copy, now), says: ["The record is as the copy has it."] };
  // The copy is merged into what is here, so that what is here keeps its order.
  const { record: both, overwritten } = merge({ ...copy, settings: record.settings }, record);
  const merged = { ...both, id: record.id };
  const says: string[] = [];
  const lists = listNames.map((list) => {
    const here = new Map(record[list].map((item) => [item.id, item as Kept]));
    const there = new Map(copy[list].map((item) => [item.id, item as Kept]));
    const added = copy[list].filter(({ id }) => !here.has(id)).length;
    if (added > 0) says.push(`${count(added, list)} added.`);
    const changed = overwritten.filter((one) => one.list === list && one.gaveUp === "theirs").length;
    if (changed > 0) says.push(`${count(changed, list)} changed later in the copy: the copy's version stands.`);
    const stood = overwritten.filter((one) => one.list === list && one.gaveUp === "mine").length;
    if (stood > 0) says.push(`${count(stood, list)} changed later here: the version here stands.`);
    const items = merged[list].map((item: Kept): Kept => {
      const back = item.removed === true && there.has(item.id) && there.get(item.id)?.removed !== true;
      return back ? { ...item, removed: false, changed: later(item.changed, now) } : item;
    });
    return [list, items] as const;
  });
  if (says.length === 0) says.push("All that the copy holds was here already.");
  return { record: { ...merged, ...Object.fromEntries(lists) }, says };
}
