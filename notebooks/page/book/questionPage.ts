import { html, type TemplateResult } from "lit-html";
import type { Clause, Lines, Notebook } from "../../../lib/lines/index.ts";
import type { KeptNotebook } from "../../../lib/record/index.ts";
import { answer } from "../answer.ts";
import { type FigureProps, figureShown } from "../figureShown.ts";
import { grid } from "../grid/grid.ts";
import type { GridProps } from "../grid/types.ts";
import type { System } from "../showValue.ts";
import type { Asking } from "./asking.ts";
import { answerForm, notes, question } from "./texts.ts";

export interface QuestionPageProps {
  readonly kept: KeptNotebook;
  readonly book: Notebook;
  readonly open: Lines;
  readonly system: System;
  readonly working: boolean;
  readonly busy: boolean;
  readonly list: TemplateResult;
  readonly undo: TemplateResult;
  readonly says: readonly string[];
  /** What the lines said last. */
  readonly said: readonly string[];
  readonly asking: Asking;
  readonly grid: GridProps;
  readonly figures: readonly FigureProps[];
}

const clausesOf = ({ answer: said }: Notebook): readonly (string | Clause)[] =>
  typeof said === "string" ? [said] : (said ?? []);

/** One question of the maker's own: its answer, its figures, its lines in each case, its notes. */
export function questionPage(props: QuestionPageProps): TemplateResult {
  const { kept, book, open, system, working, busy, asking } = props;
  const lines = new Map(Object.entries(book.lines));
  return html`<div class="sheet">
      <div class="head">
        ${question(open, book, asking)}
        ${kept.invented ? html`<span class="boxed">Invented data</span>` : ""}
        ${props.undo}
      </div>
      ${props.list}
      ${props.says.map((says) => html`<p class="small said-news" role="status">${says}</p>`)}
      <div id="answer">${answer({ clauses: clausesOf(book), lines, result: (name) => resultOf(open, name), trial: (line, ...is) => props.grid.trials?.of({ open, line }, ...is), system, busy, working })}</div>
      ${answerForm(open, book, asking)}
    </div>
    ${props.figures.map(figureShown)}
    <section class="sheet" id="lines" aria-labelledby="lines-title">
      <h2 id="lines-title">Lines</h2>
      <p class="said-here" role="status">${props.said.join(" ")}</p>
      ${grid(props.grid)}
    </section>
    ${notes(open, book, asking)}`;
}

/** What a line of a sentence came to in the base; a name that is none comes to nothing. */
function resultOf(open: Lines, name: string): ReturnType<Lines["result"]> {
  try {
    return open.result(name);
  } catch (error) {
    return { state: "stopped", says: error instanceof Error ? error.message : String(error) };
  }
}
