import type { Lines, Notebook } from "../../../lib/lines/index.ts";
import {
  addNotebook,
  changeNotebook,
  itemOf,
  type KeptNotebook,
  type NotebookData,
  newNotebook,
  removeItem,
} from "../../../lib/record/index.ts";
import type { Shop } from "../keep.ts";

/** A notebook as the record keeps it: its cases in an order that outlives a merge. */
export function toKept(book: Notebook): NotebookData {
  return book.cases ? { ...book, caseOrder: Object.keys(book.cases) } : book;
}

/** What a notebook goes by in lists. */
export const nameOf = ({ asks, name }: Notebook): string => (asks.trim() || name || "A question").slice(0, 2000);

/** Keeps an open notebook after an edit, under the names of its undo and redo. */
export function keepBook(shop: Shop, id: string, book: Notebook, undo: string, redo: string): void {
  shop.change(
    (record, { now }) => {
      const item = itemOf(record, "notebooks", id);
      return item
        ? changeNotebook(
            record,
            id,
            { notebook: toKept(book), ...(item.of === undefined && { name: nameOf(book) }) },
            now,
          )
        : record;
    },
    undo,
    redo,
  );
}

/** Adds a notebook of the maker's own and gives its id. */
export function askAnother(shop: Shop, book: Notebook, of?: string): string {
  let id = "";
  shop.change(
    (record, moment) => {
      const made: KeptNotebook = {
        ...newNotebook(nameOf(book), toKept(book), moment),
        ...(of !== undefined && { of }),
      };
      id = made.id;
      return addNotebook(record, made);
    },
    of === undefined ? "the question was not asked" : `nothing was added to ${of}`,
    of === undefined ? `asking “${nameOf(book)}”` : `adding to ${of}`,
  );
  return id;
}

/** Throws a notebook away; it is kept, so that undo brings it back. */
export function throwAwayBook(shop: Shop, { id, name }: KeptNotebook): void {
  shop.change(
    (record, { now }) => removeItem(record, "notebooks", id, now),
    `the question “${name}” was there`,
    `throwing “${name}” away`,
  );
}

/** The record's history under a notebook's own words: one list of all that was done. */
export function historyOf(shop: Shop): Pick<Lines, "undo" | "redo" | "undoName" | "redoName"> {
  return {
    undo() {
      const there = shop.undoName !== undefined;
      shop.undo();
      return there;
    },
    redo() {
      const there = shop.redoName !== undefined;
      shop.redo();
      return there;
    },
    undoName: () => (shop.undoName === undefined ? undefined : `Undo: ${shop.undoName}`),
    redoName: () => (shop.redoName === undefined ? undefined : `Redo: ${shop.redoName}`),
  };
}
