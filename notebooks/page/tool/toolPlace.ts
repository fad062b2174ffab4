import { html, type TemplateResult } from "lit-html";
import { foldName, type Notebook, type Vocabulary } from "../../../lib/lines/index.ts";
import { itemOf, keyed, type ShopRecord } from "../../../lib/record/index.ts";
import { newAsking } from "../book/asking.ts";
import { linesOnPage, nothingAtHand, removeFigure } from "../book/linesOnPage.ts";
import { ownFigures } from "../book/ownFigures.ts";
import type { Shop } from "../keep.ts";
import { valueIn } from "../showValue.ts";
import type { Typing } from "../Typing.ts";
import type { Trials } from "../trials/trials.ts";
import { type OpenTool, openTool } from "./keptTool.ts";
import { toolFigures } from "./toolFigures.ts";
import { toolPage } from "./toolPage.ts";
import type { ToolNotebook } from "./types.ts";

export interface ToolPlaceProps {
  readonly shop: Shop;
  readonly vocabulary: Vocabulary;
  readonly tool: ToolNotebook;
  readonly typing: Typing;
  readonly trials: Trials;
  readonly redraw: () => void;
  readonly undo: () => TemplateResult;
  /** The answer that stands on the page, as one text. */
  readonly answer: () => string;
  /** Keeps a notebook as a question of the maker's own and goes there. */
  readonly ask: (book: Notebook) => void;
}

/** A notebook of the tool as a place of the page; nothing is opened before it is shown. */
export interface ToolPlace {
  readonly content: (says: readonly string[]) => TemplateResult;
  /** Takes up what the record says now. */
  readonly follow: () => void;
}

/** Whether a case comes from something that our generator made, straight or by way of another case. */
function isInvented(record: ShopRecord, { casesFrom = {} }: Notebook): boolean {
  return Object.values(casesFrom).some(({ kind, id }) => {
    if (kind === "run") return itemOf(record, "runs", id)?.invented === true;
    if (kind === "setup") return itemOf(record, "setups", id)?.invented === true;
    return kind === "bath" && itemOf(record, "baths", id)?.invented === true;
  });
}

export function toolPlace(props: ToolPlaceProps): ToolPlace {
  const { shop, vocabulary, tool, typing, trials, redraw } = props;
  const asking = newAsking(redraw);
  let opened: OpenTool | undefined;
  const atHand = nothingAtHand();
  let seldom = false;

  function content(says: readonly string[]): TemplateResult {
    opened ??= openTool(shop, vocabulary, tool, redraw);
    const now = opened;
    const { kept, sweeps } = now;
    const { open } = kept;
    const system = shop.record.settings.units;
    const book = open.notebook();
    const cases = open.cases().filter(({ hidden }) => !hidden);
    const seen = cases.find(({ name }) => name === atHand.shownCase) ?? cases.find(({ base }) => base);
    const busy = kept.busy();
    const invented = isInvented(shop.record, book);
    const held = atHand.inHand?.line;
    if (held && !open.names().some((one) => foldName(one) === foldName(held))) atHand.inHand = undefined;

    /** A line that is seldom needed is there only where it has a number, or where all are asked for. */
    const all = open.names().filter((one) => !open.line(one).hidden);
    const usual = all.filter(
      (one) =>
        !open.line(one).rare ||
        atHand.inHand?.line === one ||
        cases.some(({ name }) => valueIn(open.result(one, name)) !== undefined),
    );
    const input = { open, system, shownCase: seen?.name ?? "" };
    const ours = toolFigures({
      opened: now,
      book,
      figures: tool.figures,
      input,
      busy,
      invented,
      answer: props.answer,
    });
    return toolPage({
      book,
      open,
      system,
      working: busy,
      busy: typing.waiting,
      invented,
      undo: props.undo(),
      says: [...says, ...now.says],
      said: asking.said,
      asking,
      redraw,
      extras: tool.extras?.({ ...input, record: shop.record, busy }) ?? [],
      figures: [
        ...ours,
        ...ownFigures({
          open,
          book,
          system,
          sweeps,
          version: kept.version(),
          busy,
          invented,
          answer: props.answer,
          from: ours.filter(({ drawing }) => drawing !== undefined).length + 1,
          remove: removeFigure({ open, book, asking }),
        }),
      ],
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
        lines: seldom ? all : usual,
        more: html`${
          seldom || usual.length === all.length
            ? ""
            : html`<button class="word" type="button" @click=${() => {
                seldom = true;
                redraw();
              }}>show ${all.length - usual.length} lines seldom needed</button>`
        } <button class="word" type="button" @click=${() => props.ask(copied(book))}>copy this notebook as a question of my own</button>`,
        redraw,
      }),
    });
  }

  return { content, follow: () => opened?.follow() };
}

/** The notebook as a question of the maker's own: drawings that come with the tool stay with the tool. */
function copied(book: Notebook): Notebook {
  const figures = (book.figures ?? []).filter((figure) => typeof figure !== "string");
  return { ...book, lines: keyed(Object.entries(book.lines)), asks: `${book.asks} (a copy)`, figures };
}
