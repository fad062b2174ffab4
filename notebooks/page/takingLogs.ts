import type { Notebook } from "../../lib/lines/index.ts";
import { readLog } from "../../lib/log/index.ts";
import type { LogReading } from "../../lib/log/types.ts";
import { itemOf, type KeptRun } from "../../lib/record/index.ts";
import * as act from "./actions.ts";
import { isHandWritten } from "./handWriting.ts";
import type { Shop } from "./keep.ts";
import { isLong, readAside } from "./readAside.ts";
import type { System } from "./showValue.ts";

export interface TakingLogsProps {
  readonly shop: Shop;
  readonly book: Notebook;
  readonly system: () => System;
  readonly openRun: () => KeptRun | undefined;
  /** Goes to the page of the run that is open. */
  readonly goThere: () => void;
  readonly says: (words: readonly string[]) => void;
  readonly redraw: () => void;
}

/** The ways in for logs. */
export interface TakingLogs {
  /** A long log that is being read off the page's thread. */
  readonly reading: { readonly rows: number; readonly stop: () => void } | undefined;
  /** How a run's log was read: the same object as long as its source and answers stand. */
  readonly readingOf: (run: KeptRun) => LogReading;
  readonly takeText: (text: string, name?: string) => void;
  readonly readFile: (file: File) => Promise<void>;
  readonly writeByHand: () => void;
}

/** Takes logs in: dropped, pasted, out of a file, or written row by row. */
export function takingLogs({ shop, book, system, openRun, goThere, says, redraw }: TakingLogsProps): TakingLogs {
  let last: { source: string; hints: KeptRun["hints"]; reading: LogReading } | undefined;
  let aside: TakingLogs["reading"];

  function keepReading(text: string, first: LogReading, name?: string): void {
    if (!first.run.entries.some(({ kind }) => kind === "reading" || kind === "addition")) {
      const why = first.problems
        .slice(0, 2)
        .map(({ read, expected, remedy }) => `“${read.slice(0, 60)}”: ${expected}. ${remedy}`);
      says([`Nothing in ${name ?? "this"} reads as a log; the open run stays as it was.`, ...why]);
      return;
    }
    says([]);
    const run = act.readIn(shop, text, first, name ?? act.runName(first.run, new Date()), book);
    if (run) last = { source: run.source, hints: run.hints, reading: first };
    goThere();
    redraw();
    window.scrollTo(0, 0);
  }

  function takeText(text: string, name?: string): void {
    const hints = itemOf(shop.record, "setups", openRun()?.setup ?? "")?.hints ?? {};
    if (!isLong(text)) {
      keepReading(text, readLog(text, hints), name);
      return;
    }
    const reading = readAside(text, hints);
    aside = { rows: text.split("\n").length, stop: reading.stop };
    redraw();
    reading.found
      .then((done) => keepReading(text, done, name))
      .catch((error: unknown) =>
        says([
          error instanceof Error && error.message === "stopped"
            ? "Reading the log was stopped; nothing was changed."
            : `The log could not be read: ${String(error)}`,
        ]),
      )
      .finally(() => {
        aside = undefined;
        redraw();
      });
  }

  return {
    get reading() {
      return aside;
    },
    readingOf(run) {
      if (run.log.entries.length === 0 && isHandWritten(run.source))
        return { run: run.log, problems: [], questions: [] };
      if (last?.source !== run.source || last.hints !== run.hints)
        last = { source: run.source, hints: run.hints, reading: readLog(run.source, run.hints) };
      return last.reading;
    },
    takeText,
    async readFile(file) {
      if (/\.json$/i.test(file.name)) {
        const taken = await shop.openCopy(file);
        says("problem" in taken ? [taken.problem] : taken.says);
        return;
      }
      takeText(await act.fileText(file), file.name.replace(/\.[a-z]+$/i, ""));
    },
    writeByHand() {
      act.writeByHand(shop, system(), new Date(), book);
      goThere();
      redraw();
      // After the page has gone to its top for the new address.
      setTimeout(() => {
        const first = document.querySelector<HTMLElement>("#row-time");
        first?.scrollIntoView({ block: "center" });
        first?.focus({ preventScroll: true });
      }, 100);
    },
  };
}
