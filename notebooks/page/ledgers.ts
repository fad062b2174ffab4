import { html, nothing, type TemplateResult } from "lit-html";
import type { Given, Line, Result, Trial, Worked } from "../../lib/lines/index.ts";
import { interval95, negate } from "../../lib/measure/index.ts";
import type { Knowing, Value } from "../../lib/measure/types.ts";
import type { Fact } from "../../lib/record/index.ts";
import { caution } from "./caution.ts";
import { field } from "./field.ts";
import { afterSign, withSign } from "./money.ts";
import { isValue, outputAs, type System, shownIn, spreadMark, unitOfAmount, written } from "./showValue.ts";
import type { Typing } from "./Typing.ts";
import { toldIn } from "./told.ts";
import { toldDrawn } from "./toldDrawn.ts";
import { byTrial, byTrialMeans, shownByTrial } from "./trials/shown.ts";
import { lineKey } from "./words.ts";

export interface LedgerProps {
  readonly lines: ReadonlyMap<string, Line>;
  readonly facts: Readonly<Record<string, Fact>>;
  readonly result: (name: string) => Result;
  /** The trial of a number whose ± will not do. */
  readonly trial?: ((name: string, line: Line, result: Result) => Trial | undefined) | undefined;
  readonly system: System;
  readonly typing: Typing;
  readonly busy: boolean;
  readonly change: (name: string, text: string) => void;
  readonly changeKnown: (name: string, known: Knowing) => void;
  /** The line that is opened in its place. */
  readonly inHand?: string | undefined;
  readonly take?: (line: string | undefined) => void;
  readonly panel?: (line: string) => unknown;
}

/** A line's name, which opens it in its place. */
function nameOf(name: string, says: string, { inHand, take }: LedgerProps): TemplateResult {
  if (!take) return html`<span>${says}</span>`;
  const open = inHand === name;
  return html`<span><button class="word name" type="button" aria-expanded=${open ? "true" : "false"} @click=${() => take(open ? undefined : name)}>${says}</button></span>`;
}

const panelOf = (name: string, { inHand, panel }: LedgerProps): TemplateResult | typeof nothing =>
  inHand === name && panel ? html`<div class="opened">${panel(name)}</div>` : nothing;

const waysOfKnowing: readonly Knowing[] = ["weighed", "measured", "guessed", "from the label", "published"];

const stoppedNote = (result: Result, key: string): TemplateResult | typeof nothing => {
  if (result.state === "stopped")
    return html`<span class="note stopped" id="said-${key}"><b>stopped</b> ${result.says}</span>`;
  if (result.state === "waits") return html`<span class="note">waits for ${result.for}</span>`;
  return nothing;
};

function knownMark(
  name: string,
  line: Given,
  { facts, result, system, changeKnown }: LedgerProps,
): TemplateResult | typeof nothing {
  const shown = result(name);
  if (line.choices || line.exact || shown.state !== "settled" || !isValue(shown.value)) return nothing;
  const known = facts[name]?.known ?? line.known ?? "measured";
  return html`<span class="note">
    <select class="known" aria-label="How ${name} is known" @change=${(event: Event) => {
      const picked = waysOfKnowing.find(
        (way) => event.target instanceof HTMLSelectElement && way === event.target.value,
      );
      if (picked) changeKnown(name, picked);
    }}>${waysOfKnowing.map((way) => html`<option value=${way} ?selected=${way === known}>${way}</option>`)}</select>
    ${spreadMark(shown.value, shown.written?.unit ?? unitOfAmount(line, shown.value, system), system)}
  </span>`;
}

function givenRow(name: string, line: Given, props: LedgerProps): TemplateResult {
  const key = lineKey(name, line);
  const result = props.result(name);
  return html`<div class="line" data-kind="given">
    ${props.take ? nameOf(name, name, props) : html`<label for="given-${key}">${name}</label>`}
    <span class="value">${field({ name, line, fact: props.facts[name], result, system: props.system, typing: props.typing, change: (text) => props.change(name, text) })}</span>
    ${knownMark(name, line, props)}
    ${props.facts[name]?.carriedOver && props.facts[name].text !== "" ? html`<em class="note">carried over, check</em>` : nothing}
    ${stoppedNote(result, key)}
    ${line.about ? html`<span class="note">${line.about}</span>` : nothing}
    ${panelOf(name, props)}
  </div>`;
}

/** Words beside a number that may lie on either side of 0. */
const eitherSide = (line: Worked, [low, high]: readonly [number, number]): TemplateResult | typeof nothing =>
  line.below !== undefined && low <= 0 && high >= 0
    ? html`<span class="note"><b>can't tell</b> which: its spread reaches from one side of nothing to the other</span>`
    : nothing;

/** How far the log drew a number from what was believed before it: a word, and a bar over a thin rule. */
function toldMark(value: Value): TemplateResult | typeof nothing {
  const told = toldIn(value);
  if (!told) return nothing;
  return html`<span class="told" title=${`before the log: ${told.from}`}>${toldDrawn(told, value)}</span>`;
}

