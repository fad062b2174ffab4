import { html, nothing, type TemplateResult } from "lit-html";
import type { Notebook } from "../../lib/lines/index.ts";
import type { LogReading, Question } from "../../lib/log/types.ts";
import type { KeptRun } from "../../lib/record/index.ts";
import { answer } from "./answer.ts";
import { atWork } from "./atWork.ts";
import { type FigureProps, figureShown } from "./figureShown.ts";
import { type LedgerProps, ledgers } from "./ledgers.ts";
import { type LogProps, logSection } from "./logSection.ts";
import { openEnds } from "./openEnds.ts";
import type { OpenedRun } from "./openedRun.ts";
import type { Trials } from "./trials/trials.ts";
import { type WaysInProps, waysIn } from "./waysIn.ts";

export interface RunPageProps extends WaysInProps {
  readonly book: Notebook;
  readonly run: KeptRun;
  readonly opened: OpenedRun;
  readonly reading: LogReading;
  readonly undo: TemplateResult;
  readonly ledger: Omit<LedgerProps, "lines" | "result" | "trial">;
  readonly log: LogProps;
  readonly figures: readonly FigureProps[];
  /** What stands in place of the ledgers, where other runs are beside; what can be done; what was said last. */
  readonly lines: { readonly grid: unknown; readonly footer: unknown; readonly said: string };
  readonly notes: unknown;
  readonly folds: readonly { readonly name: string; readonly finding: string; readonly body: unknown }[];
  readonly otherRuns: readonly KeptRun[];
  readonly show: (id: string) => void;
  readonly checked: () => void;
  readonly answerTo: (question: Question, answer: string) => void;
  readonly says: readonly string[];
  readonly trials: Trials;
}

const clausesOf = (book: Notebook): readonly (string | { readonly says: string })[] =>
  typeof book.answer === "string" ? [book.answer] : (book.answer ?? []);

const anotherRun = ({ otherRuns, show }: RunPageProps): TemplateResult | typeof nothing =>
  otherRuns.length === 0
    ? nothing
    : html`<label class="small">another run <select class="blank" @change=${(event: Event) => event.target instanceof HTMLSelectElement && event.target.value && show(event.target.value)}>
        <option value="" selected>pick one</option>
        ${otherRuns.map(({ id, name, invented }) => html`<option value=${id}>${name}${invented ? " (invented data)" : ""}</option>`)}
      </select></label>`;

function carriedOver({ run, checked }: RunPageProps): TemplateResult | typeof nothing {
  const names = Object.entries(run.facts).flatMap(([name, fact]) =>
    fact.carriedOver && fact.text !== "" ? [name] : [],
  );
  if (names.length === 0) return nothing;
  return html`<p class="small carried"><em>carried over, check:</em> ${names.join(", ")}.
    <a href="#lines" @click=${(event: Event) => {
      event.preventDefault();
      document.querySelector("#lines")?.scrollIntoView();
    }}>look at them</a> <button class="word" type="button" @click=${checked}>they hold for this run</button></p>`;
}

/** One run: the answer, the figures, the lines, the log, and folded how it was worked out. */
export function runPage(props: RunPageProps): TemplateResult {
  const { book, run, opened, ledger, figures, folds, trials } = props;
  const trial: LedgerProps["trial"] = (line, ...is) => trials.of({ open: opened.open, line }, ...is);
  const lines = { ...ledger, lines: opened.lines, result: opened.result, trial };
  return html`<div class="sheet">
      <div class="head">
        <h1>${run.name}</h1>
        ${run.invented ? html`<span class="boxed">Invented data</span>` : nothing}
        ${anotherRun(props)}
        ${props.undo}
      </div>
      ${props.says.map((says) => html`<p class="small said-news" role="status">${says}</p>`)}
      <div id="answer">${answer({ clauses: clausesOf(book), lines: opened.lines, result: opened.result, trial, system: ledger.system, busy: ledger.busy, working: opened.busy(), quiet: run.log.entries.length === 0 })}</div>
      ${atWork(opened)}
      ${carriedOver(props)}
      ${waysIn(props)}
    </div>
    ${openEnds({ reading: props.reading, answerTo: props.answerTo })}
    ${figures.map(figureShown)}
    <section class="sheet" id="lines" aria-labelledby="lines-title">
      <h2 id="lines-title">Lines</h2>
      <p class="said-here" role="status">${props.lines.said}</p>
      ${props.lines.grid ?? ledgers(lines)}
      ${props.lines.footer}
    </section>
    ${props.notes}
    ${logSection(props.log)}
    <div class="sheet folds">
      ${folds.map(
        ({ name, finding, body }) =>
          html`<details class="fold"><summary><h3>${name}</h3><span>${finding}</span><span class="word shut">unfold</span><span class="word open">fold</span></summary><div class="prose">${body}</div></details>`,
      )}
    </div>`;
}
