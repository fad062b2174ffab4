import type { Moment, ShopRecord } from "../../../lib/record/index.ts";
import type { Earlier } from "./earlier.ts";
import type { ShopStorage } from "./ShopStorage.ts";
import type { How } from "./takeCopy.ts";

/** What is the matter with the keeping, and what to do about it. */
export interface NotKept {
  readonly because: string;
  readonly remedy: string;
}

/** What the page is told. */
export interface News {
  readonly record: ShopRecord;
  readonly cause: "change" | "undo" | "redo" | "another tab" | "kept" | "not kept";
  /** Sentences that the maker should read; mostly none. */
  readonly says: readonly string[];
}

export type Taken = { readonly says: readonly string[] } | { readonly problem: string };

/** The shop record of this tab: kept at every change, put together with what other tabs write. */
export interface Shop {
  readonly record: ShopRecord;
  /** When the record was last kept, ISO 8601 in UTC; undefined while nothing was kept in this browser. */
  readonly keptAt: string | undefined;
  /** Why the record is not kept at the moment; undefined while all is well. */
  readonly problem: NotKept | undefined;
  readonly undoName: string | undefined;
  readonly redoName: string | undefined;
  readonly hasDemo: boolean;
  /** Calls back at every piece of news; gives a function that ends it. */
  readonly subscribe: (told: (news: News) => void) => () => void;
  /**
   * Changes the record and keeps it.
   * @param name - what undoing it would bring back: "altitude was 2,100 ft".
   * @param again - what doing it again would bring; the same words by default. `undefined` as `name` makes no step to
   * undo (which run is open).
   */
  readonly change: (
    edit: (record: ShopRecord, moment: Moment) => ShopRecord,
    name: string | undefined,
    again?: string,
  ) => ShopRecord;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly removeDemo: () => void;
  readonly bringBackDemo: () => void;
  /** Comes true when all that was changed is kept, or could not be. */
  readonly settled: () => Promise<void>;
  /** The name and the text of the one file. */
  readonly copy: () => { readonly name: string; readonly text: string };
  /** Takes in a copy; what was here is put aside first. */
  readonly openCopy: (file: Blob, how?: How) => Promise<Taken>;
  /** What was put aside, newest first. */
  readonly earlier: () => Promise<readonly Earlier[]>;
  /** Makes the record what it was when it was put aside; what is here now is put aside first. */
  readonly bringBack: (key: string) => Promise<Taken>;
  /** The text that lies in this browser and cannot be read, to be saved by the maker. */
  readonly unreadable: string | undefined;
  /** Puts what cannot be read aside and keeps this record from now on. */
  readonly startAfresh: () => Promise<void>;
  readonly close: () => void;
}

export interface ShopOptions {
  readonly storage: ShopStorage;
  /** Shown until there is something kept; flagged as invented whatever it says. */
  readonly demo?: ShopRecord;
  readonly moment?: () => Moment;
  /** How long to wait for the storage before going on without it, ms. */
  readonly patience?: number;
}
