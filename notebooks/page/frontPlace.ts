import { nothing } from "lit-html";
import type { Clause, Notebook, Vocabulary } from "../../lib/lines/index.ts";
import { itemOf, type KeptRun } from "../../lib/record/index.ts";
import * as act from "./actions.ts";
import { answer } from "./answer.ts";
import { type Earlier, type Shop, saveCopy } from "./keep.ts";
import { type OpenedRun, openRun } from "./openedRun.ts";
import type { Pages } from "./pages.ts";
import { shopPage } from "./shopPage.ts";
import type { TakingLogs } from "./takingLogs.ts";
import type { Trials } from "./trials/trials.ts";
import { undoWords } from "./undoWords.ts";

export interface FrontPlaceProps {
  readonly shop: Shop;
  readonly pages: Pages;
  readonly book: Notebook;
  readonly vocabulary: Vocabulary;
  readonly logs: TakingLogs;
  readonly trials: Trials;
  readonly byNewest: () => readonly KeptRun[];
  readonly says: (words: readonly string[]) => void;
  readonly redraw: () => void;
}

/** The front page, with the notebook worked for every run of its list. */
export function frontPlace(props: FrontPlaceProps): {
  readonly content: (says: readonly string[]) => unknown;
  readonly lookForEarlier: () => Promise<void>;
} {
  const { shop, pages, book, vocabulary, logs, trials, byNewest, says, redraw } = props;
  const { front } = pages;
  const runPageName = book.name ?? book.asks;
  const listed = new Map<string, { run: KeptRun; opened: OpenedRun }>();
  let earlier: readonly Earlier[] = [];
  const system = () => shop.record.settings.units;

  /** What did not change is not worked again. */
  function workedFor(run: KeptRun): OpenedRun {
    const known = listed.get(run.id);
    if (known?.run === run) return known.opened;
    const notebook = known?.opened ?? openRun(book, vocabulary, redraw);
    notebook.show(run);
    listed.set(run.id, { run, opened: notebook });
    return notebook;
  }

  function content(said: readonly string[]): unknown {
    const runs = byNewest();
    const last = runs.find((run) => !run.invented);
    const notebooks = runs.map((run) => ({ run, notebook: workedFor(run) }));
    const lines = new Map(Object.entries(book.lines));
    const lastOne = last && workedFor(last);
    const clauses: readonly (string | Clause)[] = front.answer;
    return shopPage({
      system: system(),
      undo: undoWords(shop),
      readFile: logs.readFile,
      writeByHand: logs.writeByHand,
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
      questions: [
        { asks: book.asks, name: runPageName },
        ...pages.tools.map((tool) => ({ asks: tool.book.asks, name: tool.book.name ?? tool.book.asks })),
        { asks: "Something else, in lines of your own?", name: pages.ownQuestions },
      ],
      answer: lastOne
        ? answer({
            clauses,
            lines,
            result: lastOne.result,
            trial: (line, ...is) => trials.of({ open: lastOne.open, line }, ...is),
            system: system(),
            busy: false,
            working: lastOne.busy(),
          })
        : nothing,
      onlyInvented: last === undefined,
      hasDemo: shop.hasDemo,
      earlier,
      open: (id) => act.showRun(shop, id),
      throwAway: (run) => act.throwAway(shop, run),
      saveCopy: () => saveCopy(shop),
      openCopy: (file) => void logs.readFile(file),
      bringBack: async (key) => {
        const taken = await shop.bringBack(key);
        says("problem" in taken ? [taken.problem] : taken.says);
      },
      demo: (shown) => (shown ? shop.bringBackDemo() : shop.removeDemo()),
      says: said,
    });
  }

  return {
    content,
    async lookForEarlier() {
      earlier = await shop.earlier().catch(() => []);
      redraw();
    },
  };
}
