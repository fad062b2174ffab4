import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import { tidyName } from "../../../lib/lines/index.ts";
import { unitOf } from "../writtenAs.ts";
import { refusal, setUnit } from "./edits.ts";
import { type Hold, take } from "./hold.ts";
import type { InHandProps } from "./types.ts";
import { unitsOffered } from "./unitEdit.ts";

const wordsOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

function rename(props: InHandProps, hold: Hold, typed: string): void {
  const { open, line, inCase, says, goTo, redraw } = props;
  const next = tidyName(typed);
  hold.refused = undefined;
  try {
    open.rename(line, next);
  } catch (error) {
    hold.refused = { field: "name", typed, why: wordsOf(error) };
    redraw();
    return;
  }
  if (next === line) {
    redraw();
    return;
  }
  take(open, next, inCase).wants = "name";
  says(`${line} is called ${next} now, in every formula`);
  goTo(next);
}

function changeUnit(props: InHandProps, hold: Hold, typed: string): void {
  const { open, line, system, says, redraw } = props;
  hold.refused = undefined;
  if (typed.trim() !== unitOf(open.line(line), system)) {
    const why = setUnit(open, line, typed, system);
    if (why === undefined) says(`${line} is shown in ${typed.trim() || "its usual unit"}`);
    else hold.refused = { field: "unit", typed, why };
  }
  redraw();
}

function remove({ open, line, says, close, redraw }: InHandProps): void {
  const refused = refusal(() => open.remove(line));
  if (refused === undefined) close();
  says(refused ?? `${line} is removed; undo brings it back`);
  redraw();
}

function small(
  props: InHandProps,
  hold: Hold,
  field: "name" | "unit",
  was: string,
  change: (typed: string) => void,
): TemplateResult {
  const refused = hold.refused?.field === field ? hold.refused : undefined;
  const { open, line } = props;
  const units = field === "unit" ? unitsOffered(open.cases().map(({ name }) => open.result(line, name))) : [];
  return html`<label for="in-hand-${field}">${field}</label>
    <input id="in-hand-${field}" class="blank" type="text" autocomplete="off" autocapitalize="off" spellcheck="false"
      list=${units.length > 0 ? "in-hand-units" : nothing}
      aria-invalid=${refused ? "true" : "false"} aria-describedby=${refused ? "in-hand-refused" : nothing}
      .value=${live(refused?.typed ?? was)}
      @change=${({ target }: Event) => target instanceof HTMLInputElement && change(target.value)}
      @keydown=${(event: KeyboardEvent) => {
        const { target } = event;
        if (event.key !== "Escape" || !(target instanceof HTMLInputElement) || target.value === was) return;
        event.preventDefault();
        event.stopPropagation();
        hold.refused = undefined;
        target.value = was;
        props.redraw();
      }} />
    ${units.length > 0 ? html`<datalist id="in-hand-units">${units.map((unit) => html`<option value=${unit}></option>`)}</datalist>` : nothing}`;
}

/** The line's own name, the unit that it is shown in, and removing it. */
export function aboutLine(props: InHandProps, hold: Hold): TemplateResult {
  const { open, line, system, close } = props;
  const { refused } = hold;
  return html`<div class="about-line">
    <span class="pair">${small(props, hold, "name", line, (typed) => rename(props, hold, typed))}</span>
    <span class="pair">${small(props, hold, "unit", unitOf(open.line(line), system), (typed) => changeUnit(props, hold, typed))}</span>
    <button class="word" type="button" @click=${() => remove(props)}>remove this line</button>
    <button class="word" type="button" @click=${close}>close</button>
    <p class="refused" id="in-hand-refused" role="alert">${refused ? html`<b class="stopped">stopped</b> ${refused.why}` : nothing}</p>
  </div>`;
}
