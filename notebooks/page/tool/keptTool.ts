import { foldName, isValue, type Notebook, type Vocabulary } from "../../../lib/lines/index.ts";
import {
  addNotebook,
  changeNotebook,
  type KeptNotebook,
  newNotebook,
  type ShopRecord,
  shown,
} from "../../../lib/record/index.ts";
import { amountText } from "../book/amountText.ts";
import { historyOf, nameOf } from "../book/bookEdits.ts";
import { type KeptLines, keptLines } from "../book/keptLines.ts";
import { mended } from "../book/mended.ts";
import { logsOf } from "../book/openBook.ts";
import { Sweeps } from "../book/sweeps.ts";
import type { Shop } from "../keep.ts";
import { laidOverTool, ownOfTool } from "./laidOverTool.ts";
import type { ToolNotebook } from "./types.ts";

/** A notebook of the tool that is open on the page, with what the maker changed. */
export interface OpenTool {
  readonly kept: KeptLines;
  readonly sweeps: Sweeps;
  /** What had to be put right in what the record holds of it. */
  readonly says: readonly string[];
  /** Takes up what the record says now. */
  readonly follow: () => void;
}

const calledOf = (book: Notebook): string => book.name ?? book.asks;

/** What the record keeps of a tool's notebook. */
export const ownOf = (record: ShopRecord, book: Notebook): KeptNotebook | undefined =>
  shown(record.notebooks).find(({ of }) => of === calledOf(book));

/** Opens a notebook of the tool; every edit is kept in the record at once, as what differs from ours. */
export function openTool(shop: Shop, vocabulary: Vocabulary, tool: ToolNotebook, told: () => void): OpenTool {
  const { book } = tool;
  const name = calledOf(book);
  const ours = new Set(Object.keys(book.lines).map(foldName));
  let last: ShopRecord | undefined;
  let says: readonly string[] = [];
  let following = true;

  function laid(): Notebook {
    const { record } = shop;
    last = record;
    const put = mended(laidOverTool(book, ownOf(record, book)?.notebook, tool.start(record)));
    says = put.says;
    return put.book;
  }

  function keep(next: Notebook, undo: string, redo: string): void {
    following = false;
    shop.change(
      (record, moment) => {
        const own = ownOf(record, book);
        const notebook = ownOfTool(book, tool.start(record), next);
        if (own) return changeNotebook(record, own.id, { notebook }, moment.now);
        return addNotebook(record, { ...newNotebook(nameOf({ ...book, asks: name }), notebook, moment), of: name });
      },
      undo,
      redo,
    );
    following = true;
  }

  const kept: KeptLines = keptLines(laid(), {
    vocabulary,
    inCases: (one) => logsOf(shop, one),
    asText: (line, thing) =>
      isValue(thing) ? amountText(kept.open.line(line), thing, shop.record.settings.units) : undefined,
    keep,
    history: historyOf(shop),
    told,
    mayGo(line) {
      if (ours.has(foldName(line)))
        throw new Error(`${line} comes with ${name}, so it stays; a copy as a question of your own may go without it`);
    },
  });
  return {
    kept,
    sweeps: new Sweeps(kept.open, told),
    get says() {
      return says;
    },
    follow() {
      if (!following || shop.record === last) return;
      kept.show(laid());
    },
  };
}
