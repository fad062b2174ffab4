import { html, nothing, render } from "lit-html";
import type { Clause, Vocabulary } from "../../lib/lines/index.ts";
import { readLog } from "../../lib/log/index.ts";
import type { LogReading } from "../../lib/log/types.ts";
import { itemOf, type KeptRun } from "../../lib/record/index.ts";
import * as act from "./actions.ts";
import { answer } from "./answer.ts";
import { atTheTank } from "./atTheTank.ts";
import { questions } from "./book/questions.ts";
import { drawings, type FigureMaker } from "./drawings.ts";
import { type HandRow, isHandWritten } from "./handWriting.ts";
import { type Earlier, type Shop, saveCopy } from "./keep.ts";
import { type OpenedRun, openRun } from "./openedRun.ts";
import type { Pages } from "./pages.ts";
import { isLong, readAside } from "./readAside.ts";
import { readingWords } from "./readingWords.ts";
import { routeOf } from "./route.ts";
import { runPage } from "./runPage.ts";
import { shell } from "./shell.ts";
import { shopPage } from "./shopPage.ts";
import { Typing } from "./Typing.ts";
import { keptWords, undoWords } from "./undoWords.ts";

/** What the page remembers of itself; nothing of it is worth keeping. */
interface Passing {
  inHand: string | undefined;
  wrong: string | undefined;
  drawn: number;
  says: readonly string[];
  tank: "reading" | "water" | undefined;
  earlier: readonly Earlier[];
  /** A long log that is being read off the page's thread. */
  reading: { readonly rows: number; readonly stop: () => void } | undefined;
}

const rowsDrawn = 60;

export interface AppOptions {
  readonly root: HTMLElement;
  readonly shop: Shop;
  readonly pages: Pages;
  readonly vocabulary: Vocabulary;
  readonly figures: ReadonlyMap<string, FigureMaker>;
}

