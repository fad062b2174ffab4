import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import type { Completion } from "../../../lib/lines/index.ts";
import { checked, type Wrong } from "./checked.ts";
import { keepFormula } from "./edits.ts";
import { type Hold, letGo } from "./hold.ts";
import { offers, taken, takesFirst } from "./offers.ts";
import type { InHandProps } from "./types.ts";
import { wrongShown } from "./wrongShown.ts";

const inputId = "in-hand-formula";
const listId = "in-hand-offers";
const optionId = (place: number): string => `in-hand-offer-${place}`;

interface Field {
  readonly props: InHandProps;
  readonly hold: Hold;
  readonly kept: string;
  readonly text: string;
  readonly wrong: boolean;
  readonly found: readonly Completion[];
  /** Which of what is offered is chosen; -1 for none. */
  readonly at: number;
}

function fieldOf(props: InHandProps, hold: Hold): Field {
  const { open, line, names } = props;
  const kept = open.text(line);
  const text = hold.draft ?? kept;
  const wrong = checked(open, line, text, names) !== undefined;
  const found = hold.listed ? offers(open, props, text, hold.caret, names) : [];
  const first = takesFirst(found, hold.caret, wrong) ? 0 : -1;
  return { props, hold, kept, text, wrong, found, at: Math.min(hold.chosen ?? first, found.length - 1) };
}

const inputOf = (): HTMLInputElement | undefined =>
  document.querySelector<HTMLInputElement>(`#${inputId}`) ?? undefined;

/** Writes a text into the field, with the caret where the hand goes on. */
function write({ props, hold }: Field, text: string, caret: number): void {
  hold.draft = text;
  hold.caret = caret;
  hold.listed = false;
  hold.chosen = undefined;
  props.redraw();
  const input = inputOf();
  if (!input) return;
  input.value = text;
  input.focus();
  input.setSelectionRange(caret, caret);
}

function keep({ props, hold, kept, text }: Field): void {
  const { open, line, inCase, says, redraw } = props;
  says(text === kept ? "nothing was changed" : keepFormula(open, line, inCase, text));
  hold.listed = false;
  // What was refused stays to be read and mended.
  if (open.text(line) === text) letGo(hold);
  redraw();
}

function putBack({ props, hold, kept }: Field): void {
  letGo(hold);
  props.says(`put back: ${props.line} is ${kept}`);
  props.redraw();
}

function onKey(event: KeyboardEvent, field: Field): void {
  if (event.isComposing) return;
  const { props, hold, found, at } = field;
  const chosen = found[at];
  if (event.key === "ArrowDown" || event.key === "ArrowUp") {
    if (found.length === 0) {
      hold.listed = true;
      hold.chosen = event.key === "ArrowDown" && !event.altKey ? 0 : undefined;
    } else if (event.key === "ArrowDown") hold.chosen = (at + 1) % found.length;
    else hold.chosen = at <= 0 ? found.length - 1 : at - 1;
    props.redraw();
  } else if ((event.key === "Enter" || (event.key === "Tab" && !event.shiftKey)) && chosen) {
    const next = taken(field.text, chosen);
    write(field, next.text, next.caret);
  } else if (event.key === "Enter") keep(field);
  else if (event.key === "Escape" && found.length > 0) {
    hold.listed = false;
    hold.chosen = undefined;
    props.redraw();
  } else if (event.key === "Escape" && hold.draft !== undefined && hold.draft !== field.kept) putBack(field);
  else return;
  event.preventDefault();
  event.stopPropagation();
}

function onInput({ target }: Event, props: InHandProps, hold: Hold): void {
  if (!(target instanceof HTMLInputElement)) return;
  hold.draft = target.value;
  hold.caret = target.selectionStart ?? target.value.length;
  hold.listed = true;
  hold.chosen = undefined;
  props.redraw();
}

/** The caret was moved: what is offered goes with it. */
function onMove({ target }: Event, props: InHandProps, hold: Hold): void {
  if (!(target instanceof HTMLInputElement) || (target.selectionStart ?? 0) === hold.caret) return;
  hold.caret = target.selectionStart ?? 0;
  if (hold.listed) props.redraw();
}

function onLeave(event: FocusEvent, props: InHandProps, hold: Hold): void {
  if (!hold.listed) return;
  if (event.relatedTarget instanceof Element && event.relatedTarget.closest(`#${listId}`)) return;
  hold.listed = false;
  props.redraw();
}

function list({ props, hold, found, at }: Field): TemplateResult {
  return html`<ul role="listbox" id=${listId} class="offers" aria-label="What could be written here" ?hidden=${found.length === 0}>
    ${found.map(
      (one, place) => html`<li role="option" id=${optionId(place)} aria-selected=${place === at ? "true" : "false"}
        @pointerdown=${(event: Event) => event.preventDefault()}
        @click=${() => {
          const field = fieldOf(props, hold);
          const next = taken(field.text, one);
          write(field, next.text, next.caret);
        }}><span class="offer">${one.name}</span> <span class="faint">${one.says}</span></li>`,
    )}
  </ul>`;
}

/** What is wrong, unless it is that a name is not written to its end: what it could be stands there already. */
function errorShown({ props, text, found }: Field): Wrong | undefined {
  const wrong = checked(props.open, props.line, text, props.names);
  const [first] = found;
  return first && wrong?.at !== undefined && wrong.at >= first.from ? undefined : wrong;
}

/** The formula of the line in hand in a text field, with what could be written and what is wrong as it is typed. */
export function formulaField(props: InHandProps, hold: Hold): TemplateResult {
  // The page is drawn once a frame: what was typed since counts too.
  const now = (): Field => fieldOf(props, hold);
  const field = now();
  const { kept, text, found, at } = field;
  const changed = text !== kept;
  const wrong = changed ? errorShown(field) : undefined;
  const everywhere = props.open.cases().length > 1 ? " in every case" : "";
  return html`<div class="formula">
    <label for=${inputId}><span class="called">${props.line}</span> is</label>
    <input id=${inputId} class="writing" type="text" role="combobox" autocomplete="off" autocapitalize="off" spellcheck="false"
      aria-autocomplete="list" aria-haspopup="listbox" aria-controls=${listId} aria-expanded=${found.length > 0 ? "true" : "false"}
      aria-activedescendant=${at >= 0 ? optionId(at) : nothing}
      aria-invalid=${wrong ? "true" : "false"} aria-describedby=${wrong ? "in-hand-wrong in-hand-keys" : "in-hand-keys"}
      .value=${live(text)}
      @input=${(event: Event) => onInput(event, props, hold)}
      @keydown=${(event: KeyboardEvent) => onKey(event, now())}
      @keyup=${(event: Event) => onMove(event, props, hold)}
      @click=${(event: Event) => onMove(event, props, hold)}
      @focusout=${(event: FocusEvent) => onLeave(event, props, hold)} />
    ${list(field)}
    <div aria-live="polite">${wrong ? wrongShown("in-hand-wrong", text, wrong, (next) => write(now(), next, next.length)) : nothing}</div>
    <p class="small faint keys" id="in-hand-keys">${changed ? html`<span>Was ${kept}.</span> ` : nothing}<span class="by-key">Enter keeps it${everywhere}. Esc puts it back.</span></p>
    <p class="does"><button class="word" type="button" @click=${() => keep(now())}>keep${everywhere}</button>
      <button class="word" type="button" ?disabled=${!changed} @click=${() => putBack(now())}>put back</button></p>
  </div>`;
}
