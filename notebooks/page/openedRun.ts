import {
  type Line,
  type Lines,
  type Notebook,
  openLines,
  type Result,
  type Vocabulary,
} from "../../lib/lines/index.ts";
import type { KeptRun, NotebookData } from "../../lib/record/index.ts";
import { differing } from "./book/differing.ts";
import { type Laid, laidOver } from "./book/laidOver.ts";

/** A notebook's lines worked for one run and those beside it, kept in step with what the shop record says of them. */
export interface OpenedRun {
  /** The lines of the notebook, and the maker's own behind them. */
  readonly lines: ReadonlyMap<string, Line>;
  /** What a line came to for the run itself. */
  readonly result: (name: string) => Result;
  /** The open lines; the same object however often they are opened anew. */
  readonly open: Lines;
  /** The run of a case; the run itself without one. */
  readonly runOf: (inCase?: string) => KeptRun | undefined;
  readonly settled: () => Promise<void>;
  /** Whether a line is still to be worked. */
  readonly busy: () => boolean;
  /** Rises whenever a line came to something else: what is drawn from the lines holds as long as it stands. */
  readonly version: () => number;
  /** The lines whose slow function is at work, and how far it is. */
  readonly atWork: () => readonly { readonly line: string; readonly says?: string; readonly share?: number }[];
  readonly stop: (line: string) => void;
  /** The lines whose work was stopped by hand. */
  readonly stoppedByYou: () => readonly string[];
  readonly again: (line: string) => void;
  /** Takes up a run's facts and log, and what is laid over the notebook; only what changed is worked again. */
  readonly show: (run: KeptRun, own?: NotebookData, beside?: readonly KeptRun[]) => void;
  readonly close: () => void;
}

/** How the page's edits of the lines are kept: what an opened run hands over, and what it gets back. */
export type Kept = (inner: Lines, place: { readonly runOf: OpenedRun["runOf"]; readonly edited: () => void }) => Lines;

/** The givens that take a run's log. */
const logLines = (book: Notebook): readonly string[] =>
  Object.entries(book.lines).flatMap(([name, line]) => (line.kind === "given" && line.takes === "log" ? [name] : []));

/** Opens a notebook; `told` is called whenever a line came to something. */
export function openRun(
  book: Notebook,
  vocabulary: Vocabulary,
  told: () => void = () => {},
  kept: Kept = (inner) => inner,
): OpenedRun {
  const observers = new Set<Parameters<Lines["observe"]>[0]>();
  const logs = new Map<string, unknown>();
  let unsettled = 0;
  let version = 0;
  let shown: Laid = { book, runs: new Map() };
  let lines = new Map(Object.entries(book.lines));
  let inner = opened(book);
  const open: Lines = facade();

  function opened(from: Notebook): Lines {
    const inCases = Object.fromEntries(
      [...shown.runs].map(([name, run]) => [name, Object.fromEntries(logLines(from).map((line) => [line, run.log]))]),
    );
    const made = openLines(from, { vocabulary, ...(from.cases && { inCases }) });
    logs.clear();
    for (const [name, run] of from.cases ? shown.runs : []) logs.set(name, run.log);
    made.observe((...came) => {
      version += 1;
      for (const tell of [...observers]) tell(...came);
      told();
    });
    return made;
  }

  function runOf(inCase?: string): KeptRun | undefined {
    const [first] = shown.runs.values();
    return inCase === undefined ? first : shown.runs.get(inCase);
  }

  function facade(): Lines {
    const lines = kept(inner, {
      runOf,
      edited: () => {
        shown = { ...shown, book: inner.notebook() };
      },
    });
    return {
      ...lines,
      observe(tell) {
        observers.add(tell);
        return () => observers.delete(tell);
      },
    };
  }

  function awaitAll(): void {
    unsettled += 1;
    void inner.settled().then(() => {
      unsettled -= 1;
      if (unsettled === 0) told();
    });
  }

  return {
    get lines() {
      return lines;
    },
    result: (name) => inner.result(name),
    open,
    runOf,
    settled: () => inner.settled(),
    busy: () => unsettled > 0,
    version: () => version,
    atWork: () =>
      inner.atWork().map((line) => {
        const result = inner.result(line);
        if (result.state !== "working") return { line };
        const { says, share } = result;
        return { line, ...(says === undefined ? {} : { says }), ...(share === undefined ? {} : { share }) };
      }),
    stop: (line) => inner.stop(line),
    stoppedByYou: () =>
      [...lines.keys()].filter((name) => {
        const result = inner.result(name);
        return result.state === "stopped" && result.byYou === true;
      }),
    again(line) {
      inner.again(line);
      awaitAll();
      told();
    },
    show(run, own, beside = []) {
      const before = shown.book;
      const next = laidOver(book, own, run, beside);
      const edits = differing(before, next.book);
      shown = next;
      lines = new Map(Object.entries(next.book.lines));
      if (edits) {
        for (const make of edits) make(inner);
        for (const [name, { log }] of next.runs) {
          if (logs.get(name) === log) continue;
          logs.set(name, log);
          for (const line of logLines(next.book)) inner.set(line, { value: log }, name === "" ? undefined : name);
        }
      } else {
        inner.close();
        inner = opened(next.book);
        if (!next.book.cases)
          for (const line of logLines(next.book)) {
            logs.set("", run.log);
            inner.set(line, { value: run.log });
          }
        Object.assign(open, facade());
        version += 1;
      }
      awaitAll();
    },
    close() {
      observers.clear();
      inner.close();
    },
  };
}
