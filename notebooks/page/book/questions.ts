import { html, type TemplateResult } from "lit-html";
import type { Notebook, Vocabulary } from "../../../lib/lines/index.ts";
import { type KeptNotebook, shown } from "../../../lib/record/index.ts";
import type { Shop } from "../keep.ts";
import { routeOf } from "../route.ts";
import type { Typing } from "../Typing.ts";
import type { Trials } from "../trials/trials.ts";
import { newAsking } from "./asking.ts";
import { askAnother, throwAwayBook } from "./bookEdits.ts";
import { linesOnPage, nothingAtHand, removeFigure } from "./linesOnPage.ts";
import { type OpenBook, openBook } from "./openBook.ts";
import { ownFigures } from "./ownFigures.ts";
import { questionList } from "./questionList.ts";
import { questionPage } from "./questionPage.ts";

export interface QuestionsProps {
  readonly shop: Shop;
  readonly vocabulary: Vocabulary;
  /** Name of the place along the top edge. */
  readonly place: string;
  /** Notebooks that come with the tool, to be copied. */
  readonly ours: readonly Notebook[];
  readonly typing: Typing;
  readonly trials: Trials;
  readonly redraw: () => void;
  readonly undo: () => TemplateResult;
  /** The answer that stands on the page, as one text. */
  readonly answer: () => string;
}

/** The maker's own questions as a place of the page. */
export interface Questions {
  /** What stands there; `id` as the address has it. */
  readonly content: (id: string | undefined, says: readonly string[]) => TemplateResult;
  /** The question that is open, for the window's title. */
  readonly title: (id: string | undefined) => string;
  /** Takes up what the record says now. */
  readonly follow: () => void;
  /** Keeps another notebook of the maker's own and goes there. */
  readonly start: (book: Notebook) => void;
}

/** Puts the maker's own questions together; nothing is opened before it is shown. */
export function questions(props: QuestionsProps): Questions {
  const { shop, vocabulary, place, ours, typing, trials, redraw } = props;
  const asking = newAsking(redraw);
  let opened: OpenBook | undefined;
  let atHand = nothingAtHand();

  const own = (): readonly KeptNotebook[] => shown(shop.record.notebooks).filter(({ of }) => of === undefined);
  const chosen = (id: string | undefined): KeptNotebook | undefined => own().find((one) => one.id === id) ?? own()[0];

  function openedFor(item: KeptNotebook): OpenBook {
    if (opened?.id === item.id) return opened;
    opened?.close();
    asking.forget();
    atHand = nothingAtHand();
    opened = openBook(shop, vocabulary, item, redraw);
    return opened;
  }

  function start(book: Notebook): void {
    location.hash = `${routeOf(place)}/${encodeURIComponent(askAnother(shop, book))}`;
  }

  const listOf = (openId: string | undefined): TemplateResult =>
    questionList({
      place,
      own: own(),
      openId,
      ours,
      asking,
      start: (asks, copyOf) => start(copyOf ? { ...copyOf, asks } : { asks, lines: {} }),
      throwAway: (kept) => throwAwayBook(shop, kept),
    });

  function content(id: string | undefined, says: readonly string[]): TemplateResult {
    const item = chosen(id);
    const now = item && openedFor(item);
    if (!item || !now?.kept || !now.sweeps) {
      const why = now?.says ?? [
        "No question of yours yet. A notebook of your own holds lines that you name yourself, given or worked from each other, for as many cases as you like.",
      ];
      return html`<div class="sheet"><div class="head"><h1>${item?.name ?? place}</h1>${props.undo()}</div>
        ${listOf(item?.id)}${why.map((one) => html`<p class="opening">${one}</p>`)}</div>`;
    }
    const { kept, sweeps } = now;
    const { open } = kept;
    const system = shop.record.settings.units;
    const book = open.notebook();
    const cases = open.cases().filter(({ hidden }) => !hidden);
    const seen = cases.find(({ name }) => name === atHand.shownCase) ?? cases.find(({ base }) => base);
    if (atHand.inHand && !open.names().includes(atHand.inHand.line)) atHand.inHand = undefined;
    return questionPage({
      kept: item,
      book,
      open,
      system,
      working: kept.busy(),
      busy: typing.waiting,
      list: listOf(item.id),
      undo: props.undo(),
      says: [...says, ...now.says],
      said: asking.said,
      asking,
      figures: ownFigures({
        open,
        book,
        system,
        sweeps,
        version: kept.version(),
        busy: kept.busy(),
        invented: item.invented === true,
        answer: props.answer,
        remove: removeFigure({ open, book, asking }),
      }),
      grid: linesOnPage({
        open,
        book,
        record: shop.record,
        system,
        vocabulary,
        typing,
        trials,
        asking,
        atHand,
        seen: seen?.name ?? "",
        redraw,
      }),
    });
  }

  return {
    content,
    title: (id) => chosen(id)?.name ?? place,
    start,
    follow: () => opened?.follow(),
  };
}
