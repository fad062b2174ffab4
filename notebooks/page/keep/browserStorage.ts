import { createStore, delMany, get, keys, type UseStore, update } from "idb-keyval";
import type { ShopStorage } from "./ShopStorage.ts";

/**
 * The browser's own storage (IndexedDB), told about between tabs by a BroadcastChannel where there is one. Pages
 * opened from files can share neither channel nor origin, so a page that comes to the front looks again as well.
 *
 * @param name - of the database: pages opened from files share one origin, so it is ours alone.
 */
export function browserStorage(name = "steady-boil"): ShopStorage {
  let opened: UseStore | undefined;
  // Opened at the first use and again after a failure: a browser may refuse now and allow later.
  const store = (): UseStore => {
    opened ??= createStore(name, "shop");
    return opened;
  };
  async function use<T>(work: (store: UseStore) => Promise<T>): Promise<T> {
    try {
      return await work(store());
    } catch (error) {
      opened = undefined;
      throw error;
    }
  }
  const channel = typeof BroadcastChannel === "undefined" ? undefined : new BroadcastChannel(name);
  return {
    get: (key) => use((s) => get<unknown>(key, s)),
    update: (key, change) => use((s) => update<unknown>(key, change, s)),
    keys: async () => (await use((s) => keys(s))).filter((key) => typeof key === "string"),
    remove: (gone) => use((s) => delMany([...gone], s)),
    tell: () => channel?.postMessage("written"),
    listen(heard) {
      const look = () => {
        if (document.visibilityState === "visible") heard();
      };
      channel?.addEventListener("message", heard);
      document.addEventListener("visibilitychange", look);
      window.addEventListener("focus", look);
      return () => {
        channel?.removeEventListener("message", heard);
        channel?.close();
        document.removeEventListener("visibilitychange", look);
        window.removeEventListener("focus", look);
      };
    },
  };
}