/** A worked number in the ledger; its SI value stands beside it for machines once it has settled. */
export function workedRow(name: string, line: Worked, props: LedgerProps): TemplateResult | typeof nothing {
  const result = props.result(name);
  const key = lineKey(name, line);
  const shown = shownIn(result);
  if (result.state === "not given" || (line.rare && !shown)) return nothing;
  if (!shown) {
    return html`<div class="line" data-kind=${line.kind}>${nameOf(name, name, props)}<span class="value faint">${result.state === "working" ? "working" : "no number"}</span>${stoppedNote(result, key)}${panelOf(name, props)}</div>`;
  }
  const { before } = shown;
  const trial = props.trial?.(name, line, result);
  const value = shownByTrial(shown.value, trial);
  const unit = unitOfAmount(line, value, props.system);
  const turned = line.below !== undefined && value.value < 0;
  const inWords = turned ? negate(value) : value;
  const number = written(inWords, unit, props.system).number;
  return html`<div class="line" data-kind=${line.kind}>
    ${nameOf(name, (turned ? line.below : undefined) ?? name, props)}
    <span class="value ${before ? "before" : ""}">
      ${outputAs(key, value, withSign(number, unit), "", props.busy || before)}
      <span class="tolerance">${line.plain ? nothing : spreadMark(inWords, unit, props.system)}</span>
      <span class="of faint">${afterSign(unit)}${before ? html`<span class="hidden-from-sight"> before</span>` : nothing}</span>
    </span>
    ${trial ? html`<span class="note">${byTrial(trial)}</span>` : nothing}
    ${toldMark(value)}
    ${eitherSide(line, interval95(value))}
    ${line.caution ? html`<span class="note">${caution(line.caution)}</span>` : nothing}
    ${line.about ? html`<span class="note">${line.about}</span>` : nothing}
    ${panelOf(name, props)}
  </div>`;
}

function grouped<T extends Line>(
  rows: readonly (readonly [string, T])[],
  row: (name: string, line: T) => unknown,
): unknown[] {
  let group = "";
  return rows.flatMap(([name, line]) => {
    const heading =
      line.group !== undefined && line.group !== group ? [html`<div class="group">${line.group}</div>`] : [];
    group = line.group ?? group;
    return [...heading, row(name, line)];
  });
}

/** Given, fitted and worked lines as ledgers, side by side on a desk. */
export function ledgers(props: LedgerProps): TemplateResult {
  const shown = [...props.lines].filter(([, line]) => !line.hidden);
  const givens = shown.flatMap(([name, line]) => (line.kind === "given" ? [[name, line] as const] : []));
  const needed = givens.filter(([name, line]) => !line.rare || (props.facts[name]?.text ?? "") !== "");
  const rare = givens.filter((given) => !needed.includes(given));
  const work = shown.flatMap(([name, line]) => (line.kind === "worked" ? [[name, line] as const] : []));
  const fits = shown.flatMap(([name, line]) => (line.kind === "fitted" ? [[name, line] as const] : []));
  /** Said once for a ledger: a word in every row would push its unit out. */
  const grey = (rows: typeof fits): boolean => rows.some(([name]) => shownIn(props.result(name))?.before);
  return html`<div class="ledgers ${fits.length > 0 ? "three" : ""}">
    <div class="ledger">
      <div class="title"><h3>Given</h3><span class="faint">typed in, change any; blank means not known</span></div>
      ${grouped(needed, (name, line) => givenRow(name, line, props))}
      ${
        rare.length === 0
          ? nothing
          : html`<details class="fold" open><summary><h3>Seldom needed</h3><span class="faint">${rare.map(([name]) => name).join(", ")}</span><span class="word shut">unfold</span><span class="word open">fold</span></summary>
            <div>${rare.map(([name, line]) => givenRow(name, line, props))}</div></details>`
      }
    </div>
    ${
      fits.length === 0
        ? nothing
        : html`<div class="ledger fitted">
            <div class="title"><h3>Fitted</h3><span class="faint">${grey(fits) ? "working; grey is before" : "read out of the log, ± 95 %"}</span><span class="faint told-title">what the log told</span></div>
            ${grouped(fits, (name, line) => workedRow(name, line, props))}
            <p class="small faint">Thin rule: what was believed before the log. Thick bar: after it.</p>
          </div>`
    }
    <div class="ledger">
      <div class="title"><h3>Worked</h3><span class="faint">${grey(work) ? "working; grey is before" : "by formula from the rest, ± 95 %"}</span></div>
      ${grouped(work, (name, line) => workedRow(name, line, props))}
      ${byTrialMeans(work.some(([name, line]) => props.trial?.(name, line, props.result(name)) !== undefined))}
    </div>
  </div>`;
}
