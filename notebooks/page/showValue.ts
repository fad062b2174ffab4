import { html, nothing, type TemplateResult } from "lit-html";
import type { Given, Line, Worked } from "../../lib/lines/index.ts";
import { formatWithSpread, interval95, type Shown } from "../../lib/measure/index.ts";
import type { Value } from "../../lib/measure/types.ts";

export { isValue, shownIn, valueIn } from "./shownIn.ts";

export type System = "US" | "metric";

/** The unit in which the page shows a line in this system. */
export function unitOf(line: Line, system: System): string {
  const { unit, metricUnit }: Given | Worked = line;
  return (system === "metric" ? (metricUnit ?? unit) : unit) ?? "";
}

/** Sides that differ by less than this share are shown as one ±, the wider of the two. */
const nearlyEqual = 0.35;

/** The value with one half-width for both sides, where they nearly agree: easier to read, never narrower. */
export function evened(value: Value): Value {
  const [low, high] = interval95(value);
  const [below, above] = [value.value - low, high - value.value];
  const wider = Math.max(below, above);
  return Math.min(below, above) > (1 - nearlyEqual) * wider
    ? { ...value, interval95: [value.value - wider, value.value + wider] }
    : value;
}

/** A number with its spread as the page writes it. Minutes are never rounded to tens: "50 of the 45 minutes" is none. */
export function written(value: Value, unit: string, system: System): Shown {
  const even = evened(value);
  const [low, high] = interval95(even);
  const wide = unit === "min" && Math.max(even.value - low, high - even.value) > 9 * 60;
  return formatWithSpread(even, unit, { system, ...(wide ? { decimals: 0 } : {}) });
}

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
