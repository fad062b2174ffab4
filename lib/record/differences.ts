import { listNames } from "./listNames.ts";
import { same } from "./same.ts";
import type { Kept, ListName, ShopRecord } from "./types.ts";

/** One thing that two versions of a record say differently. */
export interface Difference {
  readonly list: ListName | "settings";
  readonly id: string;
  /** The item's name, as the second version has it. */
  readonly name: string;
  /** The fact's line, "name", "outcome", "log entry at 5 min" … */
  readonly what: string;
  /** Words on both sides; undefined where there is nothing, or nothing that is a text. */
  readonly was: string | undefined;
  readonly now: string | undefined;
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;

const own = (value: unknown, key: string): unknown =>
  isObject(value) && Object.hasOwn(value, key) ? value[key] : undefined;

/** How a log entry is called where it must be named: by its clock, else by its minutes. */
export function entryName(entry: unknown): string {
  const [clock, time] = [own(entry, "clock"), own(entry, "time")];
  if (typeof clock === "string") return `log entry ${clock}`;
  return typeof time === "number" ? `log entry at ${Math.round(time / 6) / 10} min` : "log entry";
}

function words(value: unknown): string | undefined {
  if (typeof value === "string") return value;
  if (own(value, "struck") === true) return "struck out";
  const text = own(own(value, "quantity"), "text") ?? own(value, "text") ?? own(value, "formula");
  return typeof text === "string" ? text : undefined;
}

const entriesOf = (item: Kept): Map<string, unknown> => {
  const entries = own(own(item, "log"), "entries");
  return new Map(Array.isArray(entries) ? entries.map((entry) => [String(own(entry, "id")), entry]) : []);
};

const factsOf = (item: Kept): Map<string, unknown> => new Map(Object.entries(own(item, "facts") ?? {}));

/** A notebook's lines, what its cases have of their own, and its other fields, each under what it is called. */
function notebookOf(item: Kept): Map<string, unknown> {
  const {
    lines,
    cases,
    casesFrom: _,
    caseOrder: __,
    ...rest
  } = (own(item, "notebook") ?? {}) as Record<string, unknown>;
  const mine = Object.entries(cases ?? {}).flatMap(([name, given]) =>
    Object.entries(given ?? {}).map(([line, text]): [string, unknown] => [`${line} of ${name}`, text]),
  );
  return new Map([...Object.entries(rest), ...Object.entries(lines ?? {}), ...mine]);
}

// Stamp and history change with every change and say nothing of their own.
const taken = new Set(["id", "changed", "history", "facts", "log", "notebook"]);

const fieldsOf = (item: Kept): Map<string, unknown> =>
  new Map(Object.entries(item).filter(([field]) => !taken.has(field)));

/**
 * What two versions of a record say differently, part by part, of the items that both have.
 *
 * @param before - the first version.
 * @param after - the second.
 * @example
 * const record = newRecord();
 * differences(record, changeSettings(record, { units: "metric" }, thisMoment().now))[0].now; // "metric"
 */
export function differences(before: ShopRecord, after: ShopRecord): Difference[] {
  const found: Difference[] = [];
  for (const list of listNames) {
    if (before[list] === after[list]) continue;
    const old = new Map(before[list].map((item) => [item.id, item as Kept]));
    for (const item of after[list]) {
      const was = old.get(item.id);
      if (was === undefined || was === item) continue;
      for (const parts of [fieldsOf, factsOf, entriesOf, notebookOf]) {
        const [a, b] = [parts(was), parts(item)];
        for (const key of new Set([...a.keys(), ...b.keys()])) {
          const [x, y] = [a.get(key), b.get(key)];
          if (x === y || same(x, y)) continue;
          const what = parts === entriesOf ? entryName(y ?? x) : key;
          found.push({ list, id: item.id, name: item.name, what, was: words(x), now: words(y) });
        }
      }
    }
  }
  const [s, t] = [before.settings.units, after.settings.units];
  if (s !== t) found.push({ list: "settings", id: "settings", name: "settings", what: "units", was: s, now: t });
  return found;
}
