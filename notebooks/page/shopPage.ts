import { html, nothing, type TemplateResult } from "lit-html";
import type { Line, Result } from "../../lib/lines/index.ts";
import type { Bath, KeptRun, Setup } from "../../lib/record/index.ts";
import { routeOf } from "./route.ts";
import { output, type System, spreadMark, unitOf, valueIn } from "./showValue.ts";
import { type WaysInProps, waysIn } from "./waysIn.ts";
import { lineKey } from "./words.ts";

export interface RunListed {
  readonly run: KeptRun;
  readonly setup: Setup | undefined;
  readonly result: (name: string) => Result;
  readonly strip: Element | undefined;
}

export interface ShopPageProps extends WaysInProps {
  readonly system: System;
  readonly undo: TemplateResult;
  readonly runs: readonly RunListed[];
  readonly setups: readonly { readonly setup: Setup; readonly runs: number; readonly drawing: Element | undefined }[];
  readonly baths: readonly Bath[];
  readonly lines: ReadonlyMap<string, Line>;
  readonly columns: readonly string[];
  readonly questions: readonly { readonly asks: string; readonly name: string }[];
  readonly answer: unknown;
  readonly onlyInvented: boolean;
  readonly hasDemo: boolean;
  readonly earlier: readonly { readonly key: string; readonly at: string; readonly why: string }[];
  readonly open: (id: string) => void;
  readonly throwAway: (run: KeptRun) => void;
  readonly saveCopy: () => void;
  readonly openCopy: (file: File) => void;
  readonly bringBack: (key: string) => void;
  readonly demo: (shown: boolean) => void;
  readonly says: readonly string[];
}

/** What a newcomer sees until there is a run of their own. */
const emptyState = (props: ShopPageProps): TemplateResult => html`
  <div class="empty-strip"><div>
    <p>Drop a log anywhere on this page,<br />or paste rows copied from any table.</p>
  </div></div>
  <div class="sheet three">
    <section>
      <h2>A scrap of paper will do</h2>
      <table class="scrap">
        <thead><tr><th scope="col">time</th><th scope="col">°F</th><th scope="col">water</th><th scope="col">remark</th></tr></thead>
        <tbody>
          <tr><td>6:10 pm</td><td>281</td><td></td><td>boils</td></tr>
          <tr><td>6:19</td><td>288</td><td></td><td>parts in</td></tr>
          <tr><td>6:23</td><td></td><td>2 cups</td><td></td></tr>
          <tr><td>6:26</td><td>286</td><td></td><td></td></tr>
        </tbody>
      </table>
      <p class="small faint">Any order of columns, °F or °C, cups or ounces or millilitres. What it can't tell it takes as likeliest and asks once. Invented rows.</p>
    </section>
    <section>
      <h2>Three minutes to your first answer</h2>
      <ol>
        <li><button class="word" type="button" @click=${props.writeByHand}>Write the log by hand</button>, row by row, or drop it or paste it.</li>
        <li>Say what salts are in the tank, weighed or ready mixed, and your altitude. Leave blank what you don't know.</li>
        <li>Read the answer. Every number says how far it can be trusted.</li>
      </ol>
      <p>Or look at <a href=${routeOf(props.questions[0]?.name ?? "")}>the invented run</a>, worked and drawn, to see what a log gives back.</p>
    </section>
    <section>
      <h2>Before you light it</h2>
      <p class="caution danger"><strong>Danger.</strong> The bath is caustic far above the boil of water. Face shield, apron, gauntlets. Water a little at a time: a fast pour flashes to steam and throws caustic. The salt's safety data sheet and local rules come first.</p>
    </section>
  </div>`;

function runRow({ run, setup, result, strip }: RunListed, props: ShopPageProps): TemplateResult {
  return html`<li class="run">
    <a href=${routeOf(props.questions[0]?.name ?? "")} @click=${() => props.open(run.id)}>
      <span class="day">${run.name}${run.invented ? html` <span class="boxed">Invented data</span>` : nothing}<span class="faint">${setup?.name ?? ""}</span></span>
      ${props.columns.map((name) => {
        const line = props.lines.get(name);
        const value = valueIn(result(name));
        if (!line || !value) return html`<span class="faint">no number</span>`;
        const unit = unitOf(line, props.system);
        return html`<span>${output(lineKey(name, line), value, unit, props.system)}${spreadMark(value, unit, props.system)} <span class="faint">${unit}</span></span>`;
      })}
      <span class="strip">${strip}</span>
    </a>
    <button class="word small faint" type="button" aria-label="throw away ${run.name}" @click=${() => props.throwAway(run)}>throw away</button>
  </li>`;
}

