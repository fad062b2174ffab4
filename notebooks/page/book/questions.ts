import { html, nothing, type TemplateResult } from "lit-html";
import { isValue, type Lines, type Notebook, type Vocabulary } from "../../../lib/lines/index.ts";
import { itemOf, type KeptNotebook, shown } from "../../../lib/record/index.ts";
import type { Place } from "../grid/types.ts";
import type { Shop } from "../keep.ts";
import { routeOf } from "../route.ts";
import type { Typing } from "../Typing.ts";
import { amountText } from "./amountText.ts";
import { askAnother, historyOf, keepBook, throwAwayBook } from "./bookEdits.ts";
import { caseActions, hiddenCases } from "./caseActions.ts";
import { caseForm, logLines } from "./caseForm.ts";
import { blank, form, wordsOf } from "./form.ts";
import { type KeptLines, keptLines } from "./keptLines.ts";
import { lineForm } from "./lineForm.ts";
import { mended } from "./mended.ts";
import { questionList } from "./questionList.ts";
import { questionPage } from "./questionPage.ts";
import type { Asking } from "./texts.ts";

export interface QuestionsProps {
  readonly shop: Shop;
  readonly vocabulary: Vocabulary;
  /** Name of the place along the top edge. */
  readonly place: string;
  /** Notebooks that come with the tool, to be copied. */
  readonly ours: readonly Notebook[];
  readonly typing: Typing;
  readonly redraw: () => void;
  readonly undo: () => TemplateResult;
}

/** The maker's own questions as a place of the page. */
export interface Questions {
  /** What stands there; `id` as the address has it. */
  readonly content: (id: string | undefined, says: readonly string[]) => TemplateResult;
  /** The question that is open, for the window's title. */
  readonly title: (id: string | undefined) => string;
  /** Takes up what the record says now. */
  readonly follow: () => void;
  /** Goes to another notebook of the maker's own. */
  readonly goTo: (id: string) => void;
}

interface Opened {
  readonly id: string;
  data: KeptNotebook["notebook"];
  readonly kept?: KeptLines;
  /** What had to be put right, or why it cannot be opened. */
  readonly says: readonly string[];
}

/** Things that no text can hold: the logs of the runs that cases were taken from. */
function logsOf(shop: Shop, book: Notebook): Readonly<Record<string, Readonly<Record<string, unknown>>>> {
  const names = Object.keys(book.lines);
  const logs = logLines({ names: () => names, line: (name) => book.lines[name] ?? { kind: "given", text: "" } });
  return Object.fromEntries(
    Object.entries(book.casesFrom ?? {}).flatMap(([inCase, from]) => {
      const run = from.kind === "run" ? itemOf(shop.record, "runs", from.id) : undefined;
      if (!run || book.cases?.[inCase] === undefined) return [];
      return [[inCase, Object.fromEntries(logs.map((line) => [line, run.log]))]];
    }),
  );
}

