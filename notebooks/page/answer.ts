import { html, nothing, type TemplateResult } from "lit-html";
import type { Clause, Line, Result } from "../../lib/lines/index.ts";
import { chooseClause, cutClause } from "./clause.ts";
import { output, type System, spreadMark, unitOf, valueIn } from "./showValue.ts";
import { lineKey, unitInWords } from "./words.ts";

export interface AnswerProps {
  readonly clauses: readonly (string | Clause)[];
  readonly lines: ReadonlyMap<string, Line>;
  readonly result: (name: string) => Result;
  readonly system: System;
  readonly busy: boolean;
  /** Nothing is written yet: no reason why there is no answer. */
  readonly quiet?: boolean;
}

/** One number of the sentence, wearing the mark of its thing in the figure. */
function number(name: string, bare: boolean, { lines, result, system, busy }: AnswerProps): TemplateResult | string {
  const line = lines.get(name);
  const value = valueIn(result(name));
  if (!line || !value) return "…";
  const unit = unitOf(line, system);
  const key = lineKey(name, line);
  const plain = line.kind !== "given" && line.plain === true;
  const mark = line.kind === "given" ? undefined : line.mark;
  const words = unitInWords(unit);
  return html`<span class="kept">${output(key, value, unit, system, mark ?? "", busy)}${plain ? nothing : spreadMark(value, unit, system)}</span>${
    bare
      ? nothing
      : words === "°F" || words === "°C"
        ? html`<span class="unit"> ${words}</span>`
        : html` <span class="unit">${words}</span>`
  }`;
}

const cautionOf = (says: string): TemplateResult => {
  const word = says.startsWith("Danger.") ? "Danger." : "Caution.";
  return html`<p class="caution ${word === "Danger." ? "danger" : ""}"><strong>${word}</strong> ${says.replace(/^(Danger|Caution)\.\s*/, "")}</p>`;
};

/** Why a clause has no number yet: what its lines, or those they wait for, say is wrong. Each reason once. */
function reasons({ clauses, result, lines }: AnswerProps): readonly string[] {
  const names = clauses.flatMap((clause) =>
    cutClause(typeof clause === "string" ? clause : clause.says).flatMap((piece) =>
      "name" in piece ? [piece.name] : [],
    ),
  );
  const says = names.flatMap((name) => {
    let at: Result = result(name);
    // A line waits for another, that one for the next: a notebook has no longer chain than lines.
    for (let i = 0; i < lines.size && at.state === "waits" && lines.has(at.for); i++) at = result(at.for);
    return at.state === "stopped" ? [at.says] : [];
  });
  // What is only not part of a result (no pour was written) is said by the clause itself.
  return [...new Set(says)].filter((why) => !/ has no part /.test(why));
}

/** The answer: at most three clauses, one to a line, each caution on its clause's line. */
export function answer(props: AnswerProps): TemplateResult {
  const settled = (name: string): boolean => valueIn(props.result(name)) !== undefined;
  return html`<div class="answer" role="status" aria-busy=${props.busy ? "true" : "false"}>
    ${props.clauses.map((clause) => {
      const { says, caution } = chooseClause(clause, settled);
      return html`<div class="clause">
        <p>${cutClause(says).map((piece) => ("text" in piece ? piece.text : number(piece.name, piece.bare, props)))}</p>
        ${caution ? cautionOf(caution) : nothing}
      </div>`;
    })}
    ${props.busy || props.quiet ? nothing : reasons(props).map((why) => html`<p class="because"><b>stopped</b> ${why}</p>`)}
  </div>`;
}
