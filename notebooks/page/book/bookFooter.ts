import { html, nothing, type TemplateResult } from "lit-html";
import type { Lines, Notebook } from "../../../lib/lines/index.ts";
import type { ShopRecord } from "../../../lib/record/index.ts";
import type { System } from "../showValue.ts";
import type { Asking } from "./asking.ts";
import { hiddenCases } from "./caseActions.ts";
import { caseForm } from "./caseForm.ts";
import { figureForm } from "./figureForm.ts";
import { blank, choose, form, plainly } from "./form.ts";
import { lineForm } from "./lineForm.ts";
import { type Search, solveForm } from "./solveForm.ts";

export interface BookFooterProps {
  readonly open: Lines;
  readonly book: Notebook;
  readonly record: ShopRecord;
  readonly system: System;
  readonly asking: Asking;
  readonly search: Search | undefined;
  readonly setSearch: (search: Search | undefined) => void;
  /** Its cases are runs, and the run that is open is their base. */
  readonly runsOnly?: boolean;
  /** What else can be done with this notebook. */
  readonly more?: unknown;
}

const actions: readonly (readonly [id: string, says: string])[] = [
  ["line", "add a line"],
  ["case", "add a case"],
  ["solve", "solve for a line"],
  ["sweep", "sweep a given"],
  ["figure", "add a figure"],
  ["note", "add a note"],
];

function baseForm({ open, asking }: BookFooterProps): TemplateResult {
  const names = open.cases().map(({ name }) => name);
  return form({
    id: "base",
    title: "Another base",
    blanks: choose("base", "the others are compared with", plainly(names), open.cases().find(({ base }) => base)?.name),
    does: "compare with it",
    wrong: asking.wrong,
    take: (written) => asking.attempt(() => open.setBase(written("base"))),
    close: () => asking.ask(undefined),
  });
}

function renameForm({ open, asking }: BookFooterProps, name: string): TemplateResult {
  return form({
    id: "rename",
    title: `Rename the case ${name}`,
    blanks: blank("name", "name", { value: name }),
    does: "call it so",
    wrong: asking.wrong,
    take: (written) => asking.attempt(() => open.renameCase(name, written("name"))),
    close: () => asking.ask(undefined),
  });
}

function formOf(props: BookFooterProps): unknown {
  const { open, book, record, system, asking, search, setSearch } = props;
  const shut = () => asking.ask(undefined);
  const { form: id = "", wrong, attempt } = asking;
  if (id === "line")
    return lineForm({
      open,
      kind: asking.picked("kind") ?? "given",
      setKind: (kind) => asking.pick("kind", kind),
      wrong,
      attempt,
      close: shut,
    });
  if (id === "case") return caseForm({ open, record, wrong, attempt, close: shut, runsOnly: props.runsOnly === true });
  if (id === "solve") return solveForm({ open, system, asking, search, tell: setSearch });
  if (id === "sweep") return figureForm(open, book, asking, "a sweep");
  if (id === "figure") return figureForm(open, book, asking);
  if (id === "base") return baseForm(props);
  if (id.startsWith("rename ")) return renameForm(props, id.slice(7));
  return nothing;
}

/** What stands under a notebook's lines: what can be done with them, in words, and the form that is open. */
export function bookFooter(props: BookFooterProps): TemplateResult {
  const { open, asking } = props;
  const word = ([id, says]: readonly [string, string]) =>
    html`<button class="word" type="button" aria-expanded=${asking.form === id ? "true" : "false"} @click=${() => {
      props.setSearch(undefined);
      asking.ask(asking.form === id ? undefined : id);
    }}>${says}</button> `;
  const several = open.cases().length > 1 && !props.runsOnly;
  return html`<div class="book-footer"><p class="grid-actions">${actions.map(([id, says]) => word([id, id === "case" && props.runsOnly ? "put another run beside it" : says]))}${several ? word(["base", "another base"]) : nothing}${props.more ?? nothing}</p>
    ${hiddenCases({ open, attempt: asking.attemptHere })}
    ${formOf(props)}</div>`;
}
