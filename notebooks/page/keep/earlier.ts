import type { ShopStorage } from "./ShopStorage.ts";

/** A record as it was, kept beside the present one. */
export interface Earlier {
  readonly key: string;
  /** When it was put aside, ISO 8601 in UTC. */
  readonly at: string;
  /** "before a copy was opened", "as it was before 2026-11-25" … */
  readonly why: string;
}

const prefix = "earlier ";

/** As many earlier records as are kept; beyond it the oldest goes. */
export const mostEarlier = 20;

/** Puts a record's text aside under its date, and lets the oldest go where there are too many. */
export async function putAside(storage: ShopStorage, text: string, why: string, at: string): Promise<void> {
  const key = `${prefix}${at} ${why}`;
  await storage.update(key, () => text);
  const keys = await earlierOnes(storage);
  const tooMany = keys.slice(mostEarlier).map((old) => old.key);
  if (tooMany.length > 0) await storage.remove(tooMany);
}

/** What was put aside, newest first. */
export async function earlierOnes(storage: ShopStorage): Promise<Earlier[]> {
  const keys = (await storage.keys()).filter((key) => key.startsWith(prefix));
  return keys
    .sort()
    .reverse()
    .map((key) => {
      const [at = "", ...why] = key.slice(prefix.length).split(" ");
      return { key, at, why: why.join(" ") };
    });
}
