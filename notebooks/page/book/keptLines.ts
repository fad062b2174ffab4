import {
  type AmountEdit,
  type Edit,
  type Lines,
  type Notebook,
  openLines,
  type Result,
  type Vocabulary,
} from "../../../lib/lines/index.ts";
import { differing } from "./differing.ts";

export interface KeptLinesOptions {
  readonly vocabulary: Vocabulary;
  /** Things that no text can hold (a run's log), by case and line; asked for at each opening. */
  readonly inCases: (book: Notebook) => Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  /** An amount as a text that can be kept. */
  readonly asText: (line: string, thing: unknown) => string | undefined;
  /** Called after each edit, with the names of its undo and its redo. */
  readonly keep: (book: Notebook, undo: string, redo: string) => void;
  /** One list for all that the maker does: the record's. */
  readonly history: Pick<Lines, "undo" | "redo" | "undoName" | "redoName">;
  /** Called whenever a line came to something. */
  readonly told: () => void;
  /** Throws for a line that may not be removed or renamed; all may, if left out. */
  readonly mayGo?: (line: string) => void;
}

/** An open notebook that is kept in the record at every edit, and follows what the record says. */
export interface KeptLines {
  /** The same object as long as it is open, even where the notebook had to be opened anew. */
  readonly open: Lines;
  /** Takes up what the record says now: undo, another tab. Only what differs is worked again, where that can be. */
  readonly show: (book: Notebook) => void;
  /** Whether a line is still to be worked. */
  readonly busy: () => boolean;
  /** Rises whenever a line came to something else. */
  readonly version: () => number;
  readonly close: () => void;
}

/** Opens a notebook and keeps it. Throws as `openLines`. */
export function keptLines(book: Notebook, options: KeptLinesOptions): KeptLines {
  const observers = new Set<(line: string, result: Result, inCase: string) => void>();
  let unsettled = 0;
  let version = 0;
  let within = false;
  let inner = opened(book);
  let last = inner.did();

  function opened(from: Notebook): Lines {
    const lines = openLines(from, { vocabulary: options.vocabulary, inCases: options.inCases(from) });
    lines.observe((line, result, inCase) => {
      version += 1;
      for (const tell of [...observers]) tell(line, result, inCase);
      options.told();
    });
    awaitAll(lines);
    return lines;
  }

  function awaitAll(lines: Lines): void {
    unsettled += 1;
    version += 1;
    void lines.settled().then(() => {
      unsettled -= 1;
      if (unsettled === 0) options.told();
    });
  }

  function keep(): void {
    const step = inner.did();
    if (step === last || !step) return;
    last = step;
    awaitAll(inner);
    options.keep(inner.notebook(), step.undo, step.redo);
  }

  const edit =
    <A extends readonly unknown[]>(work: (...args: A) => void) =>
    (...args: A): void => {
      if (within) {
        work(...args);
        return;
      }
      within = true;
      try {
        work(...args);
      } finally {
        within = false;
        keep();
      }
    };

  /** What no text can hold would be gone at the next opening: an amount is written down. */
  function withText(line: string, change: Edit | AmountEdit): Edit | AmountEdit {
    const amount = "value" in change ? change.value : "given" in change ? change.given : undefined;
    if (amount === undefined || typeof amount === "string") return change;
    const text = options.asText(line, amount);
    return text === undefined ? change : { given: text };
  }

  const kept = (lines: Lines): Lines => ({
    ...lines,
    set: edit((line, change, inCase) => lines.set(line, withText(line, change), inCase)),
    putBack: edit(lines.putBack),
    addCase: edit(lines.addCase),
    removeCase: edit(lines.removeCase),
    renameCase: edit(lines.renameCase),
    moveCase: edit(lines.moveCase),
    hideCase: edit(lines.hideCase),
    setBase: edit(lines.setBase),
    copyGivens: edit(lines.copyGivens),
    setRest: edit(lines.setRest),
    add: edit(lines.add),
    remove: edit((line) => {
      options.mayGo?.(line);
      lines.remove(line);
    }),
    rename: edit((line, name) => {
      options.mayGo?.(line);
      lines.rename(line, name);
    }),
    together: edit(lines.together),
    again: (line, inCase) => {
      lines.again(line, inCase);
      awaitAll(lines);
    },
    ...options.history,
    observe(tell) {
      observers.add(tell);
      return () => observers.delete(tell);
    },
  });
  const open = kept(inner);

  return {
    open,
    show(next) {
      const now = inner.notebook();
      if (JSON.stringify(now) === JSON.stringify(next)) return;
      const edits = differing(now, next);
      if (edits) {
        for (const make of edits) make(inner);
        awaitAll(inner);
      } else {
        const before = inner;
        inner = opened(next);
        Object.assign(open, kept(inner));
        before.close();
      }
      last = inner.did();
    },
    busy: () => unsettled > 0,
    version: () => version,
    close() {
      observers.clear();
      inner.close();
    },
  };
}
