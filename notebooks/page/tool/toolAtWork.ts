import { html, nothing, type TemplateResult } from "lit-html";
import type { Lines, Result } from "../../../lib/lines/index.ts";

/** A steel rule of twenty ticks that inks in as the work goes on. */
const rule = (share: number): TemplateResult =>
  html`<span class="inking" role="progressbar" aria-label="how far it is" aria-valuemin="0" aria-valuemax="100" aria-valuenow=${Math.round(100 * share)}><span style="width:${Math.round(100 * share)}%"></span></span>`;

const stoppedByYou = (result: Result): boolean => result.state === "stopped" && result.byYou === true;

const whose = (line: string, inCase: string): string => (inCase === "" ? line : `${line} of ${inCase}`);

/** What the slow lines of each case are at, with a way to stop them; after that a way to do it again. */
export function toolAtWork(open: Lines, redraw: () => void): TemplateResult {
  const working = open.atWorkIn();
  const stopped = open
    .cases()
    .filter(({ hidden }) => !hidden)
    .flatMap(({ name }) =>
      open.names().flatMap((line) => (stoppedByYou(open.result(line, name)) ? [{ line, inCase: name }] : [])),
    );
  return html`<div id="at-work" role="status">
    ${working.map(({ line, inCase }) => {
      const result = open.result(line, inCase);
      const { says = line, share } = result.state === "working" ? result : {};
      return html`<p class="small at-work"><b>working</b> ${share === undefined ? nothing : rule(share)}
        ${inCase === "" ? says : `${inCase}: ${says}`} <button class="word" type="button" aria-label="stop: ${whose(line, inCase)}" @click=${() => open.stop(line, inCase)}>stop</button></p>`;
    })}
    ${
      working.length > 0
        ? nothing
        : stopped.map(
            ({
              line,
              inCase,
            }) => html`<p class="small"><b>stopped by you:</b> ${whose(line, inCase)}. What hangs on it waits.
        <button class="word" type="button" aria-label="work again: ${whose(line, inCase)}" @click=${() => {
          open.again(line, inCase);
          redraw();
        }}>work it again</button></p>`,
          )
    }
  </div>`;
}
