import { html, nothing } from "lit-html";
import { foldName, functions, type Notebook, namesOf, type Vocabulary } from "../../../lib/lines/index.ts";
import { type KeptRun, keyed, shown } from "../../../lib/record/index.ts";
import type { FigureProps } from "../figureShown.ts";
import { grid } from "../grid/grid.ts";
import type { Place } from "../grid/types.ts";
import { lineInHand } from "../inHand/lineInHand.ts";
import type { Shop } from "../keep.ts";
import type { LedgerProps } from "../ledgers.ts";
import type { OpenedRun } from "../openedRun.ts";
import { valueIn } from "../showValue.ts";
import type { Typing } from "../Typing.ts";
import type { Trials } from "../trials/trials.ts";
import { newAsking } from "./asking.ts";
import { bookFooter } from "./bookFooter.ts";
import { runActions } from "./caseActions.ts";
import { hasOwnFigure, ownFigures } from "./ownFigures.ts";
import type { Search } from "./solveForm.ts";
import { Sweeps } from "./sweeps.ts";
import { notes } from "./texts.ts";

export interface RunBookProps {
  readonly shop: Shop;
  readonly opened: OpenedRun;
  readonly vocabulary: Vocabulary;
  readonly typing: Typing;
  readonly trials: Trials;
  readonly answer: () => string;
  readonly redraw: () => void;
  readonly ask: (book: Notebook) => void;
}

/** What the maker can do with the lines of a run's page: open them, add to them, put other runs beside. */
export interface RunBook {
  readonly ledger: () => Pick<LedgerProps, "inHand" | "take" | "panel">;
  /** The grid in place of the ledgers where other runs stand beside, and what can be done, in words. */
  readonly lines: () => { readonly grid: unknown; readonly footer: unknown; readonly said: string };
  readonly figures: (from: number, run: KeptRun) => readonly FigureProps[];
  readonly notes: () => unknown;
  readonly close: () => void;
}

export function runBook({ shop, opened, vocabulary, typing, trials, answer, redraw, ask }: RunBookProps): RunBook {
  const { open } = opened;
  const asking = newAsking(redraw);
  const sweeps = new Sweeps(open, redraw);
  let inHand: Place | undefined;
  let shownCase: string | undefined;
  let search: Search | undefined;
  const system = () => shop.record.settings.units;

  /** What the grid lists: a line that is seldom known is there only where it has a number. */
  const listed = (): readonly string[] =>
    open.names().filter((one) => {
      const line = open.line(one);
      if (line.hidden) return false;
      return !line.rare || open.cases().some(({ name }) => valueIn(open.result(one, name)) !== undefined);
    });

  const take = (next: Place | undefined): void => {
    inHand = next;
    redraw();
  };
  const panel = (line: string, inCase = ""): unknown =>
    lineInHand({
      open,
      line,
      inCase,
      system: system(),
      names: namesOf(open.names(), [...functions, ...vocabulary.functions]),
      close: () => take(undefined),
      goTo: (next) =>
        open.line(next).hidden ? asking.says(`${next} is not among these lines`) : take({ line: next, inCase }),
      says: asking.says,
      redraw,
    });

  /** The present run as the one case of a question of the maker's own, with all that stands here. */
  function copied(): Notebook {
    const { cases: _, base: __, hiddenCases: ___, casesFrom: ____, ...book } = open.notebook();
    const run = opened.runOf();
    if (!run) return book;
    const inCase =
      run.name
        .replace(/[\u0000-\u001f{}|]/gu, " ")
        .trim()
        .slice(0, 60) || "this run";
    return {
      ...book,
      asks: `${book.asks} (a copy for ${run.name})`,
      cases: keyed([[inCase, {}]]),
      casesFrom: keyed([[inCase, { kind: "run", id: run.id, says: run.name }]]),
    };
  }

  function footer(): unknown {
    const book = open.notebook();
    return bookFooter({
      open,
      book,
      record: {
        ...shop.record,
        setups: [],
        baths: [],
        runs: shown(shop.record.runs).filter(({ id }) => id !== opened.runOf()?.id),
      },
      system: system(),
      asking,
      search,
      setSearch: (next) => {
        search = next;
        redraw();
      },
      runsOnly: true,
      more: html`<button class="word" type="button" @click=${() => ask(copied())}>copy this notebook as a question of my own</button>`,
    });
  }

  return {
    ledger: () => ({
      inHand: inHand?.line,
      take: (line) => take(line === undefined ? undefined : { line, inCase: "" }),
      panel,
    }),
    lines() {
      const said = asking.said.join(" ");
      if (inHand && !open.names().some((one) => foldName(one) === foldName(inHand?.line ?? ""))) inHand = undefined;
      const cases = open.cases();
      if (cases.length < 2) return { grid: undefined, footer: footer(), said };
      const seen = cases.find((one) => one.name === shownCase && !one.hidden) ?? cases.find(({ base }) => base);
      return {
        said,
        footer: nothing,
        grid: grid({
          open,
          system: system(),
          typing,
          trials,
          shownCase: seen?.name ?? "",
          showCase: (next) => {
            shownCase = next;
            redraw();
          },
          inHand,
          take,
          panel,
          says: asking.says,
          lines: listed(),
          caseActions: (one) => runActions({ open, name: one, attempt: asking.attemptHere }),
          redraw,
          footer: footer(),
        }),
      };
    },
    figures(from, run) {
      const book = open.notebook();
      if (!hasOwnFigure(book)) return [];
      return ownFigures({
        open,
        book,
        system: system(),
        sweeps,
        version: opened.version(),
        busy: opened.busy(),
        invented: run.invented === true,
        answer,
        from,
        remove: (at) =>
          asking.attemptHere(() =>
            open.setRest("removing a figure", { figures: (book.figures ?? []).filter((_, i) => i !== at) }),
          ),
      });
    },
    notes: () => notes(open, open.notebook(), asking),
    close: () => sweeps.close(),
  };
}
