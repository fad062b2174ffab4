import { html, nothing, render } from "lit-html";
import type { Vocabulary } from "../../lib/lines/index.ts";
import type { KeptRun } from "../../lib/record/index.ts";
import * as act from "./actions.ts";
import { questions } from "./book/questions.ts";
import type { FigureMaker } from "./drawings.ts";
import { drawPaced } from "./drawPaced.ts";
import { frontPlace } from "./frontPlace.ts";
import { type Shop, saveCopy } from "./keep.ts";
import { pageEvents } from "./pageEvents.ts";
import type { Pages } from "./pages.ts";
import { readingWords } from "./readingWords.ts";
import { placeIn, routeOf } from "./route.ts";
import { runPlace } from "./runPlace.ts";
import { shell } from "./shell.ts";
import { Typing } from "./Typing.ts";
import { takingLogs } from "./takingLogs.ts";
import { toolPlace } from "./tool/toolPlace.ts";
import type { ToolNotebook } from "./tool/types.ts";
import { trials as trialsOf } from "./trials/trials.ts";
import { keptWords, undoWords } from "./undoWords.ts";

export interface AppOptions {
  readonly root: HTMLElement;
  readonly shop: Shop;
  readonly pages: Pages;
  readonly vocabulary: Vocabulary;
  readonly figures: ReadonlyMap<string, FigureMaker>;
}

/** Puts the notebooks on the page and keeps them in step with the shop record. */
export function startApp({ root, shop, pages, vocabulary, figures }: AppOptions): void {
  const { book, front, tools, ownQuestions } = pages;
  const runPageName = book.name ?? book.asks;
  const toolName = ({ book: { name, asks } }: ToolNotebook): string => name ?? asks;
  const names = [front.name, runPageName, ...tools.map(toolName), ownQuestions];
  /** What the maker should read; nothing of it is worth keeping. */
  let said: readonly string[] = [];

  const system = (): "US" | "metric" => shop.record.settings.units;
  const here = (): readonly KeptRun[] => shop.record.runs.filter((run) => !run.removed);
  const byNewest = (): readonly KeptRun[] =>
    [...here()].sort((a, b) => (b.date ?? b.changed).localeCompare(a.date ?? a.changed));
  const openRunOf = (): KeptRun | undefined =>
    here().find(({ id }) => id === shop.record.settings.openRun) ?? byNewest()[0];
  const place = () => placeIn(location.hash, names, runPageName);

  const redraw = drawPaced(() => trials.drawn(draw));

  function says(words: readonly string[]): void {
    said = words;
    redraw();
  }

  /** The answer's first two clauses as one line of text: the title of a saved picture. */
  const answerSaid = (): string =>
    [...root.querySelectorAll("#answer .clause > p:not(.caution)")]
      .slice(0, 2)
      .map(({ textContent }) => (textContent ?? "").replace(/\s+/g, " ").trim())
      .join(" ");

  const typing = new Typing(redraw);
  const trials = trialsOf(() => typing.waiting, redraw);
  const logs = takingLogs({
    shop,
    book,
    system,
    openRun: openRunOf,
    goThere: () => {
      location.hash = routeOf(runPageName);
    },
    says,
    redraw,
  });
  const asked = questions({
    shop,
    vocabulary,
    place: ownQuestions,
    ours: [book, ...tools.map((tool) => tool.book)],
    typing,
    trials,
    redraw,
    undo: () => undoWords(shop),
    answer: answerSaid,
  });
  const shared = { shop, pages, book, vocabulary, logs, trials, byNewest, says, redraw };
  const shopFront = frontPlace(shared);
  const oneRun = runPlace({ ...shared, figures, typing, answer: answerSaid, ask: asked.start });

  const toolPlaces = new Map(
    tools.map((tool) => [
      toolName(tool),
      toolPlace({
        shop,
        vocabulary,
        tool,
        typing,
        trials,
        redraw,
        undo: () => undoWords(shop),
        answer: answerSaid,
        ask: asked.start,
      }),
    ]),
  );

  function draw(): void {
    const { name, id } = place();
    const run = openRunOf();
    const onRun = name === runPageName && run !== undefined;
    const open = name === runPageName && !run ? front.name : name;
    const title = name === ownQuestions ? asked.title(id) : onRun ? run.name : name;
    document.title = `${title} · Steady Boil`;
    const content = (): unknown => {
      if (open === ownQuestions) return asked.content(id, said);
      const tool = toolPlaces.get(open);
      if (tool) return tool.content(said);
      return onRun ? oneRun.content(run, said) : shopFront.content(said);
    };
    render(
      shell({
        pages: names,
        open,
        system: system(),
        kept: keptWords(shop, () => saveCopy(shop)),
        setUnits: (units) => act.setUnits(shop, units),
        content: html`${logs.reading ? readingWords(logs.reading) : nothing}${content()}`,
        atTheTank: onRun ? oneRun.atTheTank(run) : html``,
      }),
      root,
    );
  }

  shop.subscribe((news) => {
    if (news.says.length > 0) said = news.says;
    oneRun.follow();
    asked.follow();
    for (const tool of toolPlaces.values()) tool.follow();
    redraw();
  });
  window.addEventListener("hashchange", () => {
    said = [];
    if (place().name === front.name) void shopFront.lookForEarlier();
    redraw();
    window.scrollTo(0, 0);
  });
  pageEvents({
    redraw,
    hand: trials.hand,
    readFile: logs.readFile,
    takeText: logs.takeText,
    undo: () => shop.undo(),
    redo: () => shop.redo(),
  });
  void shopFront.lookForEarlier();
  trials.drawn(draw);
}
