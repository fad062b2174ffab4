import { html, nothing, type TemplateResult } from "lit-html";
import type { LogReading, Question } from "../../lib/log/types.ts";

export interface OpenEndsProps {
  readonly reading: LogReading;
  readonly answerTo: (question: Question, answer: string) => void;
}

const plural = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

function asked(question: Question, answerTo: OpenEndsProps["answerTo"]): TemplateResult {
  const id = question.id.replace(/[^a-z0-9]+/gi, "-");
  return html`<fieldset class="ask">
    <legend>${question.asks}${question.line ? html` <span class="faint">(line ${question.line})</span>` : nothing}</legend>
    ${question.answers.map(
      ({ answer, says, changes }) => html`<label>
        <input type="radio" name="ask-${id}" value=${answer} .checked=${answer === question.taken} @change=${() => answerTo(question, answer)} />
        ${says}${answer === question.taken ? html` <span class="faint">(taken)</span>` : nothing}${changes ? html` <span class="faint">${changes}</span>` : nothing}
      </label>`,
    )}
  </fieldset>`;
}

/** What the log leaves open and what could not be read: asked and shown, never in the way of the answer. */
export function openEnds({
  reading: { problems, questions },
  answerTo,
}: OpenEndsProps): TemplateResult | typeof nothing {
  if (problems.length + questions.length === 0) return nothing;
  const finding = [
    questions.length > 0 ? `${plural(questions.length, "thing is", "things are")} taken as likeliest` : "",
    problems.length > 0 ? `${plural(problems.length, "place", "places")} could not be read as expected` : "",
  ].filter((part) => part !== "");
  return html`<details class="fold sheet" id="open-ends">
    <summary><h3>What the log leaves open</h3><span>${finding.join("; ")}</span><span class="word shut">unfold</span><span class="word open">fold</span></summary>
    <div>
      ${questions.map((question) => asked(question, answerTo))}
      ${
        problems.length === 0
          ? nothing
          : html`<table class="troubles">
              <thead><tr><th scope="col">line</th><th scope="col">read</th><th scope="col">expected</th><th scope="col">what to do</th></tr></thead>
              <tbody>${problems.slice(0, 200).map(({ line, read, expected, remedy }) => html`<tr><td>line ${line}</td><td>“${read.slice(0, 120)}”</td><td>${expected}</td><td>${remedy}</td></tr>`)}</tbody>
            </table>
            ${problems.length > 200 ? html`<p>and ${problems.length - 200} more of the same kind</p>` : nothing}`
      }
    </div>
  </details>`;
}
