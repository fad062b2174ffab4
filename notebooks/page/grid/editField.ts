import { html, type TemplateResult } from "lit-html";
import type { CellProps } from "./cell.ts";
import type { Edit } from "./hand.ts";

/** The blank of a given while it is changed in its place: a text, or one word of a few. */
export function editField({ name, line, column }: CellProps, { begin }: Edit): TemplateResult {
  const label = column.name === "" ? name : `${name}, ${column.name}`;
  const choices = line.kind === "given" ? line.choices : undefined;
  if (choices) {
    const all = choices.includes(begin) || begin === "" ? choices : [begin, ...choices];
    return html`<select class="blank wide" data-blank aria-label=${label} aria-describedby="grid-edit">
      ${begin === "" ? html`<option value="" selected></option>` : ""}
      ${all.map((choice) => html`<option value=${choice} ?selected=${choice === begin}>${choice}</option>`)}
    </select>`;
  }
  return html`<input class="blank wide" data-blank type="text" autocomplete="off" autocapitalize="off" spellcheck="false"
    aria-label=${label} aria-describedby="grid-edit" .value=${begin} />`;
}
