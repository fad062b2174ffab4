import { isValue, type Notebook, type Vocabulary } from "../../../lib/lines/index.ts";
import { itemOf, type KeptNotebook, type KeptRun } from "../../../lib/record/index.ts";
import type { Shop } from "../keep.ts";
import { amountText } from "./amountText.ts";
import { historyOf, keepBook } from "./bookEdits.ts";
import { logLines } from "./caseForm.ts";
import { wordsOf } from "./form.ts";
import { type KeptLines, keptLines } from "./keptLines.ts";
import { mended } from "./mended.ts";
import { Sweeps } from "./sweeps.ts";

/** A notebook of the record that is open on the page. */
export interface OpenBook {
  readonly id: string;
  /** What had to be put right, or why it cannot be opened. */
  readonly says: readonly string[];
  /** Undefined where it cannot be opened. */
  readonly kept: KeptLines | undefined;
  readonly sweeps: Sweeps | undefined;
  /** Takes up what the record says now. */
  readonly follow: () => void;
  readonly close: () => void;
}

/** The run that a case was taken from, straight or by way of another case. */
function runBehind(shop: Shop, book: Notebook, inCase: string): KeptRun | undefined {
  let from = book.casesFrom?.[inCase];
  // Cases that were copied from each other may go round in a circle once one was renamed.
  for (let i = 0; i < 10 && from?.kind === "case"; i++) from = book.casesFrom?.[from.id];
  return from?.kind === "run" ? itemOf(shop.record, "runs", from.id) : undefined;
}

/** Things that no text can hold: the logs of the runs that cases were taken from. */
export function logsOf(shop: Shop, book: Notebook): Readonly<Record<string, Readonly<Record<string, unknown>>>> {
  const names = Object.keys(book.lines);
  const logs = logLines({ names: () => names, line: (name) => book.lines[name] ?? { kind: "given", text: "" } });
  return Object.fromEntries(
    Object.keys(book.casesFrom ?? {}).flatMap((inCase) => {
      const run = runBehind(shop, book, inCase);
      if (!run || book.cases?.[inCase] === undefined) return [];
      return [[inCase, Object.fromEntries(logs.map((line) => [line, run.log]))]];
    }),
  );
}

/** Opens a kept notebook; every edit is kept in the record at once, under its own name. */
export function openBook(shop: Shop, vocabulary: Vocabulary, item: KeptNotebook, told: () => void): OpenBook {
  const { id } = item;
  let data = item.notebook;
  const { book, says } = mended(data);
  try {
    const kept = keptLines(book, {
      vocabulary,
      inCases: (one) => logsOf(shop, one),
      asText: (line, thing) =>
        isValue(thing) ? amountText(kept.open.line(line), thing, shop.record.settings.units) : undefined,
      keep(next, undo, redo) {
        // Told of in the middle of its own change: what is kept is what is open.
        following = false;
        keepBook(shop, id, next, undo, redo);
        following = true;
        data = itemOf(shop.record, "notebooks", id)?.notebook ?? data;
      },
      history: historyOf(shop),
      told,
    });
    let following = true;
    const sweeps = new Sweeps(kept.open, told);
    return {
      id,
      says,
      kept,
      sweeps,
      follow() {
        const now = itemOf(shop.record, "notebooks", id)?.notebook;
        if (!following || now === undefined || now === data) return;
        data = now;
        kept.show(mended(now).book);
      },
      close() {
        sweeps.close();
        kept.close();
      },
    };
  } catch (error) {
    return {
      id,
      says: [`This notebook can't be opened: ${wordsOf(error)}.`],
      kept: undefined,
      sweeps: undefined,
      follow: () => {},
      close: () => {},
    };
  }
}
