import { html, nothing, type TemplateResult } from "lit-html";
import type { Lines } from "../../../lib/lines/index.ts";

export interface CaseActionsProps {
  readonly open: Lines;
  readonly name: string;
  /** Runs an edit; says what is wrong where it throws. */
  readonly attempt: (edit: () => void) => void;
  /** Opens the blank for another name. */
  readonly rename: (name: string) => void;
}

/** Small words under a case's name: what can be done with the case. */
export function caseActions({ open, name, attempt, rename }: CaseActionsProps): TemplateResult | typeof nothing {
  const cases = open.cases();
  const at = cases.findIndex((one) => one.name === name);
  const self = cases[at];
  if (!self || name === "") return nothing;
  const word = (says: string, edit: () => void) =>
    html`<button class="word" type="button" aria-label=${`${says}: ${name}`} @click=${() => attempt(edit)}>${says}</button>`;
  const [before, after, behind] = [cases[at - 1], cases[at + 1], cases[at + 2]];
  const others = cases.filter((one) => one.name !== name);
  return html`<details class="case-words"><summary aria-label=${`change the case ${name}`}><span class="word">change</span></summary><div>
    <button class="word" type="button" aria-label=${`rename: ${name}`} @click=${() => rename(name)}>rename</button>
    ${self.base ? nothing : html`${word("make it the base", () => open.setBase(name))} ${word("hide", () => open.hideCase(name, true))}`}
    ${before ? word("move earlier", () => open.moveCase(name, before.name)) : nothing}
    ${after ? word("move later", () => open.moveCase(name, behind?.name)) : nothing}
    ${
      others.length === 0
        ? nothing
        : html`<label>copy givens from <select class="blank" @change=${(event: Event) => {
            if (!(event.target instanceof HTMLSelectElement) || event.target.value === "") return;
            const from = event.target.value;
            event.target.value = "";
            attempt(() => open.copyGivens(from, name));
          }}><option value="" selected>pick one</option>${others.map((one) => html`<option value=${one.name}>${one.name}</option>`)}</select></label>
        ${word("remove", () => open.removeCase(name))}`
    }
  </div></details>`;
}

/** Words that bring back the cases that are kept and not shown. */
export function hiddenCases({
  open,
  attempt,
}: Pick<CaseActionsProps, "open" | "attempt">): TemplateResult | typeof nothing {
  const hidden = open.cases().filter((one) => one.hidden);
  if (hidden.length === 0) return nothing;
  return html`<p class="small">Hidden: ${hidden.map(
    ({ name }) =>
      html`<button class="word" type="button" @click=${() => attempt(() => open.hideCase(name, false))}>show ${name}</button> `,
  )}</p>`;
}

/** The same where cases are runs: nothing of them is changed, only what stands beside what. */
export function runActions({ open, name, attempt }: Omit<CaseActionsProps, "rename">): TemplateResult | typeof nothing {
  const self = open.cases().find((one) => one.name === name);
  if (!self || self.base) return nothing;
  const word = (says: string, edit: () => void) =>
    html`<button class="word" type="button" aria-label=${`${says}: ${name}`} @click=${() => attempt(edit)}>${says}</button>`;
  return html`<details class="case-words"><summary aria-label=${`change the case ${name}`}><span class="word">change</span></summary><div>
    ${word("open this run", () => open.setBase(name))} ${word("hide", () => open.hideCase(name, true))} ${word("put it away", () => open.removeCase(name))}
  </div></details>`;
}
