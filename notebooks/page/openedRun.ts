import { type Line, type Notebook, openLines, type Result, type Vocabulary } from "../../lib/lines/index.ts";
import type { KeptRun } from "../../lib/record/index.ts";

/** A notebook's lines worked for one run, kept in step with what the shop record says of it. */
export interface OpenedRun {
  readonly lines: ReadonlyMap<string, Line>;
  readonly result: (name: string) => Result;
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
  /** Takes up a run's facts and log; only what changed is worked again. */
  readonly show: (run: KeptRun) => void;
  readonly close: () => void;
}

/** Opens a notebook; `told` is called whenever a line came to something. */
export function openRun(book: Notebook, vocabulary: Vocabulary, told: () => void = () => {}): OpenedRun {
  const opened = openLines(book, { vocabulary });
  const lines = new Map(Object.entries(book.lines));
  const given = new Map<string, string>();
  let log: unknown;
  let unsettled = 0;
  let version = 0;
  const stop = opened.observe(() => {
    version += 1;
    told();
  });

  function awaitAll(): void {
    unsettled += 1;
    void opened.settled().then(() => {
      unsettled -= 1;
      if (unsettled === 0) told();
    });
  }

  return {
    lines,
    result: (name) => opened.result(name),
    settled: () => opened.settled(),
    busy: () => unsettled > 0,
    version: () => version,
    atWork: () =>
      opened.atWork().map((line) => {
        const result = opened.result(line);
        if (result.state !== "working") return { line };
        const { says, share } = result;
        return { line, ...(says === undefined ? {} : { says }), ...(share === undefined ? {} : { share }) };
      }),
    stop: (line) => opened.stop(line),
    stoppedByYou: () =>
      [...lines.keys()].filter((name) => {
        const result = opened.result(name);
        return result.state === "stopped" && result.byYou === true;
      }),
    again(line) {
      opened.again(line);
      awaitAll();
      told();
    },
    show(run) {
      for (const [name, line] of lines) {
        if (line.kind !== "given") continue;
        if (line.takes === "log") {
          if (run.log !== log) opened.set(name, { value: run.log });
          continue;
        }
        const fact = run.facts[name];
        const now = JSON.stringify([fact?.text ?? line.text, fact?.known ?? line.known]);
        if (given.get(name) === now) continue;
        given.set(name, now);
        opened.set(name, { given: fact?.text ?? line.text, known: fact?.known ?? line.known });
      }
      log = run.log;
      awaitAll();
    },
    close() {
      stop();
      opened.close();
    },
  };
}
