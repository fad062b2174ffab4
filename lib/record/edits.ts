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
  Settings,
  Setup,
  ShopRecord,
} from "./types.ts";

/** A setup with a new id. @example newSetup("Long tank", {}, thisMoment()).name; // "Long tank" */
export function newSetup(name: string, facts: Facts, moment: Moment): Setup {
  return { id: moment.newId(), changed: moment.now, name, facts: keyed(Object.entries(facts)), hints: keyed([]) };
}

/** A bath with a new id and an empty account. @example newBath("Ready mix", {}, thisMoment()).account; // [] */
export function newBath(name: string, facts: Facts, moment: Moment): Bath {
  return { id: moment.newId(), changed: moment.now, name, facts: keyed(Object.entries(facts)), account: [] };
}

/** A notebook of the maker's own, with a new id. @example newNotebook("Feed", {}, thisMoment()).name; // "Feed" */
export function newNotebook(name: string, notebook: object, moment: Moment): KeptNotebook {
  return { id: moment.newId(), changed: moment.now, name, notebook };
}

/** The record with a run more. @throws RangeError for an id it holds already. */
export function addRun(record: ShopRecord, run: KeptRun): ShopRecord {
  return addItem(record, "runs", run);
}

/** The record with a setup more. @throws RangeError for an id it holds already. */
export function addSetup(record: ShopRecord, setup: Setup): ShopRecord {
  return addItem(record, "setups", setup);
}

/** The record with a bath more. @throws RangeError for an id it holds already. */
export function addBath(record: ShopRecord, bath: Bath): ShopRecord {
  return addItem(record, "baths", bath);
}

/** The record with a notebook more. @throws RangeError for an id it holds already. */
export function addNotebook(record: ShopRecord, notebook: KeptNotebook): ShopRecord {
  return addItem(record, "notebooks", notebook);
}

/** The record with fields of a run replaced; see `changeItem`. @throws RangeError for an unknown id. */
export function changeRun(
  record: ShopRecord,
  id: string,
  change: Patch<"runs"> | ((run: KeptRun) => Patch<"runs">),
  now: string,
): ShopRecord {
  return changeItem(record, "runs", id, change, now);
}

/** The record with fields of a setup replaced; no run changes with it. @throws RangeError for an unknown id. */
export function changeSetup(
  record: ShopRecord,
  id: string,
  change: Patch<"setups"> | ((setup: Setup) => Patch<"setups">),
  now: string,
): ShopRecord {
  return changeItem(record, "setups", id, change, now);
}

/** The record with fields of a bath replaced; no run changes with it. @throws RangeError for an unknown id. */
export function changeBath(
  record: ShopRecord,
  id: string,
  change: Patch<"baths"> | ((bath: Bath) => Patch<"baths">),
  now: string,
): ShopRecord {
  return changeItem(record, "baths", id, change, now);
}

/** The record with fields of a notebook replaced. @throws RangeError for an unknown id. */
export function changeNotebook(
  record: ShopRecord,
  id: string,
  change: Patch<"notebooks"> | ((notebook: KeptNotebook) => Patch<"notebooks">),
  now: string,
): ShopRecord {
  return changeItem(record, "notebooks", id, change, now);
}

/** The record with some settings replaced. @example changeSettings(record, { units: "metric" }, thisMoment().now); */
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

/** Facts without one of them. @example withoutFact({ altitude: { text: "0 ft" } }, "altitude"); // {} */
export function withoutFact(facts: Facts, line: string): Facts {
  return keyed(Object.entries(facts).filter(([name]) => name !== line));
}

/** The record with an item thrown away: flagged, never gone. @throws RangeError for an unknown id. */
export function removeItem(record: ShopRecord, list: ListName, id: string, now: string): ShopRecord {
  return changeItem(record, list, id, { removed: true }, now);
}

/** The record with an item that was thrown away put back. @throws RangeError for an unknown id. */
export function putBack(record: ShopRecord, list: ListName, id: string, now: string): ShopRecord {
  return changeItem(record, list, id, { removed: false }, now);
}
