import { html, nothing, type TemplateResult } from "lit-html";

/** What was written into a form, by the names of its blanks. */
export type Written = (name: string) => string;

export interface FormProps {
  /** For machines and labels: "line", "case". */
  readonly id: string;
  readonly title: string;
  readonly blanks: unknown;
  /** What the button says. */
  readonly does: string;
  /** Why what was written last could not be taken. */
  readonly wrong: string | undefined;
  readonly take: (written: Written) => void;
  readonly close: () => void;
}

/** A form that opens in place: Enter takes it, Esc puts it away. */
export function form({ id, title, blanks, does, wrong, take, close }: FormProps): TemplateResult {
  const submitted = (event: SubmitEvent): void => {
    event.preventDefault();
    if (!(event.target instanceof HTMLFormElement)) return;
    const data = new FormData(event.target);
    take((name) => {
      const value = data.get(name);
      return typeof value === "string" ? value.trim() : "";
    });
  };
  const key = (event: KeyboardEvent): void => {
    if (event.key !== "Escape") return;
    event.stopPropagation();
    close();
  };
  return html`<form class="asked" id="ask-${id}" aria-label=${title} @submit=${submitted} @keydown=${key}>
    <h3>${title}</h3>
    <div class="blanks">${blanks}</div>
    ${wrong === undefined ? nothing : html`<p class="because" role="alert"><b>stopped</b> ${wrong}</p>`}
    <p class="does"><button class="word" type="submit">${does}</button> <button class="word" type="button" @click=${close}>never mind</button></p>
  </form>`;
}

export interface BlankOptions {
  readonly value?: string;
  readonly about?: string;
  readonly wide?: boolean;
  readonly list?: readonly string[];
}

/** One blank of a form with its label. */
export function blank(
  name: string,
  label: string,
  { value = "", about, wide, list }: BlankOptions = {},
): TemplateResult {
  return html`<label class=${wide ? "wide" : ""}><span>${label}</span><input class="blank" name=${name} type="text" autocomplete="off" spellcheck="false"
      .value=${value} list=${list ? `list-${name}` : nothing} />
    ${list ? html`<datalist id="list-${name}">${list.map((one) => html`<option value=${one}></option>`)}</datalist>` : nothing}
    ${about ? html`<span class="faint small">${about}</span>` : nothing}</label>`;
}

export interface Choice {
  readonly value: string;
  readonly says: string;
}

/** A choice of a few; `chosen` stands at first. */
export function choose(
  name: string,
  label: string,
  choices: readonly Choice[],
  chosen = "",
  changed?: (value: string) => void,
): TemplateResult {
  const onChange = (event: Event) => event.target instanceof HTMLSelectElement && changed?.(event.target.value);
  return html`<label><span>${label}</span><select class="blank" name=${name} @change=${onChange}>
    ${choices.map(({ value, says }) => html`<option value=${value} ?selected=${value === chosen}>${says}</option>`)}
  </select></label>`;
}

/** Names as choices that say themselves. */
export const plainly = (names: readonly string[]): readonly Choice[] =>
  names.map((name) => ({ value: name, says: name }));

/** An error's words as a maker reads them. */
export function wordsOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