export function questions(props: QuestionsProps): Questions {
  const { shop, vocabulary, place, ours, typing, redraw } = props;
  let opened: Opened | undefined;
  let asked: string | undefined;
  let wrong: string | undefined;
  let kind = "given";
  let inHand: Place | undefined;
  let shownCase: string | undefined;
  let said: readonly string[] = [];

  const own = (): readonly KeptNotebook[] => shown(shop.record.notebooks).filter(({ of }) => of === undefined);
  const chosen = (id: string | undefined): KeptNotebook | undefined => own().find((one) => one.id === id) ?? own()[0];

  const ask = (next: string | undefined): void => {
    asked = next;
    wrong = undefined;
    redraw();
    if (next !== undefined)
      setTimeout(() => document.querySelector<HTMLElement>("form.asked :is(input, select, textarea)")?.focus());
  };
  const attempt = (edit: () => void): void => {
    try {
      edit();
      asked = undefined;
      wrong = undefined;
    } catch (error) {
      wrong = wordsOf(error);
    }
    redraw();
  };
  /** The same where no form is open: what is wrong is said at the head. */
  const attemptHere = (edit: () => void): void => {
    said = [];
    try {
      edit();
    } catch (error) {
      said = [wordsOf(error)];
    }
    redraw();
  };
  const asking = (): Asking => ({ form: asked, wrong, ask, attempt });

  function openedFor(item: KeptNotebook): Opened {
    if (opened?.id === item.id) return opened;
    opened?.kept?.close();
    [asked, wrong, inHand, shownCase, said] = [undefined, undefined, undefined, undefined, []];
    opened = open(item);
    return opened;
  }

  function open(item: KeptNotebook): Opened {
    const { book, says } = mended(item.notebook);
    try {
      const kept = keptLines(book, {
        vocabulary,
        inCases: (one) => logsOf(shop, one),
        asText: (line, thing) =>
          isValue(thing) ? amountText(kept.open.line(line), thing, shop.record.settings.units) : undefined,
        keep: (next, undo, redo) => {
          keepBook(shop, item.id, next, undo, redo);
          const now = itemOf(shop.record, "notebooks", item.id);
          if (opened && now) opened.data = now.notebook;
        },
        history: historyOf(shop),
        told: redraw,
      });
      return { id: item.id, data: item.notebook, kept, says };
    } catch (error) {
      return { id: item.id, data: item.notebook, says: [`This notebook can't be opened: ${wordsOf(error)}.`] };
    }
  }

  function start(asks: string, copyOf: Notebook | undefined): void {
    const id = askAnother(shop, copyOf ? { ...copyOf, asks } : { asks, lines: {} });
    goTo(id);
  }

  const goTo = (id: string): void => {
    location.hash = `${routeOf(place)}/${encodeURIComponent(id)}`;
  };

  function listOf(openId: string | undefined): TemplateResult {
    return questionList({
      place,
      own: own(),
      openId,
      ours,
      asking: asking(),
      start,
      throwAway: (kept) => {
        throwAwayBook(shop, kept);
        redraw();
      },
    });
  }

  function footer(lines: Lines): TemplateResult {
    const shut = () => ask(undefined);
    const word = (id: string, says: string) =>
      html`<button class="word" type="button" aria-expanded=${asked === id ? "true" : "false"} @click=${() => ask(asked === id ? undefined : id)}>${says}</button>`;
    const renaming = asked?.startsWith("rename ") ? asked.slice(7) : undefined;
    return html`<p class="grid-actions">${word("line", "add a line")} ${word("case", "add a case")} ${word("note", "add a note")}</p>
      ${hiddenCases({ open: lines, attempt: attemptHere })}
      ${
        asked === "line"
          ? lineForm({
              open: lines,
              kind,
              setKind: (next) => {
                kind = next;
                redraw();
              },
              wrong,
              attempt,
              close: shut,
            })
          : nothing
      }
      ${asked === "case" ? caseForm({ open: lines, record: shop.record, wrong, attempt, close: shut }) : nothing}
      ${
        renaming === undefined
          ? nothing
          : form({
              id: "rename",
              title: `Rename the case ${renaming}`,
              blanks: blank("name", "name", { value: renaming }),
              does: "call it so",
              wrong,
              take: (written) => attempt(() => lines.renameCase(renaming, written("name"))),
              close: shut,
            })
      }`;
  }

  function content(id: string | undefined, says: readonly string[]): TemplateResult {
    const item = chosen(id);
    if (!item) {
      return html`<div class="sheet"><div class="head"><h1>${place}</h1>${props.undo()}</div>
        <p class="opening">No question of yours yet. A notebook of your own holds lines you name yourself, given or worked from each other, for as many cases as you like.</p>
        ${listOf(undefined)}</div>`;
    }
    const now = openedFor(item);
    const { kept } = now;
    if (!kept) {
      return html`<div class="sheet"><div class="head"><h1>${item.name}</h1>${props.undo()}</div>${listOf(item.id)}
        ${now.says.map((one) => html`<p class="because">${one}</p>`)}</div>`;
    }
    const lines = kept.open;
    const cases = lines.cases().filter(({ hidden }) => !hidden);
    const seen = cases.some(({ name }) => name === shownCase) ? shownCase : cases.find(({ base }) => base)?.name;
    return questionPage({
      kept: item,
      book: lines.notebook(),
      open: lines,
      system: shop.record.settings.units,
      working: kept.busy(),
      busy: typing.waiting,
      list: listOf(item.id),
      undo: props.undo(),
      says: [...says, ...said, ...now.says],
      asking: asking(),
      figures: [],
      grid: {
        open: lines,
        system: shop.record.settings.units,
        typing,
        shownCase: seen ?? "",
        showCase: (name) => {
          shownCase = name;
          redraw();
        },
        inHand,
        take: (next) => {
          inHand = next;
          redraw();
        },
        panel: () => nothing,
        says: (words) => {
          said = words === "" ? [] : [words];
          redraw();
        },
        caseActions: (name) =>
          caseActions({ open: lines, name, attempt: attemptHere, rename: (which) => ask(`rename ${which}`) }),
        redraw,
        footer: footer(lines),
      },
    });
  }

  return {
    content,
    title: (id) => chosen(id)?.name ?? place,
    goTo,
    follow() {
      const item = opened && itemOf(shop.record, "notebooks", opened.id);
      if (!opened || !item || item.notebook === opened.data) return;
      if (!opened.kept) {
        opened = open(item);
        return;
      }
      opened.data = item.notebook;
      opened.kept.show(mended(item.notebook).book);
    },
  };
}
