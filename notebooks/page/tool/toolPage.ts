import { html, nothing, type TemplateResult } from "lit-html";
import type { Clause, Lines, Notebook, Result } from "../../../lib/lines/index.ts";
import { answer } from "../answer.ts";
import type { Asking } from "../book/asking.ts";
import { notes } from "../book/texts.ts";
import { type FigureProps, figureShown } from "../figureShown.ts";
import { grid } from "../grid/grid.ts";
import type { GridProps } from "../grid/types.ts";
import type { System } from "../showValue.ts";
import { toolAtWork } from "./toolAtWork.ts";
import type { Extra } from "./types.ts";

export interface ToolPageProps {
  readonly book: Notebook;
  readonly open: Lines;
  readonly system: System;
  readonly working: boolean;
  readonly busy: boolean;
  readonly invented: boolean;
  readonly undo: TemplateResult;
  readonly says: readonly string[];
  /** What the lines said last. */
  readonly said: readonly string[];
  readonly asking: Asking;
  readonly grid: GridProps;
  readonly figures: readonly FigureProps[];
  readonly extras: readonly Extra[];
  readonly redraw: () => void;
}

const clausesOf = ({ answer: said }: Notebook): readonly (string | Clause)[] =>
  typeof said === "string" ? [said] : (said ?? []);

/** What a line of a sentence came to in the base; a name that is none comes to nothing. */
function resultOf(open: Lines, name: string): Result {
  try {
    return open.result(name);
  } catch (error) {
    return { state: "stopped", says: error instanceof Error ? error.message : String(error) };
  }
}

const section = ({ id, title, body }: Extra): TemplateResult =>
  html`<section class="sheet extra" id=${id} aria-labelledby="${id}-title"><h2 id="${id}-title">${title}</h2>${body}</section>`;

const fold = ({ id, title, body, folded }: Extra): TemplateResult =>
  html`<details class="fold" id=${id}><summary><h3>${title}</h3><span>${folded}</span><span class="word shut">unfold</span><span class="word open">fold</span></summary><div class="prose">${body}</div></details>`;

/** A notebook of the tool: its answer, figures, what it adds, its lines in each case, notes, folds. */
export function toolPage(props: ToolPageProps): TemplateResult {
  const { book, open, system, working, busy, asking, extras } = props;
  const lines = new Map(Object.entries(book.lines));
  const folds = extras.filter(({ folded }) => folded !== undefined);
  const standing = (where: NonNullable<Extra["stands"]>) =>
    extras.filter(({ folded, stands = "under the figures" }) => folded === undefined && stands === where).map(section);
  return html`<div class="sheet">
      <div class="head">
        <h1>${book.asks}</h1>
        ${props.invented ? html`<span class="boxed">Invented data</span>` : nothing}
        ${props.undo}
      </div>
      ${props.says.map((says) => html`<p class="small said-news" role="status">${says}</p>`)}
      <div id="answer">${answer({ clauses: clausesOf(book), lines, result: (name) => resultOf(open, name), trial: (line, ...is) => props.grid.trials?.of({ open, line }, ...is), system, busy, working })}</div>
      ${toolAtWork(open, props.redraw)}
    </div>
    ${standing("under the answer")}
    ${props.figures.map(figureShown)}
    ${standing("under the figures")}
    <section class="sheet" id="lines" aria-labelledby="lines-title">
      <h2 id="lines-title">Lines</h2>
      <p class="said-here" role="status">${props.said.join(" ")}</p>
      ${grid(props.grid)}
    </section>
    ${notes(open, book, asking)}
    ${standing("under the lines")}
    ${folds.length === 0 ? nothing : html`<div class="sheet folds">${folds.map(fold)}</div>`}`;
}
