import { listNames } from "./listNames.ts";
import { mergeItem } from "./mergeItem.ts";
import { newer } from "./newer.ts";
import { same } from "./same.ts";
import type { Kept, ListName, Settings, ShopRecord } from "./types.ts";

/** Something one side had written and the other side's later change replaced. */
export interface Overwritten {
  readonly list: ListName | "settings";
  readonly id: string;
  /** The item's name. */
  readonly name: string;
  /** The fact, field or log entry; "all of it" where two versions could only be taken whole. */
  readonly what: string;
  readonly stands: unknown;
  readonly lost: unknown;
  /** Whose was given up. */
  readonly gaveUp: "mine" | "theirs";
}

export interface Merged {
  readonly record: ShopRecord;
  readonly overwritten: readonly Overwritten[];
}

// Two stamps can be alike; the text decides then, so that both tabs decide alike.
function mineWins(mine: { changed?: string }, theirs: { changed?: string }): boolean {
  const [m, t] = [mine.changed ?? "", theirs.changed ?? ""];
  return m === t ? JSON.stringify(mine) >= JSON.stringify(theirs) : m > t;
}

// Units and the open run are two things: a tab that opens a run does not undo the other's change of units.
function settingsOf(mine: ShopRecord, theirs: ShopRecord, base?: ShopRecord): { settings: Settings; lost: boolean } {
  const [m, t] = [mine.settings, theirs.settings];
  if (same(m, t)) return { settings: m, lost: false };
  const wins = mineWins(m, t);
  const b: Partial<Settings> = base?.settings ?? {};
  const pick = (key: "units" | "openRun") => {
    if (base !== undefined && same(b[key], t[key])) return m;
    if (base !== undefined && same(b[key], m[key])) return t;
    return wins ? m : t;
  };
  const { openRun } = pick("openRun");
  const { openRun: _, ...rest } = wins ? m : t;
  const settings = { ...t, ...m, ...rest, units: pick("units").units };
  delete settings.openRun;
  const clash = m.units !== t.units && !same(b.units, m.units) && !same(b.units, t.units);
  return { settings: openRun === undefined ? settings : { ...settings, openRun }, lost: clash };
}

/**
 * Two versions of one shop record put together, as two open tabs or two copies of the file make them. Nothing
 * vanishes: an item that either side has is in the outcome (thrown-away ones are flagged, not gone). With the version
 * that both came from, each item is put together part by part; without it the later change of an item stands whole.
 *
 * @param mine - this side's record.
 * @param theirs - the other side's.
 * @param base - what both sides last agreed on, if it is known.
 * @returns the record, and what was overwritten on either side, so that the page can say so. Its id is mine; their
 * items stand first, in their order, then what only this side has.
 * @example
 * const base = addBath(newRecord(), newBath("Ready mix", {}, thisMoment()));
 * const mine = addSetup(base, newSetup("Long tank", {}, thisMoment()));
 * const theirs = changeSettings(base, { units: "metric" }, thisMoment().now);
 * const { record } = merge(mine, theirs, base);
 * [record.setups.length, record.settings.units]; // [1, "metric"]
 */
export function merge(mine: ShopRecord, theirs: ShopRecord, base?: ShopRecord): Merged {
  if (mine === theirs || base === theirs) return { record: mine, overwritten: [] };
  const overwritten: Overwritten[] = [];

  function item(list: ListName, m: Kept, t: Kept, b: Kept | undefined): Kept {
    if (m === t || same(m, t)) return m;
    if (b !== undefined && same(b, t)) return m;
    if (b !== undefined && same(b, m)) return t;
    const wins = mineWins(m, t);
    if (b !== undefined) {
      const put = mergeItem(b, m, t, wins ? "mine" : "theirs");
      for (const clash of put.clashes) overwritten.push({ list, id: m.id, name: put.item.name, ...clash });
      return put.item;
    }
    const [stands, lost] = wins ? [m, t] : [t, m];
    overwritten.push({
      list,
      id: m.id,
      name: lost.name,
      what: "all of it",
      stands,
      lost,
      gaveUp: wins ? "theirs" : "mine",
    });
    return stands;
  }

  const lists = listNames.map((list) => {
    const before = new Map((base?.[list] ?? []).map((kept) => [kept.id, kept as Kept]));
    const here = new Map(mine[list].map((kept) => [kept.id, kept as Kept]));
    const there = new Set(theirs[list].map(({ id }) => id));
    const both = theirs[list].map((kept) => {
      const own = here.get(kept.id);
      return own === undefined ? kept : item(list, own, kept, before.get(kept.id));
    });
    return [list, [...both, ...mine[list].filter(({ id }) => !there.has(id))]] as const;
  });

  const { settings, lost } = settingsOf(mine, theirs, base);
  if (lost) {
    const gaveUp = settings.units === mine.settings.units ? "theirs" : "mine";
    const given = gaveUp === "mine" ? mine.settings : theirs.settings;
    const what = { what: "units", stands: settings.units, lost: given.units, gaveUp } as const;
    overwritten.push({ list: "settings", id: "settings", name: "settings", ...what });
  }
  const saved = newer(mine.saved, theirs.saved);
  // Theirs first, so that fields that neither version knows are kept from both.
  const record = { ...theirs, ...mine, saved, settings, ...Object.fromEntries(lists) };
  return { record, overwritten };
}
