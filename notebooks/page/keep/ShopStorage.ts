/** Where the shop record is kept: as little of a browser as the keeping needs, so that it is tested without one. */
export interface ShopStorage {
  readonly get: (key: string) => Promise<unknown>;
  /** Reads and writes in one transaction. If `change` throws, nothing is written and the promise fails with it. */
  readonly update: (key: string, change: (old: unknown) => unknown) => Promise<void>;
  readonly keys: () => Promise<readonly string[]>;
  readonly remove: (keys: readonly string[]) => Promise<void>;
  /** Tells the other open tabs that something was written. */
  readonly tell: () => void;
  /** Calls back when another tab has written; gives a function that ends it. */
  readonly listen: (heard: () => void) => () => void;
}
