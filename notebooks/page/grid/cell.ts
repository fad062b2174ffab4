import { html, nothing, type TemplateResult } from "lit-html";
import type { Line, Result, Trial } from "../../../lib/lines/index.ts";
import { interval95 } from "../../../lib/measure/index.ts";
import type { Value } from "../../../lib/measure/types.ts";
import { afterSign, withSign } from "../money.ts";
import { type System, shownIn, valueIn } from "../showValue.ts";
import { byTrial, shownByTrial } from "../trials/shown.ts";
import { lineKey } from "../words.ts";
import { type AmountShown, amountShown, differenceShown } from "./amounts.ts";
import { editField } from "./editField.ts";
import { givenShown } from "./givenShown.ts";
import type { Edit } from "./hand.ts";
import type { CaseColumn } from "./rows.ts";

export interface CellProps {
  readonly name: string;
  readonly line: Line;
  readonly unit: string;
  readonly system: System;
  readonly column: CaseColumn;
  readonly at: number;
  readonly result: Result;
  readonly base: Result | undefined;
  /** Where its ± will not do. */
  readonly trial: Trial | undefined;
  readonly text: string;
  readonly own: boolean;
  /** Seen on a phone. */
  readonly shown: boolean;
  readonly edit: Edit | undefined;
}

/** A spread in its own column: "±0.3", or its two sides stacked. */
const spread = ({ spread: words, sides }: AmountShown): TemplateResult | typeof nothing => {
  if (words === "") return nothing;
  if (!sides) return html`${words}`;
  return html`<span class="stacked"><span>${sides.up}</span><span class="hidden-from-sight">/</span><span>${sides.down}</span></span>`;
};

/** What a line came to, for people and, in SI with its 95 % interval, for machines. */
function amount(props: CellProps, value: Value, before: boolean, text: string, tail: unknown): TemplateResult {
  const { name, line, column } = props;
  const key = lineKey(name, line);
  const [low, high] = interval95(value);
  const output = before
    ? html`<output class="number" aria-live="off" data-line=${key} data-case=${column.name}>${text}</output>`
    : html`<output class="number" aria-live="off" data-line=${key} data-case=${column.name} data-value=${value.value} data-low=${low} data-high=${high}>${text}</output>`;
  return html`${output}<span class="spread">${tail}</span>`;
}

/** The case less its base, beneath its number. */
function difference({ result, base, column, unit, system }: CellProps): TemplateResult | typeof nothing {
  const [mine, other] = [valueIn(result), base && valueIn(base)];
  if (column.base || !mine || !other) return nothing;
  const less = differenceShown(mine, other, unit, system);
  if (!less) return nothing;
  return html`<span class="number less"><span class="hidden-from-sight">less the base </span>${withSign(less.number, unit)}</span><span class="spread less">${less.exactly ? "exactly" : spread(less)}</span>`;
}

function givenCell(props: CellProps): TemplateResult {
  const { line, result, unit, system, text, edit } = props;
  if (edit) return editField(props, edit);
  if (line.kind !== "given") return html``;
  const shown = givenShown(line, text, result, unit);
  const value = valueIn(result);
  const own = props.own ? html`<span class="hidden-from-sight"> its own</span>` : nothing;
  if (!value) {
    const words = thingWords(result, shown.text);
    const empty = words === "" ? html`<span class="hidden-from-sight">not given</span>` : nothing;
    return html`<span class="blank wide">${words}${empty}</span>${own}`;
  }
  const inUnit = shown.inItsUnit ? unit : (result.state === "settled" && result.written?.unit) || unit;
  const amountOf = amountShown(value, inUnit, system);
  const plain = text.trim() !== "" && !/±/u.test(text) && !shown.text.includes("±");
  const number = plain ? shown.text : amountOf.number;
  const inWords = plain && !shown.inItsUnit ? number : withSign(number, inUnit);
  const after = plain || shown.inItsUnit ? "" : inUnit.startsWith("$") ? afterSign(inUnit) : ` ${inUnit}`;
  return html`<span class="blank">${amount(props, value, false, inWords + after, spread(amountOf))}</span>${difference(props)}${own}`;
}

/** What stands where a line is no amount: words, yes or no. */
function thingWords(result: Result, text: string): string {
  if (result.state !== "settled") return text;
  const { value } = result;
  if (typeof value === "string") return value;
  if (typeof value === "boolean") return value ? "yes" : "no";
  return text === "" ? "more than a number" : text;
}

const stateWords: Readonly<Record<Result["state"], string>> = {
  settled: "",
  working: "working",
  "not given": "not given",
  stopped: "stopped",
  waits: "waits",
};

function workedCell(props: CellProps): TemplateResult {
  const { result, unit, system, line, trial } = props;
  const shown = shownIn(result);
  if (!shown) {
    const words = result.state === "settled" ? thingWords(result, "") : stateWords[result.state];
    return html`<span class="wide ${result.state === "settled" ? "" : "faint"}">${words}</span>`;
  }
  const value = shownByTrial(shown.value, trial);
  const words = amountShown(value, unit, system);
  const plain = line.kind !== "given" && line.plain === true;
  return html`${amount(props, value, shown.before, withSign(words.number, unit), plain ? nothing : spread(words))}${byTrial(trial)}${
    shown.before ? html`<span class="number less said-before">before</span>` : difference(props)
  }`;
}

/** One line in one case: its value and ±, and beneath it the case less its base. */
export function cell(props: CellProps): TemplateResult {
  const { line, column, at, result, shown, edit } = props;
  const given = line.kind === "given";
  const state = result.state === "working" ? "before" : "";
  const classes = `case ${line.kind} ${state} ${shown ? "" : "elsewhere"} ${edit ? "editing" : ""}`;
  return html`<div role="gridcell" class=${classes} tabindex="-1" aria-colindex=${at} data-at=${at} data-in-case=${column.name}
    aria-readonly=${given ? "false" : "true"} aria-invalid=${given && result.state === "stopped" ? "true" : nothing}>${given ? givenCell(props) : workedCell(props)}</div>`;
}