const copies = (props: ShopPageProps): TemplateResult => html`<section class="sheet" aria-labelledby="copies-title">
  <h2 id="copies-title">Shop record</h2>
  <p>All of this is kept in this browser at every change. One file holds it all.</p>
  <p class="ways-in">
    <button class="word" type="button" @click=${props.saveCopy}>Save a copy</button>
    <label class="file word">Open a copy<input type="file" accept=".json,application/json" data-copy @change=${(
      event: Event,
    ) => {
      if (!(event.target instanceof HTMLInputElement)) return;
      const file = event.target.files?.[0];
      if (file) props.openCopy(file);
      event.target.value = "";
    }} /></label>
    <button class="word" type="button" @click=${() => props.demo(!props.hasDemo)}>${props.hasDemo ? "put the invented shop away" : "bring the invented shop back"}</button>
  </p>
  ${
    props.earlier.length === 0
      ? nothing
      : html`<details class="fold"><summary><h3>Earlier records</h3><span>${props.earlier.length} kept, a way back</span><span class="word shut">unfold</span><span class="word open">fold</span></summary>
        <ul>${props.earlier.map(({ key, at, why }) => html`<li>${at.replace("T", " ").slice(0, 16)} ${why} <button class="word" type="button" @click=${() => props.bringBack(key)}>bring it back</button></li>`)}</ul></details>`
  }
</section>`;

/** The front page: what the tool is asked, the runs as strips, the setups to scale, the baths, the one file. */
export function shopPage(props: ShopPageProps): TemplateResult {
  return html`<div class="sheet">
      <div class="head"><h1>Shop</h1>${props.undo}</div>
      ${props.says.map((says) => html`<p class="small said-news" role="status">${says}</p>`)}
      ${props.onlyInvented ? html`<p class="opening">No run of yours yet. A run is one firing: some times, some temperatures, some water.</p>` : props.answer}
      ${waysIn(props)}
    </div>
    ${props.onlyInvented ? emptyState(props) : nothing}
    <section class="sheet" aria-labelledby="ask-title">
      <h2 id="ask-title">What do you want to know?</h2>
      <ul class="questions">${props.questions.map(({ asks, name }) => html`<li><span>${asks}</span><a href=${routeOf(name)}>${name}</a></li>`)}</ul>
    </section>
    <section class="runs" aria-labelledby="runs-title">
      <h2 id="runs-title">Runs</h2>
      <p class="sheet-line faint small">The bright strip is each run's target band; a good hold never leaves it. Marks along the foot: water.</p>
      <ul>${props.runs.map((listed) => runRow(listed, props))}</ul>
    </section>
    <div class="sheet two-up">
      <section aria-labelledby="setups-title">
        <h2 id="setups-title">Setups</h2>
        ${
          props.setups.length === 0
            ? html`<p>A tank, its burner and its thermometer. The first one comes with your first run.</p>`
            : props.setups.map(
                ({ setup, runs, drawing }) =>
                  html`<div class="setup"><p><b>${setup.name}</b>, ${runs} ${runs === 1 ? "run" : "runs"}${setup.invented ? html` <span class="boxed">Invented data</span>` : nothing}</p>${drawing}</div>`,
              )
        }
      </section>
      <section aria-labelledby="baths-title">
        <h2 id="baths-title">Baths</h2>
        ${
          props.baths.length === 0
            ? html`<p>The salts and water themselves; they outlive a run. The first one comes with your first run.</p>`
            : props.baths.map(
                (
                  bath,
                ) => html`<div class="setup"><p><b>${bath.name}</b>${bath.invented ? html` <span class="boxed">Invented data</span>` : nothing}</p>
                <ul class="small">${bath.account.map(({ date, kind, text }) => html`<li>${date}: ${kind}, ${text}</li>`)}</ul></div>`,
              )
        }
      </section>
    </div>
    ${copies(props)}`;
}
