import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import type { Given, Lines } from "../../../lib/lines/index.ts";
import type { Knowing } from "../../../lib/measure/types.ts";
import { isValue } from "../shownIn.ts";
import { keepGiven, knownOf, setKnown } from "./edits.ts";
import { type Hold, letGo } from "./hold.ts";
import type { InHandProps } from "./types.ts";

const ways: readonly Knowing[] = ["weighed", "measured", "guessed", "from the label", "published"];

/** Whose the text is: the case's own, or what all cases share. */
export function whose(open: Lines, line: string, inCase: string): string {
  if (inCase === "") return "";
  const own = open.own(line, inCase);
  const shared = open.text(line).trim() || "not given";
  if (!own) return "As all cases have it that have none of their own.";
  const same = own.sameAs === undefined ? "" : ` It is the very reading of ${own.sameAs}.`;
  const found = open.line(line);
  const written = found.kind === "given" ? found.text.trim() || "not given" : shared;
  return `${inCase} has its own; all others that have none share: ${written}.${same}`;
}

/** Whether what stands there is a thing that no text can hold. */
function isThing(open: Lines, line: string, inCase: string): boolean {
  const result = open.result(line, inCase);
  return result.state === "settled" && typeof result.value === "object" && !isValue(result.value);
}

function keep(props: InHandProps, hold: Hold, typed: string, everywhere: boolean): void {
  letGo(hold);
  props.says(keepGiven(props.open, props, typed, everywhere));
  props.redraw();
}

function drop(props: InHandProps, hold: Hold): void {
  letGo(hold);
  props.redraw();
}

function blank(props: InHandProps, hold: Hold, line: Given, kept: string): TemplateResult {
  const text = hold.draft ?? kept;
  if (line.choices) {
    const choices = line.choices.includes(text) ? line.choices : [text, ...line.choices];
    return html`<select id="in-hand-given" class="blank" @change=${({ target }: Event) => {
      if (target instanceof HTMLSelectElement) keep(props, hold, target.value, false);
    }}>${choices.map((one) => html`<option value=${one} ?selected=${one === text}>${one}</option>`)}</select>`;
  }
  const result = props.open.result(props.line, props.inCase);
  return html`<input id="in-hand-given" class="writing given" type="text" autocomplete="off" autocapitalize="off" spellcheck="false"
    aria-describedby="in-hand-keys" aria-invalid=${result.state === "stopped" ? "true" : "false"}
    .value=${live(text)}
    @input=${({ target }: Event) => {
      if (target instanceof HTMLInputElement) hold.draft = target.value;
      props.redraw();
    }}
    @keydown=${(event: KeyboardEvent) => {
      if (event.isComposing) return;
      if (event.key === "Enter") keep(props, hold, hold.draft ?? kept, event.ctrlKey || event.metaKey);
      else if (event.key === "Escape" && hold.draft !== undefined && hold.draft !== kept) drop(props, hold);
      else return;
      event.preventDefault();
      event.stopPropagation();
    }} />`;
}

function knownField({ open, line: name, inCase, redraw }: InHandProps, line: Given): TemplateResult | typeof nothing {
  const result = open.result(name, inCase);
  const amount = result.state === "settled" && isValue(result.value);
  if (line.choices || line.exact || !amount) return nothing;
  const known = knownOf(open, name, inCase) ?? "measured";
  return html`<label class="known-how">known how <select class="blank" @change=${({ target }: Event) => {
    const picked = ways.find((way) => target instanceof HTMLSelectElement && way === target.value);
    if (picked) setKnown(open, name, inCase, picked);
    redraw();
  }}>${ways.map((way) => html`<option value=${way} ?selected=${way === known}>${way}</option>`)}</select></label>`;
}

/** The given in hand: its text for this case or for all, whose it is, and how it is known. */
export function givenField(props: InHandProps, hold: Hold, line: Given): TemplateResult {
  const { open, line: name, inCase } = props;
  if (isThing(open, name, inCase))
    return html`<p class="formula">${name} is more than a text can hold: it is changed where it was made.</p>`;
  const kept = open.text(name, inCase);
  const text = hold.draft ?? kept;
  const changed = text !== kept;
  const own = inCase !== "" && open.own(name, inCase) !== undefined;
  const alone = inCase === "";
  // The page is drawn once a frame: what was typed since counts too.
  const now = (): string => hold.draft ?? open.text(name, inCase);
  return html`<div class="formula">
    <label for="in-hand-given"><span class="called">${name}</span>${alone ? nothing : html` of ${inCase}`} is</label>
    ${blank(props, hold, line, kept)}
    ${knownField(props, line)}
    <p class="small faint keys" id="in-hand-keys">${changed ? html`<span>Was ${kept || "not given"}.</span> ` : nothing}<span>${whose(open, name, inCase)}</span>
      ${line.choices ? nothing : html`<span class="by-key">Enter keeps it${alone ? "" : ` for ${inCase} alone, Ctrl+Enter in every case`}. Esc puts it back.</span>`}</p>
    <p class="does">${line.choices ? nothing : html`<button class="word" type="button" @click=${() => keep(props, hold, now(), false)}>${alone ? "keep" : `keep for ${inCase}`}</button>`}
      ${alone ? nothing : html`<button class="word" type="button" @click=${() => keep(props, hold, now(), true)}>keep in every case</button>`}
      ${
        own
          ? html`<button class="word" type="button" @click=${() => {
              letGo(hold);
              open.putBack(name, inCase);
              props.says(`${name} of ${inCase} is as in all cases: ${open.text(name, inCase) || "not given"}`);
              props.redraw();
            }}>as in all cases</button>`
          : nothing
      }
      ${line.choices ? nothing : html`<button class="word" type="button" ?disabled=${!changed} @click=${() => drop(props, hold)}>put back</button>`}</p>
  </div>`;
}
