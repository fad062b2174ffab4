import { html, nothing, type TemplateResult } from "lit-html";
import { drawnMark } from "./drawnMark.ts";
import { firstCase } from "./hand.ts";
import type { CaseColumn } from "./rows.ts";

export interface HeadProps {
  readonly cases: readonly CaseColumn[];
  readonly shownCase: string;
  readonly caseActions: (name: string) => unknown;
}

/** What is said of a case under its name: on a phone that it is the one shown, that it is the base, where it is from. */
function saidOf(base: boolean, from: string | undefined, shown: boolean): TemplateResult | typeof nothing {
  if (!base && !shown && from === undefined) return nothing;
  const second = base && from !== undefined ? ", " : "";
  return html`<span class="said">${shown ? html`<span class="seen">shown${base ? ", " : ""}</span>` : nothing}${base ? "base" : ""}<span class="from">${second}${from ?? ""}</span></span>`;
}

/** A case's mark and name; on a phone a word that switches to it. */
function caseHead({ name, mark, base: isBase, from }: CaseColumn, index: number, props: HeadProps): TemplateResult {
  const at = firstCase + index;
  const shown = name === props.shownCase;
  const base = isBase && props.cases.length > 1;
  const one =
    name === ""
      ? html`<span class="hidden-from-sight">number</span>`
      : html`${drawnMark(mark)} <span class="case-name">${name}</span>`;
  return html`<div role="columnheader" class="case ${shown ? "shown" : ""}" tabindex="-1" aria-colindex=${at} data-at=${at} data-in-case=${name}>
    <span class="title">${one}</span>
    ${
      name === ""
        ? nothing
        : html`<button class="switch" type="button" data-show=${name} aria-pressed=${shown ? "true" : "false"}>${one}</button>`
    }
    ${saidOf(base, from?.says, shown && props.cases.length > 1)}
    <span class="actions">${props.caseActions(name)}</span>
  </div>`;
}

/** The heading row: what the columns are, and the cases' names. */
export function gridHead(props: HeadProps): TemplateResult {
  const { cases } = props;
  const at = firstCase + cases.length;
  return html`<div role="row" class="row head" data-head>
    <div role="columnheader" class="kind" tabindex="-1" aria-colindex="1" data-at="1">kind</div>
    <div role="columnheader" class="name" tabindex="-1" aria-colindex="2" data-at="2">line</div>
    <div role="columnheader" class="unit" tabindex="-1" aria-colindex="3" data-at="3">unit</div>
    ${cases.map((column, index) => caseHead(column, index, props))}
    ${cases.length < 2 ? nothing : html`<div role="columnheader" class="beside" tabindex="-1" aria-colindex=${at} data-at=${at}>side by side, 95 %, each row to its own scale</div>`}
  </div>`;
}
