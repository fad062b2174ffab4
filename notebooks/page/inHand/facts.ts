import { html, nothing, type TemplateResult } from "lit-html";
import { until } from "lit-html/directives/until.js";
import type { Trial } from "../../../lib/lines/index.ts";
import { caution } from "../caution.ts";
import { drawnMark } from "../grid/drawnMark.ts";
import { valueIn } from "../shownIn.ts";
import { knownTrial, triedTrial } from "../trials/known.ts";
import { feedsOf } from "./feedsOf.ts";
import { sources } from "./sources.ts";
import type { InHandProps } from "./types.ts";
import { widthWords } from "./widthWords.ts";
import { type WithNumbers, withNumbers } from "./withNumbers.ts";

const full = (words: string): string => (/[.?!]$/u.test(words) ? words : `${words}.`);

const word = (line: string, goTo: (line: string) => void): TemplateResult =>
  html`<button class="word" type="button" @click=${() => goTo(line)}>${line}</button>`;

const words = (lines: readonly string[], goTo: (line: string) => void): readonly unknown[] =>
  lines.map((line, place) => html`${place === 0 ? nothing : ", "}${word(line, goTo)}`);

function comesTo({ is, formula }: WithNumbers, goTo: (line: string) => void): TemplateResult {
  const whole = formula === "" ? nothing : html`<span class="put-in">${formula}</span> `;
  switch (is.state) {
    case "settled":
      return html`${whole}${formula === "" ? nothing : "is "}<b>${is.words}</b>`;
    case "working":
      return html`${whole}<span class="faint">working ${is.says}${is.before === undefined ? "" : `; ${is.before} before`}</span>`;
    case "waits":
      return html`${whole}waits for ${word(is.for, goTo)}`;
    case "stopped":
      return html`${whole}<b class="stopped">stopped</b> ${full(is.says)}`;
    case "not given":
      return html`not given`;
  }
}

const fact = (name: unknown, says: unknown): TemplateResult => html`<div><dt>${name}</dt><dd>${says}</dd></div>`;

function caseName({ open, inCase }: InHandProps): unknown {
  const mark = open.cases().findIndex(({ name }) => name === inCase);
  return inCase === "" ? "It comes to" : html`${drawnMark(Math.max(0, mark))} ${inCase}`;
}

function sourceFacts({ open, line, names }: InHandProps): readonly TemplateResult[] {
  const found = open.line(line);
  const helps = found.kind === "given" ? [] : sources(found.formula, names);
  return helps.map(({ call, says, source, optional }) =>
    fact(
      html`<span class="call">${call}</span>`,
      html`${full(says)}${optional === undefined ? nothing : html` <span class="faint">${full(optional)}</span>`}${
        source === undefined ? nothing : html` <span class="faint">Source: ${full(source)}</span>`
      }`,
    ),
  );
}

/** What a trial says of it where its ± is not good enough: it is tried at once, whatever the page does. */
function lookedAt({ open, line, inCase, redraw }: InHandProps): unknown {
  const said = (trial: Trial | undefined) => (trial ? fact("Looked at by trial", trial.says) : nothing);
  const known = knownTrial(open, line, inCase);
  if (known) return said(known.trial);
  const trial = triedTrial(open, line, inCase).then((found) => {
    // Its number stands elsewhere on the page too.
    if (found) redraw();
    return said(found);
  });
  return until(trial, nothing);
}

/** What is said of the line in hand in its case: numbers put in, width, what feeds it, what it feeds, its source. */
export function facts(props: InHandProps): TemplateResult {
  const { open, line, inCase, names, system, goTo } = props;
  const found = open.line(line);
  const value = valueIn(open.result(line, inCase));
  const { feeds, fed } = feedsOf(open, line);
  return html`<dl class="facts">
    ${fact(caseName(props), comesTo(withNumbers(open, line, inCase, names, system), goTo))}
    ${found.kind !== "given" && found.caution !== undefined ? html`<div><dd>${caution(found.caution)}</dd></div>` : nothing}
    ${lookedAt(props)}
    ${value === undefined ? nothing : fact("Its width", widthWords(value))}
    ${feeds.length === 0 ? nothing : fact("Fed by", words(feeds, goTo))}
    ${fact("It feeds", fed.length === 0 ? "no other line" : words(fed, goTo))}
    ${found.about === undefined ? nothing : fact("What it is", found.about)}
    ${sourceFacts(props)}
  </dl>`;
}
