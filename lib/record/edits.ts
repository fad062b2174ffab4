import { addItem, changeItem, type Patch } from "./changeItem.ts";
import { keyed } from "./keyed.ts";
import { later } from "./later.ts";
import type {
  Bath,
  Fact,
  Facts,
  KeptNotebook,
  KeptRun,
  ListName,
  Moment,
  NotebookData,
  Settings,
  Setup,
  ShopRecord,
} from "./types.ts";

/**
 * A setup with a new id.
 *
 * @example
 * newSetup("Long tank", {}, thisMoment()).name; // "Long tank"
 */
export function newSetup(name: string, facts: Facts, moment: Moment): Setup {
  return { id: moment.newId(), changed: moment.now, name, facts: keyed(Object.entries(facts)), hints: keyed([]) };
}

/**
 * A bath with a new id and an empty account.
 *
 * @example
 * newBath("Ready mix", {}, thisMoment()).account; // []
 */
export function newBath(name: string, facts: Facts, moment: Moment): Bath {
  return { id: moment.newId(), changed: moment.now, name, facts: keyed(Object.entries(facts)), account: [] };
}

/**
 * A notebook of the maker's own, with a new id.
 *
 * @example
 * newNotebook("Feed", { asks: "How fast?", lines: {} }, thisMoment()).name; // "Feed"
 */
export function newNotebook(name: string, notebook: NotebookData, moment: Moment): KeptNotebook {
  return { id: moment.newId(), changed: moment.now, name, notebook };
}

/**
 * The record with a run more.
 *
 * @throws RangeError for an id it holds already.
 * @example
 * addRun(newRecord(), newRun({ name: "Tuesday", log: { entries: [] }, source: "" }, factsForNextRun(newRecord()), thisMoment())).runs.length; // 1
 */
export function addRun(record: ShopRecord, run: KeptRun): ShopRecord {
  return addItem(record, "runs", run);
}

/**
 * The record with a setup more.
 *
 * @throws RangeError for an id it holds already.
 * @example
 * addSetup(newRecord(), newSetup("Long tank", {}, thisMoment())).setups.length; // 1
 */
export function addSetup(record: ShopRecord, setup: Setup): ShopRecord {
  return addItem(record, "setups", setup);
}

/**
 * The record with a bath more.
 *
 * @throws RangeError for an id it holds already.
 * @example
 * addBath(newRecord(), newBath("Ready mix", {}, thisMoment())).baths.length; // 1
 */
export function addBath(record: ShopRecord, bath: Bath): ShopRecord {
  return addItem(record, "baths", bath);
}

/**
 * The record with a notebook more.
 *
 * @throws RangeError for an id it holds already.
 * @example
 * addNotebook(newRecord(), newNotebook("Feed", { asks: "How fast?", lines: {} }, thisMoment())).notebooks.length; // 1
 */
export function addNotebook(record: ShopRecord, notebook: KeptNotebook): ShopRecord {
  return addItem(record, "notebooks", notebook);
}

/**
 * The record with fields of a run replaced; see `changeItem`.
 *
 * @throws RangeError for an unknown id.
 * @example
 * changeRun(newRecord(), "r1", { name: "Tuesday" }, thisMoment().now); // throws "unknown id: r1; an id among the runs of the record is allowed"
 */
export function changeRun(
  record: ShopRecord,
  id: string,
  change: Patch<"runs"> | ((run: KeptRun) => Patch<"runs">),
  now: string,
): ShopRecord {
  return changeItem(record, "runs", id, change, now);
}

/**
 * The record with fields of a setup replaced; no run changes with it.
 *
 * @throws RangeError for an unknown id.
 * @example
 * const setup = newSetup("Long tank", {}, thisMoment());
 * const record = addSetup(newRecord(), setup);
 * changeSetup(record, setup.id, { name: "Short tank" }, thisMoment().now).setups[0].name; // "Short tank"
 */
export function changeSetup(
  record: ShopRecord,
  id: string,
  change: Patch<"setups"> | ((setup: Setup) => Patch<"setups">),
  now: string,
): ShopRecord {
  return changeItem(record, "setups", id, change, now);
}

/**
 * The record with fields of a bath replaced; no run changes with it.
 *
 * @throws RangeError for an unknown id.
 * @example
 * const bath = newBath("Ready mix", {}, thisMoment());
 * const record = addBath(newRecord(), bath);
 * changeBath(record, bath.id, ({ name }) => ({ name: `${name}, topped up` }), thisMoment().now).baths[0].name; // "Ready mix, topped up"
 */
export function changeBath(
  record: ShopRecord,
  id: string,
  change: Patch<"baths"> | ((bath: Bath) => Patch<"baths">),
  now: string,
): ShopRecord {
  return changeItem(record, "baths", id, change, now);
}

/**
 * The record with fields of a notebook replaced.
 *
 * @throws RangeError for an unknown id.
 * @example
 * const feed = newNotebook("Feed", { asks: "How fast?", lines: {} }, thisMoment());
 * const record = addNotebook(newRecord(), feed);
 * changeNotebook(record, feed.id, { name: "Feeding" }, thisMoment().now).notebooks[0].name; // "Feeding"
 */
export function changeNotebook(
  record: ShopRecord,
  id: string,
  change: Patch<"notebooks"> | ((notebook: KeptNotebook) => Patch<"notebooks">),
  now: string,
): ShopRecord {
  return changeItem(record, "notebooks", id, change, now);
}

/**
 * The record with some settings replaced.
 *
 * @example
 * changeSettings(newRecord(), { units: "metric" }, thisMoment().now).settings.units; // "metric"
 */
export function changeSettings(record: ShopRecord, patch: Partial<Settings>, now: string): ShopRecord {
  const changed = later(record.settings.changed ?? "", now);
  return { ...record, settings: { ...record.settings, ...patch, changed } };
}

/**
 * Facts with one of them set, in its old place or at the end. Its text is the maker's, so it no longer counts as
 * carried over unless the fact says so.
 *
 * @example
 * withFact({}, "altitude", { text: "2,100 ft" }).altitude?.text; // "2,100 ft"
 */
export function withFact(facts: Facts, line: string, fact: Fact): Facts {
  return keyed([...Object.entries(facts), [line, fact]]);
}

/**
 * Facts without one of them.
 *
 * @example
 * Object.keys(withoutFact({ altitude: { text: "0 ft" } }, "altitude")); // []
 */
export function withoutFact(facts: Facts, line: string): Facts {
  return keyed(Object.entries(facts).filter(([name]) => name !== line));
}

/**
 * The record with an item thrown away: flagged, never gone.
 *
 * @throws RangeError for an unknown id.
 * @example
 * const bath = newBath("Ready mix", {}, thisMoment());
 * const record = addBath(newRecord(), bath);
 * shown(removeItem(record, "baths", bath.id, thisMoment().now).baths).length; // 0
 */
export function removeItem(record: ShopRecord, list: ListName, id: string, now: string): ShopRecord {
  return changeItem(record, list, id, { removed: true }, now);
}

/**
 * The record with an item that was thrown away put back.
 *
 * @throws RangeError for an unknown id.
 * @example
 * const bath = newBath("Ready mix", {}, thisMoment());
 * const gone = removeItem(addBath(newRecord(), bath), "baths", bath.id, thisMoment().now);
 * shown(putBack(gone, "baths", bath.id, thisMoment().now).baths).length; // 1
 */
export function putBack(record: ShopRecord, list: ListName, id: string, now: string): ShopRecord {
  return changeItem(record, list, id, { removed: false }, now);
}
