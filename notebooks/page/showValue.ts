import { html, nothing, type TemplateResult } from "lit-html";
import { interval95 } from "../../lib/measure/index.ts";
import type { Value } from "../../lib/measure/types.ts";

import { evened, type System, unitOf, unitOfAmount, written } from "./writtenAs.ts";

export { isValue, shownIn, valueIn } from "./shownIn.ts";

export { evened, type System, unitOf, unitOfAmount, written };

/** A spread beside its number: "±0.3", stacked where its sides differ, nothing where it is exact. */
export function spreadMark(value: Value, unit: string, system: System): TemplateResult | typeof nothing {
  const { spread, sides } = written(value, unit, system);
  if (spread === "exactly") return nothing;
  if (sides === undefined) return html`<span class="spread">${spread}</span>`;
  return html`<span class="spread stacked"><span>${sides.up}</span><span class="hidden-from-sight">/</span><span>${sides.down}</span></span>`;
}

/** A settled number for people and, in SI with its 95 % interval, for machines. */
export function output(
  key: string,
  value: Value,
  unit: string,
  system: System,
  classes = "",
  busy = false,
): TemplateResult {
  return outputAs(key, value, written(value, unit, system).number, classes, busy);
}

/** The same with words of its own for people: a limit at its safe end, or a number without its sign. */
export function outputAs(key: string, value: Value, shown: string, classes = "", busy = false): TemplateResult {
  // A number that is about to change stays legible, greyed, and machines find none.
  if (busy) return html`<output class="number before ${classes}" data-line=${key}>${shown}</output>`;
  const [low, high] = interval95(value);
  return html`<output class="number ${classes}" data-line=${key} data-value=${value.value} data-low=${low} data-high=${high}>${shown}</output>`;
}
