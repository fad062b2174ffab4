import { html, nothing, type TemplateResult } from "lit-html";
import type { Entry, Run } from "../../lib/log/types.ts";
import { formatDuration, formatQuantity } from "../../lib/measure/index.ts";
import type { HandRow } from "./handWriting.ts";
import { type LogRow, logRows } from "./logRows.ts";
import { rowForm } from "./rowForm.ts";
import type { System } from "./showValue.ts";
import { type Suspect, suspectList } from "./suspectList.ts";

export interface LogProps {
  readonly log: Run;
  readonly system: System;
  /** Key of the row in hand, and what is wrong with what was typed in it. */
  readonly inHand: string | undefined;
  readonly wrong: string | undefined;
  /** How many rows are drawn: a logger's file has thousands. */
  readonly drawn: number;
  /** Readings that do not belong by the notebook's own working, by id, with the reason. */
  readonly apart: ReadonlyMap<string, string>;
  /** What the working thinks the log has left out or got wrong. */
  readonly suspects: readonly Suspect[];
  readonly write: (pour: { readonly time: number; readonly text: string }) => void;
  readonly take: (key: string | undefined) => void;
  readonly drawMore: () => void;
  readonly strike: (entry: Entry, reason: string) => void;
  readonly unstrike: (entry: Entry) => void;
  readonly correct: (entry: Entry, text: string) => void;
  readonly add: (row: HandRow) => void;
}

const quantityShown = (entry: Entry, unit: string, system: System): string =>
  entry.quantity
    ? formatQuantity(entry.quantity.si, unit, { system, dimension: entry.quantity.dimension })
    : (entry.text ?? "");

/** What an entry says, in the units of the page; the maker's own text where it has no number. */
export function said(entry: Entry, system: System): string {
  if (entry.kind === "reading") return quantityShown(entry, system === "US" ? "°F" : "°C", system);
  if (entry.kind === "addition") return quantityShown(entry, system === "US" ? "fl oz" : "ml", system);
  if (entry.kind === "remark") return entry.text ?? "";
  if (entry.text) return entry.text;
  return entry.quantity ? `${entry.kind} ${entry.quantity.text}` : entry.kind;
}

const mark = (entry: Entry, system: System): TemplateResult =>
  entry.struck
    ? html`<s class="said">${said(entry, system)}</s> <span class="small">struck out${entry.reason ? `, ${entry.reason}` : ""}</span>`
    : html`<span class="said">${said(entry, system)}</span>${
        entry.before?.length ? html` <span class="small faint">was ${entry.before.at(-1)}</span>` : nothing
      }`;

const joined = (entries: readonly Entry[], system: System): unknown =>
  entries.map((entry, i) => html`${i > 0 ? ", " : nothing}${mark(entry, system)}`);

/** What the working says against a reading that still counts for the maker, beside the row's own words. */
const doubted = (row: LogRow, { apart }: LogProps): unknown =>
  row.reading.flatMap(({ id, struck }) => {
    const reason = apart.get(id);
    return reason === undefined || struck ? [] : [html`<em class="small">does not belong: ${reason}</em>`];
  });

function inHandRow(row: LogRow, props: LogProps): TemplateResult {
  const entries = [...row.reading, ...row.water, ...row.events];
  return html`<tr class="in-hand"><td colspan="5">
    ${entries.map((entry) => {
      const what = said(entry, props.system);
      return html`<form class="row" @submit=${(event: SubmitEvent) => {
        event.preventDefault();
        const field = event.target instanceof HTMLFormElement ? event.target.elements.namedItem("text") : undefined;
        if (field instanceof HTMLInputElement) props.correct(entry, field.value);
      }}>
        <label>${entry.kind}<input class="blank" name="text" inputmode=${entry.quantity ? "decimal" : "text"} aria-label="${entry.kind}, ${what}" autocomplete="off" .value=${entry.quantity?.text ?? entry.text ?? ""} ?disabled=${entry.struck} /></label>
        ${entry.struck ? nothing : html`<button class="word" type="submit" aria-label="correct ${what}">correct</button>`}
        ${
          entry.struck
            ? html`<button class="word" type="button" data-put-back @click=${() => props.unstrike(entry)}>put back ${what}</button>`
            : html`<button class="word" type="button" @click=${() => props.strike(entry, "mis-read")}>strike out ${what}</button>`
        }
      </form>`;
    })}
    ${props.wrong ? html`<p class="stopped" role="alert">${props.wrong}</p>` : nothing}
    <button class="word" type="button" @click=${() => props.take(undefined)}>done</button>
  </td></tr>`;
}

function rowShown(row: LogRow, props: LogProps): TemplateResult {
  const all = [...row.reading, ...row.water, ...row.events];
  const struck = all.length > 0 && all.every((entry) => entry.struck);
  const first = all[0];
  const time = row.clock ?? formatDuration(row.time);
  const taken = props.inHand === row.key;
  return html`<tr class=${struck ? "struck" : ""}>
      <td class="figure"><span class="said">${time}</span></td>
      <td class="figure what">${joined(row.reading, props.system)}</td>
      <td class="figure what ${row.water.length > 0 ? "poured" : ""}">${joined(row.water, props.system)}</td>
      <td>${joined(row.events, props.system)} ${doubted(row, props)}</td>
      <td class="doing">${
        struck && first
          ? html`<button class="word" type="button" aria-label="put back the row at ${time}" @click=${() => all.forEach(props.unstrike)}>put back</button>`
          : html`<button class="word" type="button" aria-expanded=${taken ? "true" : "false"} aria-label="change the row at ${time}" @click=${() => props.take(taken ? undefined : row.key)}>change</button>`
      }</td>
    </tr>
    ${taken ? inHandRow(row, props) : nothing}`;
}

const ledger = (rows: readonly LogRow[], props: LogProps): TemplateResult => html`<table>
  <thead><tr>
    <th class="figure" scope="col">time</th>
    <th class="figure" scope="col">read</th>
    <th class="figure" scope="col">water</th>
    <th scope="col">remark</th>
    <th scope="col"><span class="hidden-from-sight">change the row</span></th>
  </tr></thead>
  <tbody>${rows.map((row) => rowShown(row, props))}</tbody>
</table>`;

/** The log as a ledger: strike out, correct, add; two columns of it on a desk. */
export function logSection(props: LogProps): TemplateResult {
  const rows = logRows(props.log);
  const shown = rows.slice(0, props.drawn);
  const half = Math.ceil(shown.length / 2);
  const rest = rows.length - shown.length;
  return html`<section class="sheet log" id="log" aria-labelledby="log-title">
    <h2 id="log-title">Log</h2>
    ${suspectList(props)}
    ${
      shown.length > 8
        ? html`<div class="two-up">${ledger(shown.slice(0, half), props)}${ledger(shown.slice(half), props)}</div>`
        : shown.length > 0
          ? ledger(shown, props)
          : html`<p>No row yet. Write the first one: a time, and what the thermometer read or how much water went in.</p>`
    }
    ${rest > 0 ? html`<p>${shown.length.toLocaleString("en-US")} of ${rows.length.toLocaleString("en-US")} rows; <button class="word" @click=${props.drawMore}>unfold more</button></p>` : nothing}
    <h3 class="add-title">Add a row</h3>
    ${rowForm({ system: props.system, add: props.add, id: "row", all: true, usesClock: props.log.entries.some(({ clock }) => /[ap]m/i.test(clock ?? "")) })}
  </section>`;
}