/** Puts the notebooks on the page and keeps them in step with the shop record. */
export function startApp({ root, shop, pages, vocabulary, figures }: AppOptions): void {
  const passing: Passing = {
    inHand: undefined,
    wrong: undefined,
    drawn: rowsDrawn,
    says: [],
    tank: undefined,
    earlier: [],
    reading: undefined,
  };
  const { book, front } = pages;
  const runPageName = book.name ?? book.asks;
  const ownName = pages.ownQuestions;
  const listed = new Map<string, { run: KeptRun; opened: OpenedRun }>();
  let opened: { id: string; notebook: OpenedRun } | undefined;
  let reading: { source: string; hints: KeptRun["hints"]; reading: LogReading } | undefined;
  let due = false;

  const system = (): "US" | "metric" => shop.record.settings.units;
  const here = (): readonly KeptRun[] => shop.record.runs.filter((run) => !run.removed);
  const byNewest = (): readonly KeptRun[] =>
    [...here()].sort((a, b) => (b.date ?? b.changed).localeCompare(a.date ?? a.changed));
  const openRunOf = (): KeptRun | undefined =>
    here().find(({ id }) => id === shop.record.settings.openRun) ?? byNewest()[0];
  const where = (): string => {
    const [page] = location.hash.split("/");
    return [front.name, ownName].find((name) => page === routeOf(name)) ?? runPageName;
  };
  /** What stands behind the place in the address: the id of a notebook. */
  const which = (): string | undefined => {
    const [, id] = location.hash.split("/");
    try {
      return id === undefined ? undefined : decodeURIComponent(id);
    } catch {
      return undefined;
    }
  };

  /** The answer's first two clauses as one line of text: the title of a saved picture. */
  const answerSaid = (): string =>
    [...root.querySelectorAll("#answer .clause > p:not(.caution)")]
      .slice(0, 2)
      .map(({ textContent }) => (textContent ?? "").replace(/\s+/g, " ").trim())
      .join(" ");

  const typing = new Typing(redraw);
  const asked = questions({
    shop,
    vocabulary,
    place: ownName,
    ours: [book],
    typing,
    redraw,
    undo: () => undoWords(shop),
    answer: answerSaid,
  });

  /** Draws the page once all of this turn's changes are in; a microtask, since a hidden tab has no frames. */
  function redraw(): void {
    if (due) return;
    due = true;
    queueMicrotask(() => {
      due = false;
      draw();
    });
  }

  const readingOf = (run: KeptRun): LogReading => {
    if (run.log.entries.length === 0 && isHandWritten(run.source)) return { run: run.log, problems: [], questions: [] };
    if (reading?.source !== run.source || reading.hints !== run.hints) {
      reading = { source: run.source, hints: run.hints, reading: readLog(run.source, run.hints) };
    }
    return reading.reading;
  };

  function openedFor(run: KeptRun): OpenedRun {
    if (opened?.id !== run.id) {
      opened?.notebook.close();
      opened = { id: run.id, notebook: openRun(book, vocabulary, redraw) };
      opened.notebook.show(run);
      Object.assign(passing, { inHand: undefined, wrong: undefined, drawn: rowsDrawn });
    }
    return opened.notebook;
  }

  function keepReading(text: string, first: LogReading, name?: string): void {
    if (!first.run.entries.some(({ kind }) => kind === "reading" || kind === "addition")) {
      const why = first.problems
        .slice(0, 2)
        .map(({ read, expected, remedy }) => `“${read.slice(0, 60)}”: ${expected}. ${remedy}`);
      passing.says = [`Nothing in ${name ?? "this"} reads as a log; the open run stays as it was.`, ...why];
      redraw();
      return;
    }
    passing.says = [];
    const run = act.readIn(shop, text, first, name ?? act.runName(first.run, new Date()), book);
    if (run) reading = { source: run.source, hints: run.hints, reading: first };
    location.hash = routeOf(runPageName);
    redraw();
    window.scrollTo(0, 0);
  }

  function takeText(text: string, name?: string): void {
    const hints = itemOf(shop.record, "setups", openRunOf()?.setup ?? "")?.hints ?? {};
    if (!isLong(text)) {
      keepReading(text, readLog(text, hints), name);
      return;
    }
    const aside = readAside(text, hints);
    passing.reading = { rows: text.split("\n").length, stop: aside.stop };
    redraw();
    aside.found
      .then((done) => keepReading(text, done, name))
      .catch((error: unknown) => {
        passing.says = [
          error instanceof Error && error.message === "stopped"
            ? "Reading the log was stopped; nothing was changed."
            : `The log could not be read: ${String(error)}`,
        ];
      })
      .finally(() => {
        passing.reading = undefined;
        redraw();
      });
  }

  async function readFile(file: File): Promise<void> {
    if (/\.json$/i.test(file.name)) {
      const taken = await shop.openCopy(file);
      passing.says = "problem" in taken ? [taken.problem] : taken.says;
      redraw();
      return;
    }
    takeText(await act.fileText(file), file.name.replace(/\.[a-z]+$/i, ""));
  }

  const writeByHand = (): void => {
    act.writeByHand(shop, system(), new Date(), book);
    location.hash = routeOf(runPageName);
    redraw();
    // After the page has gone to its top for the new address.
    setTimeout(() => {
      const first = document.querySelector<HTMLElement>("#row-time");
      first?.scrollIntoView({ block: "center" });
      first?.focus({ preventScroll: true });
    }, 100);
  };

  function addRow(run: KeptRun, row: HandRow): void {
    const problems = act.addRow(shop, run.id, row);
    passing.says = problems.map(({ read, expected, remedy }) => `“${read}”: ${expected}. ${remedy}`);
    passing.drawn += 1;
    redraw();
  }

  function runContent(run: KeptRun): unknown {
    const notebook = openedFor(run);
    const fact = (name: string) => run.facts[name] ?? undefined;
    const lineOf = (name: string) => notebook.lines.get(name);
    return runPage({
      book,
      run,
      opened: notebook,
      reading: readingOf(run),
      undo: undoWords(shop),
      readFile,
      writeByHand,
      ledger: {
        facts: run.facts,
        system: system(),
        typing,
        busy: typing.waiting,
        change: (name, text) => {
          const line = lineOf(name);
          const was = fact(name)?.text ?? (line?.kind === "given" ? line.text : "");
          act.setFact(shop, run.id, name, { text, known: fact(name)?.known }, was, line);
        },
        changeKnown: (name, known) => {
          const line = lineOf(name);
          const text = fact(name)?.text ?? (line?.kind === "given" ? line.text : "");
          act.setFact(shop, run.id, name, { text, known }, fact(name)?.known ?? "", line);
        },
      },
      log: {
        log: run.log,
        system: system(),
        inHand: passing.inHand,
        wrong: passing.wrong,
        drawn: passing.drawn,
        apart: pages.apart(notebook),
        suspects: pages.suspects(notebook, run.log, system()),
        write: (pour) => act.writePour(shop, run.id, pour),
        take: (key) => {
          Object.assign(passing, { inHand: key, wrong: undefined });
          redraw();
        },
        drawMore: () => {
          passing.drawn += 500;
          redraw();
        },
        strike: (entry, reason) => {
          act.strike(shop, run.id, entry, reason);
          // The button that was pressed is gone: the hand stays in its row.
          setTimeout(() => document.querySelector<HTMLElement>("#log tr.in-hand [data-put-back]")?.focus());
        },
        unstrike: (entry) => act.unstrike(shop, run.id, entry),
        correct: (entry, text) => {
          passing.wrong = act.correctEntry(shop, run.id, entry, text);
          if (passing.wrong === undefined) passing.inHand = undefined;
          redraw();
        },
        add: (row) => addRow(run, row),
      },
      figures: drawings({
        names: (book.figures ?? []).filter((figure) => typeof figure === "string"),
        figures,
        run,
        notebook,
        system: system(),
        answer: answerSaid,
      }),
      folds: pages.folds(notebook, run, system()),
      otherRuns: byNewest().filter(({ id }) => id !== run.id),
      show: (id) => act.showRun(shop, id),
      checked: () => act.checkedAll(shop, run.id),
      answerTo: (question, answerGiven) => act.answerQuestion(shop, run.id, question.id, answerGiven, question.taken),
      says: passing.says,
    });
  }

  /** The notebook worked for every run of the list; what did not change is not worked again. */
  function workedFor(run: KeptRun): OpenedRun {
    const known = listed.get(run.id);
    if (known?.run === run) return known.opened;
    const notebook = known?.opened ?? openRun(book, vocabulary, redraw);
    notebook.show(run);
    listed.set(run.id, { run, opened: notebook });
    return notebook;
  }

  function shopContent(): unknown {
    const runs = byNewest();
    const last = runs.find((run) => !run.invented);
    const notebooks = runs.map((run) => ({ run, notebook: workedFor(run) }));
    const lines = new Map(Object.entries(book.lines));
    const lastOne = last && workedFor(last);
    const clauses: readonly (string | Clause)[] = front.answer;
    return shopPage({
      system: system(),
      undo: undoWords(shop),
      readFile,
      writeByHand,
      runs: notebooks.map(({ run, notebook }) => ({
        run,
        setup: itemOf(shop.record, "setups", run.setup ?? ""),
        result: notebook.result,
        strip: pages.strip(notebook, run, system()),
      })),
      setups: shop.record.setups
        .filter(({ removed }) => !removed)
        .map((setup) => ({
          setup,
          runs: runs.filter((run) => run.setup === setup.id).length,
          drawing: pages.tank(setup, system()),
        })),
      baths: shop.record.baths.filter(({ removed }) => !removed),
      lines,
      columns: front.columns,
      questions: [{ asks: book.asks, name: runPageName }],
      answer: lastOne
        ? answer({ clauses, lines, result: lastOne.result, system: system(), busy: false, working: lastOne.busy() })
        : nothing,
      onlyInvented: last === undefined,
      hasDemo: shop.hasDemo,
      earlier: passing.earlier,
      open: (id) => act.showRun(shop, id),
      throwAway: (run) => act.throwAway(shop, run),
      saveCopy: () => saveCopy(shop),
      openCopy: (file) => void readFile(file),
      bringBack: async (key) => {
        const taken = await shop.bringBack(key);
        passing.says = "problem" in taken ? [taken.problem] : taken.says;
        redraw();
      },
      demo: (shown) => (shown ? shop.bringBackDemo() : shop.removeDemo()),
      says: passing.says,
    });
  }

  function draw(): void {
    const open = where();
    const run = openRunOf();
    const onRun = open === runPageName && run !== undefined;
    const title = open === ownName ? asked.title(which()) : open === runPageName && run ? run.name : open;
    document.title = `${title} · Steady Boil`;
    const content = (): unknown => {
      if (open === ownName) return asked.content(which(), passing.says);
      return onRun ? runContent(run) : shopContent();
    };
    render(
      shell({
        pages: [front.name, runPageName, ownName],
        open: open === ownName ? ownName : onRun ? runPageName : front.name,
        system: system(),
        kept: keptWords(shop, () => saveCopy(shop)),
        setUnits: (units) => act.setUnits(shop, units),
        content: html`${passing.reading ? readingWords(passing.reading) : nothing}${content()}`,
        atTheTank: onRun
          ? atTheTank({
              what: passing.tank,
              system: system(),
              log: run.log,
              take: (what) => {
                passing.tank = what;
                redraw();
              },
              add: (row) => addRow(run, row),
            })
          : html``,
      }),
      root,
    );
  }

  async function lookForEarlier(): Promise<void> {
    passing.earlier = await shop.earlier().catch(() => []);
    redraw();
  }

  shop.subscribe(({ record, says }) => {
    if (says.length > 0) passing.says = says;
    const run = record.runs.find(({ id }) => id === opened?.id);
    if (run && opened) opened.notebook.show(run);
    asked.follow();
    redraw();
  });
  window.addEventListener("hashchange", () => {
    passing.says = [];
    if (where() === front.name) void lookForEarlier();
    redraw();
    window.scrollTo(0, 0);
  });
  window.addEventListener("resize", redraw);
  document.addEventListener("dragover", (event) => event.preventDefault());
  document.addEventListener("drop", (event) => {
    event.preventDefault();
    const file = event.dataTransfer?.files[0];
    const text = event.dataTransfer?.getData("text/plain");
    if (file) void readFile(file);
    else if (text) takeText(text);
  });
  document.addEventListener("paste", (event) => {
    const target = event.target;
    if (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) {
      if (!event.clipboardData?.getData("text/plain").includes("\n")) return;
    }
    const text = event.clipboardData?.getData("text/plain");
    if (!text?.trim()) return;
    event.preventDefault();
    takeText(text);
  });
  document.addEventListener("keydown", (event) => {
    const inBlank = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
    if (inBlank || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
    event.preventDefault();
    if (event.shiftKey) shop.redo();
    else shop.undo();
  });
  // On paper everything is unfolded; afterwards the folds are as they were.
  const shut = new Set<HTMLDetailsElement>();
  window.addEventListener("beforeprint", () => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>("details:not([open])")) {
      shut.add(fold);
      fold.open = true;
    }
  });
  window.addEventListener("afterprint", () => {
    for (const fold of shut) fold.open = false;
    shut.clear();
  });
  void lookForEarlier();
  draw();
}
