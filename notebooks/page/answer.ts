import { html, nothing, type TemplateResult } from "lit-html";
import type { Clause, Line, Result, Trial } from "../../lib/lines/index.ts";
import { formatLimit } from "../../lib/measure/index.ts";
import { caution } from "./caution.ts";
import { chooseClause, cutClause, type Piece } from "./clause.ts";
import { afterSign, withSign } from "./money.ts";
import { outputAs, type System, shownIn, spreadMark, unitOfAmount, written } from "./showValue.ts";
import { byTrial, saferTrial, shownByTrial } from "./trials/shown.ts";
import { lineKey, unitInWords } from "./words.ts";

export interface AnswerProps {
  readonly clauses: readonly (string | Clause)[];
  readonly lines: ReadonlyMap<string, Line>;
  readonly result: (name: string) => Result;
  /** The trial of a number whose ± will not do. */
  readonly trial?: ((name: string, line: Line, result: Result) => Trial | undefined) | undefined;
  readonly system: System;
  /** Something typed is not taken yet: every number is about to change. */
  readonly busy: boolean;
  /** A line is still being worked. */
  readonly working: boolean;
  /** Nothing is written yet: no reason why there is no answer. */
  readonly quiet?: boolean;
}

/** One number of the sentence, wearing the mark of its thing in the figure; words where the line came to words. */
function number(
  name: string,
  bare: boolean,
  { lines, result, trial, system, busy }: AnswerProps,
): TemplateResult | string {
  const line = lines.get(name);
  const came = result(name);
  if (came.state === "settled" && typeof came.value === "string") return came.value;
  const shown = shownIn(came);
  if (!line || !shown) return "…";
  const { before } = shown;
  const unit = unitOfAmount(line, shown.value, system);
  const key = lineKey(name, line);
  const grey = busy || before;
  const { plain, mark = "", safe } = line.kind === "given" ? {} : line;
  const tried = trial?.(name, line, came);
  if (safe) {
    const safer = saferTrial(shown.value, tried, safe);
    const value = shownByTrial(shown.value, safer);
    // Its error can hurt: the safe end, rounded to the safe side, without ±; the ± stands among the lines.
    return html`<span class="kept">${safe} ${outputAs(key, value, formatLimit(value, unit, safe, { system }), mark, grey)}${byTrial(safer)}</span>`;
  }
  const value = shownByTrial(shown.value, tried);
  const words = afterSign(unitInWords(unit));
  return html`<span class="kept ${grey ? "before" : ""}">${outputAs(key, value, withSign(written(value, unit, system).number, unit), mark, grey)}${plain ? nothing : spreadMark(value, unit, system)}</span>${
    bare || words === ""
      ? nothing
      : words === "°F" || words === "°C" || words.startsWith("/")
        ? html`<span class="unit">${words.startsWith("/") ? "" : "\u00a0"}${words}</span>`
        : html` <span class="unit">${words}</span>`
  }${byTrial(tried)}`;
}

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
    // What the maker stopped has its own words, with the way to do it again.
    return at.state === "stopped" && !at.byYou ? [at.says] : [];
  });
  // What is only not part of a result (no pour was written) is said by the clause itself.
  return [...new Set(says)].filter((why) => !/ has no part /.test(why));
}

/** The answer: at most three clauses, one to a line, each caution on its clause's line. */
export function answer(props: AnswerProps): TemplateResult {
  const has = (name: string): boolean => {
    const came = props.result(name);
    return shownIn(came) !== undefined || (came.state === "settled" && typeof came.value === "string");
  };
  const isBefore = (name: string): boolean => shownIn(props.result(name))?.before === true;
  const names = (pieces: readonly Piece[]) => pieces.flatMap((piece) => ("name" in piece ? [piece.name] : []));
  const said = (pieces: readonly Piece[]) =>
    pieces.map((piece) => ("text" in piece ? piece.text : number(piece.name, piece.bare, props)));
  return html`<div class="answer" role="status" aria-busy=${props.busy || props.working ? "true" : "false"}>
    ${props.clauses.map((clause) => {
      const { says, caution: beside = [] } = chooseClause(clause, has);
      const pieces = cutClause(says);
      const cautions = typeof beside === "string" ? [beside] : beside;
      return html`<div class="clause">
        <p>${said(pieces)}${names(pieces).some(isBefore) ? html` <span class="faint was">before</span>` : nothing}</p>
        <div class="margin">${cautions.map((text) => {
          const cut = cutClause(text.replace(/^(Danger|Caution)\.\s*/, ""));
          return names(cut).every(has) ? caution(text, said(cut)) : nothing;
        })}</div>
      </div>`;
    })}
    ${props.busy || props.working || props.quiet ? nothing : reasons(props).map((why) => html`<p class="because"><b>stopped</b> ${why}</p>`)}
  </div>`;
}
