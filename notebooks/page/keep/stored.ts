import { listNames, readRecord, type ShopRecord, sayRecordProblem } from "../../../lib/record/index.ts";

/** What lies in the browser's storage: the record as text, so that reading it checks it like any other file. */
export interface Stored {
  /** Another one at each writing: tells whether what lies there is what this tab wrote. */
  readonly stamp: string;
  /** When it was written, ISO 8601 in UTC. */
  readonly at: string;
  readonly text: string;
}

/** What was kept cannot be read by this version; it must not be overwritten. */
export class Unreadable extends Error {
  readonly text: string;

  constructor(says: string, text: string) {
    super(says);
    this.name = "Unreadable";
    this.text = text;
  }
}

/** The stored value as such; undefined where nothing was stored yet. @throws Unreadable for anything else. */
export function asStored(value: unknown): Stored | undefined {
  if (value === undefined) return undefined;
  if (typeof value === "object" && value !== null && "text" in value && typeof value.text === "string") {
    const { stamp, at } = value as Partial<Stored>;
    return { text: value.text, stamp: String(stamp), at: typeof at === "string" ? at : "" };
  }
  throw new Unreadable("What is kept in this browser is not a shop record.", JSON.stringify(value) ?? "");
}

/** The record in what was stored. @throws Unreadable with words for the maker. */
export function recordIn(stored: Stored): { readonly record: ShopRecord; readonly upgradedFrom?: number } {
  const reading = readRecord(stored.text);
  if ("problem" in reading) throw new Unreadable(sayRecordProblem(reading.problem), stored.text);
  return reading;
}

const texts = new WeakMap<object, string>();

function finiteOnly(this: unknown, key: string, value: unknown): unknown {
  if (typeof value === "number" && !Number.isFinite(value)) {
    throw new RangeError(`invalid number: ${value} in "${key}"; only finite numbers can be kept`);
  }
  return value;
}

function textOf(item: object): string {
  const known = texts.get(item);
  if (known !== undefined) return known;
  const text = JSON.stringify(item, finiteOnly);
  texts.set(item, text);
  return text;
}

/**
 * The record as compact text. Items are never changed in place, so only those that are new since the last time are
 * written out again: a long log costs once, not at every change.
 *
 * @throws RangeError for a number that JSON cannot hold.
 */
export function compactText(record: ShopRecord): string {
  const isList = new Set<string>(listNames);
  const rest = Object.entries(record).filter(([key, value]) => !isList.has(key) && value !== undefined);
  const fields = rest.map(([key, value]) => `${JSON.stringify(key)}:${JSON.stringify(value, finiteOnly)}`);
  const lists = listNames.map((list) => `"${list}":[${record[list].map(textOf).join(",")}]`);
  return `{${[...fields, ...lists].join(",")}}`;
}
