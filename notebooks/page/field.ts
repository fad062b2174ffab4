import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import type { Given, Result } from "../../lib/lines/index.ts";
import type { Fact } from "../../lib/record/index.ts";
import { cutField, joinField } from "./fieldText.ts";
import { type System, unitOf } from "./showValue.ts";
import type { Typing } from "./Typing.ts";
import { unitChoices } from "./unitChoices.ts";
import { lineKey } from "./words.ts";

export interface FieldProps {
  readonly name: string;
  readonly line: Given;
  readonly fact: Fact | undefined;
  readonly result: Result;
  readonly system: System;
  readonly typing: Typing;
  /** Called with the new text; an empty one means that it is not known. */
  readonly change: (text: string) => void;
}

/** Text of each blank when the hand came to it: what Esc puts back. */
const whenFocused = new WeakMap<EventTarget, string>();

/** A write-on blank for a given: a number and its unit, or one word of a few. */
export function field({ name, line, fact, result, system, typing, change }: FieldProps): TemplateResult {
  const key = lineKey(name, line);
  const text = fact?.text ?? line.text;
  if (line.choices) {
    const choices = line.choices.includes(text) || text === "" ? line.choices : [text, ...line.choices];
    return html`<select class="blank" id="given-${key}" data-line=${key} aria-label=${name}
      @change=${(event: Event) => event.target instanceof HTMLSelectElement && change(event.target.value)}>
      ${choices.map((choice) => html`<option value=${choice} ?selected=${choice === text}>${choice}</option>`)}
    </select>`;
  }
  const stopped = result.state === "stopped";
  // What could not be read stays whole in its blank, so that it can be mended there.
  const cut = stopped ? { number: text, unit: "" } : cutField(text);
  const usual = unitOf(line, system);
  const unit = text === "" ? usual : cut.unit || (/[^\d\s.,/]/.test(cut.number) ? "" : usual);
  const keep = (typed: string, withUnit: string): void => {
    const next = joinField(typed, withUnit);
    if (next !== text) change(next);
  };
  const keepTyped = (typed: string): void => keep(typed, unit || usual);
  const onInput = (event: Event): void => {
    const { target } = event;
    if (target instanceof HTMLInputElement) typing.typed(key, target.value, () => keepTyped(target.value));
  };
  const onKey = (event: KeyboardEvent): void => {
    const { target } = event;
    if (!(target instanceof HTMLInputElement)) return;
    if (event.key === "Escape") {
      typing.drop();
      const before = whenFocused.get(target) ?? text;
      target.value = cutField(before).number;
      if (before !== text) change(before);
      target.blur();
    }
    if (event.key === "Enter") target.blur();
  };
  return html`<input class="blank" id="given-${key}" data-line=${key} type="text" inputmode="decimal" autocomplete="off"
      aria-label=${name} aria-invalid=${stopped ? "true" : "false"} aria-describedby=${stopped ? `said-${key}` : nothing}
      .value=${live(typing.textIn(key) ?? cut.number)}
      @focus=${({ target }: FocusEvent) => target && whenFocused.set(target, text)}
      @input=${onInput}
      @blur=${() => typing.left()}
      @keydown=${onKey} />
    <select class="unit of" aria-label="Unit of ${name}" ?disabled=${unit === ""}
      @change=${(event: Event) => event.target instanceof HTMLSelectElement && keep(cut.number, event.target.value)}>
      ${unitChoices(line, unit).map((choice) => html`<option value=${choice} ?selected=${choice === unit}>${choice}</option>`)}
    </select>`;
}
