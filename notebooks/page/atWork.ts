import { html, nothing, type TemplateResult } from "lit-html";
import type { OpenedRun } from "./openedRun.ts";

/** A steel rule of twenty ticks that inks in as the work goes on. */
const rule = (share: number): TemplateResult =>
  html`<span class="inking" role="progressbar" aria-label="how far it is" aria-valuemin="0" aria-valuemax="100" aria-valuenow=${Math.round(100 * share)}><span style="width:${Math.round(100 * share)}%"></span></span>`;

/** What a slow line is at, with a way to stop it; and after that a way to do it again. Empty where nothing is at work. */
export function atWork(opened: OpenedRun): TemplateResult {
  const working = opened.atWork();
  const stopped = opened.stoppedByYou();
  return html`<div id="at-work" role="status">
    ${working.map(
      ({
        line,
        says,
        share,
      }) => html`<p class="small at-work"><b>working</b> ${share === undefined ? nothing : rule(share)}
        ${says ?? line} <button class="word" type="button" aria-label="stop: ${line}" @click=${() => opened.stop(line)}>stop</button></p>`,
    )}
    ${
      working.length > 0
        ? nothing
        : stopped.map(
            (line) => html`<p class="small"><b>stopped by you:</b> ${line}. What hangs on it waits.
        <button class="word" type="button" aria-label="work again: ${line}" @click=${() => opened.again(line)}>fit again</button></p>`,
          )
    }
  </div>`;
}
