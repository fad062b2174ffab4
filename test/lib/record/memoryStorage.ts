import type { ShopStorage } from "../../../notebooks/page/keep/ShopStorage.ts";

/** A storage in memory that several tabs share, with a step between asking and getting, as a browser has it. */
export class MemoryStorage {
  readonly values = new Map<string, unknown>();
  /** Thrown by the next uses, until it is taken away. */
  fails: Error | undefined;
  readonly #tabs = new Map<number, () => void>();
  #count = 0;

  /** One tab's view of it. */
  tab(): ShopStorage {
    const me = this.#count++;
    const step = async () => {
      await Promise.resolve();
      if (this.fails !== undefined) throw this.fails;
    };
    return {
      get: async (key) => {
        await step();
        return this.values.get(key);
      },
      update: async (key, change) => {
        await step();
        this.values.set(key, change(this.values.get(key)));
        await step();
      },
      keys: async () => {
        await step();
        return [...this.values.keys()];
      },
      remove: async (keys) => {
        await step();
        for (const key of keys) this.values.delete(key);
      },
      tell: () => {
        for (const [tab, heard] of this.#tabs) if (tab !== me) queueMicrotask(heard);
      },
      listen: (heard) => {
        this.#tabs.set(me, heard);
        return () => this.#tabs.delete(me);
      },
    };
  }
}
