import { html } from "lit-html";
import { isValue, type Notebook, type Vocabulary } from "../../lib/lines/index.ts";
import { type KeptNotebook, type KeptRun, shown } from "../../lib/record/index.ts";
import * as act from "./actions.ts";
import { atTheTank } from "./atTheTank.ts";
import { amountText } from "./book/amountText.ts";
import { historyOf } from "./book/bookEdits.ts";
import { runBook } from "./book/runBook.ts";
import { runLines } from "./book/runLines.ts";
import { drawings, type FigureMaker } from "./drawings.ts";
import type { HandRow } from "./handWriting.ts";
import type { Shop } from "./keep.ts";
import { type OpenedRun, openRun } from "./openedRun.ts";
import type { Pages } from "./pages.ts";
import { runPage } from "./runPage.ts";
import type { Typing } from "./Typing.ts";
import type { TakingLogs } from "./takingLogs.ts";
import type { Trials } from "./trials/trials.ts";
import { undoWords } from "./undoWords.ts";

/** What the page remembers of itself; nothing of it is worth keeping. */
interface Passing {
  inHand: string | undefined;
  wrong: string | undefined;
  drawn: number;
  tank: "reading" | "water" | undefined;
}

const rowsDrawn = 60;

export interface RunPlaceProps {
  readonly shop: Shop;
  readonly pages: Pages;
  readonly book: Notebook;
  readonly vocabulary: Vocabulary;
  readonly figures: ReadonlyMap<string, FigureMaker>;
  readonly logs: TakingLogs;
  readonly typing: Typing;
  readonly trials: Trials;
  readonly byNewest: () => readonly KeptRun[];
  /** The answer that stands on the page, as one text. */
  readonly answer: () => string;
  readonly says: (words: readonly string[]) => void;
  readonly redraw: () => void;
  /** Keeps a notebook as a question of the maker's own and goes there. */
  readonly ask: (book: Notebook) => void;
}

/** The page of one run, with what the maker laid over its notebook. */
export function runPlace(props: RunPlaceProps): {
  readonly content: (run: KeptRun, says: readonly string[]) => unknown;
  readonly atTheTank: (run: KeptRun) => unknown;
  readonly follow: () => void;
} {
  const { shop, pages, book, vocabulary, figures, logs, typing, trials, byNewest, says, redraw } = props;
  const name = book.name ?? book.asks;
  const passing: Passing = { inHand: undefined, wrong: undefined, drawn: rowsDrawn, tank: undefined };
  let opened: { id: string; notebook: OpenedRun; own: ReturnType<typeof runBook> } | undefined;
  const system = () => shop.record.settings.units;

  const own = (): KeptNotebook | undefined => shown(shop.record.notebooks).find(({ of }) => of === name);
  const beside = (run: KeptRun): readonly KeptRun[] =>
    Object.values(own()?.notebook.casesFrom ?? {}).flatMap(({ kind, id }) => {
      const other = shop.record.runs.find((one) => one.id === id && !one.removed);
      return kind === "run" && other && other.id !== run.id ? [other] : [];
    });

  function openedFor(run: KeptRun) {
    if (opened?.id === run.id) return opened;
    opened?.own.close();
    opened?.notebook.close();
    const notebook: OpenedRun = openRun(book, vocabulary, redraw, (inner, { runOf, edited }) =>
      runLines(inner, {
        of: book,
        name,
        own,
        runOf,
        edited,
        change: (edit, undo, redo) => void shop.change(edit, undo, redo),
        asText: (line, thing) => (isValue(thing) ? amountText(inner.line(line), thing, system()) : undefined),
        showRun: (id) => act.showRun(shop, id),
        history: historyOf(shop),
      }),
    );
    notebook.show(run, own()?.notebook, beside(run));
    opened = {
      id: run.id,
      notebook,
      own: runBook({
        shop,
        vocabulary,
        opened: notebook,
        typing,
        trials,
        answer: props.answer,
        redraw,
        ask: props.ask,
      }),
    };
    Object.assign(passing, { inHand: undefined, wrong: undefined, drawn: rowsDrawn });
    return opened;
  }

  function addRow(run: KeptRun, row: HandRow): void {
    const problems = act.addRow(shop, run.id, row);
    says(problems.map(({ read, expected, remedy }) => `“${read}”: ${expected}. ${remedy}`));
    passing.drawn += 1;
    redraw();
  }

  function content(run: KeptRun, said: readonly string[]): unknown {
    const { notebook, own: mine } = openedFor(run);
    const fact = (line: string) => run.facts[line] ?? undefined;
    const textOf = (line: string) =>
      fact(line)?.text ?? (book.lines[line] ? givenText(book, line) : notebook.open.text(line));
    const ours = drawings({
      names: (book.figures ?? []).filter((figure) => typeof figure === "string"),
      figures,
      run,
      notebook,
      system: system(),
      answer: props.answer,
    });
    return runPage({
      book,
      run,
      opened: notebook,
      reading: logs.readingOf(run),
      undo: undoWords(shop),
      readFile: logs.readFile,
      writeByHand: logs.writeByHand,
      ledger: {
        facts: run.facts,
        system: system(),
        typing,
        busy: typing.waiting,
        change: (line, text) =>
          act.setFact(shop, run.id, line, { text, known: fact(line)?.known }, textOf(line), notebook.lines.get(line)),
        changeKnown: (line, known) =>
          act.setFact(
            shop,
            run.id,
            line,
            { text: textOf(line), known },
            fact(line)?.known ?? "",
            notebook.lines.get(line),
          ),
        ...mine.ledger(),
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
      figures: [...ours, ...mine.figures(ours.filter(({ drawing }) => drawing !== undefined).length + 1, run)],
      lines: mine.lines(),
      notes: mine.notes(),
      folds: pages.folds(notebook, run, system()),
      otherRuns: byNewest().filter(({ id }) => id !== run.id),
      show: (id) => act.showRun(shop, id),
      checked: () => act.checkedAll(shop, run.id),
      answerTo: (question, answerGiven) => act.answerQuestion(shop, run.id, question.id, answerGiven, question.taken),
      says: said,
      trials,
    });
  }

  return {
    content,
    atTheTank: (run) =>
      html`${atTheTank({
        what: passing.tank,
        system: system(),
        log: run.log,
        take: (what) => {
          passing.tank = what;
          redraw();
        },
        add: (row) => addRow(run, row),
      })}`,
    follow() {
      const run = shop.record.runs.find(({ id }) => id === opened?.id);
      if (run && opened) opened.notebook.show(run, own()?.notebook, beside(run));
    },
  };
}

/** A given's text as its notebook has it. */
function givenText(book: Notebook, name: string): string {
  const line = book.lines[name];
  return line?.kind === "given" ? line.text : "";
}
