import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import type { Given, Result } from "../../lib/lines/index.ts";
import type { Fact } from "../../lib/record/index.ts";
import { cutField, joinField } from "./fieldText.ts";
import { type System, unitOf } from "./showValue.ts";
import { unitChoices } from "./unitChoices.ts";
import { lineKey } from "./words.ts";

export interface FieldProps {
  readonly name: string;
  readonly line: Given;
  readonly fact: Fact | undefined;
  readonly result: Result;
  readonly system: System;
  /** Called with the new text; an empty one means that it is not known. */
  readonly change: (text: string) => void;
}

/** Esc puts back what stood there before; Enter keeps. Both leave the blank as leaving it by tab does. */
function onKey(event: KeyboardEvent, before: string): void {
  if (!(event.target instanceof HTMLInputElement)) return;
  if (event.key === "Escape") {
    event.target.value = before;
    event.target.blur();
  }
  if (event.key === "Enter") event.target.blur();
}

/** A write-on blank for a given: a number and its unit, or one word of a few. */
export function field({ name, line, fact, result, system, change }: FieldProps): TemplateResult {
  const key = lineKey(name, line);
  const text = fact?.text ?? line.text;
  if (line.choices) {
    const choices = line.choices.includes(text) || text === "" ? line.choices : [text, ...line.choices];
    return html`<select class="blank" id="given-${key}" data-line=${key} aria-label=${name}
      @change=${(event: Event) => event.target instanceof HTMLSelectElement && change(event.target.value)}>
      ${choices.map((choice) => html`<option value=${choice} ?selected=${choice === text}>${choice}</option>`)}
    </select>`;
  }
  const cut = cutField(text);
  const usual = unitOf(line, system);
  const unit = text === "" ? usual : cut.unit || (/[^\d\s.,/]/.test(cut.number) ? "" : usual);
  const stopped = result.state === "stopped";
  const keep = (typed: string, withUnit: string): void => {
    const next = joinField(typed, withUnit);
    if (next !== text) change(next);
  };
  return html`<input class="blank" id="given-${key}" data-line=${key} type="text" inputmode="decimal" autocomplete="off"
      aria-label=${name} aria-invalid=${stopped ? "true" : "false"} aria-describedby=${stopped ? `said-${key}` : nothing}
      .value=${live(cut.number)}
      @keydown=${(event: KeyboardEvent) => onKey(event, cut.number)}
      @change=${(event: Event) => event.target instanceof HTMLInputElement && keep(event.target.value, unit || usual)} />
    <select class="unit of" aria-label="Unit of ${name}" ?disabled=${unit === ""}
      @change=${(event: Event) => event.target instanceof HTMLSelectElement && keep(cut.number, event.target.value)}>
      ${unitChoices(line, unit).map((choice) => html`<option value=${choice} ?selected=${choice === unit}>${choice}</option>`)}
    </select>`;
}
