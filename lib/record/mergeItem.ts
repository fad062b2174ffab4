import { entryName } from "./differences.ts";
import { keyed } from "./keyed.ts";
import { newer } from "./newer.ts";
import { same } from "./same.ts";
import type { Kept } from "./types.ts";

/** A part of an item that both sides changed: what stands now and what it stands in place of. */
export interface Clash {
  /** "altitude", "name", "log entry 7:51" … */
  readonly what: string;
  readonly stands: unknown;
  readonly lost: unknown;
  /** Which side's text was given up. */
  readonly gaveUp: "mine" | "theirs";
}

type Fields = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const own = (value: unknown, key: string): unknown =>
  isObject(value) && Object.hasOwn(value, key) ? value[key] : undefined;

/** Places that are taken apart by key, "*" being any key; whatever stands elsewhere is one piece. */
const byKey = new Set([
  "facts",
  "hints",
  "log",
  "notebook",
  "notebook/lines",
  "notebook/casesFrom",
  "notebook/cases",
  "notebook/cases/*",
]);
/** Lists of names that both sides may add to: the order of the side that wins, then what only the other has. */
const orders = new Set(["notebook/caseOrder"]);
/** Lists that are taken apart by the id of what they hold. */
const byId = new Set(["log/entries", "account"]);

function idsOf(list: unknown): Map<string, unknown> | undefined {
  if (!Array.isArray(list)) return undefined;
  const found = new Map<string, unknown>();
  for (const item of list) {
    const id = own(item, "id");
    if (typeof id !== "string" || found.has(id)) return undefined;
    found.set(id, item);
  }
  return found;
}

/**
 * One item that two open tabs both changed, put together part by part: whatever only one of them touched stands, and
 * where both touched the same fact, log entry, line, case's own text or field the side that is said to win stands and the other is reported.
 *
 * @param base - the item as both had it.
 * @param mine - this side's.
 * @param theirs - the other side's.
 * @param winner - whose text stands in a clash.
 * @returns the item, with the later of the two stamps, and the clashes.
 * @example
 * const bath = newBath("Ready mix", {}, thisMoment());
 * mergeItem(bath, { ...bath, name: "Old mix" }, { ...bath, removed: true }, "mine").item; // { name: "Old mix", removed: true, … }
 */
export function mergeItem<T extends Kept>(
  base: T,
  mine: T,
  theirs: T,
  winner: "mine" | "theirs",
): { readonly item: T; readonly clashes: readonly Clash[] } {
  const clashes: Clash[] = [];

  function piece(b: unknown, m: unknown, t: unknown, what: string): unknown {
    if (same(m, t) || same(b, t)) return m;
    if (same(b, m)) return t;
    const [stands, lost] = winner === "mine" ? [m, t] : [t, m];
    clashes.push({ what, stands, lost, gaveUp: winner === "mine" ? "theirs" : "mine" });
    return stands;
  }

  function list(b: unknown, m: unknown, t: unknown, what: string): unknown {
    const [before, here, there] = [idsOf(b ?? []), idsOf(m), idsOf(t)];
    if (before === undefined || here === undefined || there === undefined) return piece(b, m, t, what);
    const [first, second] = winner === "mine" ? [here, there] : [there, here];
    const merged = [...new Set([...first.keys(), ...second.keys()])].flatMap((id) => {
      const entry = piece(
        before.get(id),
        here.get(id),
        there.get(id),
        what === "log entry" ? entryName(here.get(id) ?? there.get(id)) : what,
      );
      return entry === undefined ? [] : [entry];
    });
    // Log entries stand in order of time; the sort is stable, so entries of one moment stay as they were.
    const time = (entry: unknown): number => Number(own(entry, "time") ?? 0);
    return what === "log entry" ? merged.sort((x, y) => time(x) - time(y)) : merged;
  }

  /** Which of two orders stands is no loss to speak of: every name is in it. */
  function order(m: unknown, t: unknown): unknown {
    if (!Array.isArray(m) || !Array.isArray(t)) return m ?? t;
    const [first, second] = winner === "mine" ? [m, t] : [t, m];
    return [...new Set([...first, ...second])];
  }

  function fields(b: unknown, m: Fields, t: Fields, place = "", of = ""): Fields {
    const keys = new Set([...Object.keys(m), ...Object.keys(t)]);
    const entries = [...keys].flatMap((key): [string, unknown][] => {
      const [bb, mm, tt] = [own(b, key), own(m, key), own(t, key)];
      const at = place === "" ? key : `${place}/${place === "notebook/cases" ? "*" : key}`;
      let value: unknown;
      if (orders.has(at)) value = same(bb, tt) ? mm : same(bb, mm) ? tt : order(mm, tt);
      else if (byId.has(at)) value = list(bb, mm, tt, key === "entries" ? "log entry" : key);
      else if (byKey.has(at) && isObject(mm) && isObject(tt))
        value = fields(bb, mm, tt, at, place === "notebook/cases" ? ` of ${key}` : of);
      else value = piece(bb, mm, tt, key + of);
      return value === undefined ? [] : [[key, value]];
    });
    return keyed(entries);
  }

  const { changed: _m, history: myHistory = [], ...myRest } = mine;
  const { changed: _t, history: theirHistory = [], ...theirRest } = theirs;
  const merged = fields(base, myRest, theirRest);
  const history = [...myHistory];
  for (const was of theirHistory) if (!history.some((other) => same(other, was))) history.push(was);
  // What was given up is not lost: the item's history says it.
  for (const { what, lost, gaveUp } of clashes) {
    const words = typeof lost === "string" ? lost : (own(lost, "text") ?? own(lost, "formula"));
    if (typeof words !== "string") continue;
    const was = { at: (gaveUp === "mine" ? mine : theirs).changed, what, was: words };
    if (!history.some((other) => same(other, was))) history.push(was);
  }
  history.sort((x, y) => (x.at < y.at ? -1 : x.at > y.at ? 1 : 0));
  const changed = newer(mine.changed, theirs.changed);
  // Fields were taken from the two items alone, so the outcome has their type.
  const item = { ...merged, changed, ...(history.length > 0 ? { history } : {}) } as unknown as T;
  return { item, clashes };
}
