import { html, nothing, type TemplateResult } from "lit-html";
import type { Lines, Solved } from "../../../lib/lines/index.ts";
import type { Value } from "../../../lib/measure/types.ts";
import type { System } from "../showValue.ts";
import { amountText } from "./amountText.ts";
import type { Asking } from "./asking.ts";
import { blank, choose, form, plainly, wordsOf } from "./form.ts";

/** What a search came to, for the page that shows it. */
export interface Search {
  readonly line: string;
  readonly by: string;
  readonly inCase: string;
  readonly found: Solved | "searching";
}

export interface SolveProps {
  readonly open: Lines;
  readonly system: System;
  readonly asking: Asking;
  readonly search: Search | undefined;
  readonly tell: (search: Search | undefined) => void;
}

/** Lines that are worked, and givens that some of them feed on. */
export const workedLines = (open: Lines): readonly string[] =>
  open.names().filter((name) => open.line(name).kind !== "given" && !open.line(name).hidden);

/** The givens that a line depends on, near or far. */
export function givensBehind(open: Lines, line: string): readonly string[] {
  const seen = new Set<string>();
  const waiting = [line];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop())
    for (const one of open.uses(next)) {
      if (seen.has(one)) continue;
      seen.add(one);
      waiting.push(one);
    }
  return open.names().filter((name) => {
    const found = open.line(name);
    return (
      seen.has(name) && found.kind === "given" && !found.choices && found.takes !== "log" && found.takes !== "words"
    );
  });
}

async function find(props: SolveProps, line: string, wanted: string, by: string, inCase: string): Promise<void> {
  const { open, tell } = props;
  tell({ line, by, inCase, found: "searching" });
  const found = await open
    .solve(line, wanted, by, inCase === "" ? undefined : inCase)
    .catch((error: unknown): Solved => ({ stopped: wordsOf(error) }));
  tell({ line, by, inCase, found });
}

function outcome({ open, system, search, tell, asking }: SolveProps): TemplateResult | typeof nothing {
  if (!search) return nothing;
  const { by, inCase, line, found } = search;
  if (found === "searching") return html`<p class="small" role="status">searching …</p>`;
  const take = (amount: Value) => {
    asking.attempt(() =>
      open.set(by, { given: amountText(open.line(by), amount, system) }, inCase === "" ? undefined : inCase),
    );
    tell(undefined);
  };
  const one = (amount: Value) =>
    html`<b>${amountText(open.line(by), amount, system)}</b> <button class="word" type="button" @click=${() => take(amount)}>take it</button>`;
  if ("amount" in found)
    return html`<p role="status" class="solved">${line} comes to that with ${by} at ${one(found.amount)}</p>`;
  return html`<p role="status" class="because"><b>stopped</b> ${found.stopped} ${(found.found ?? []).map((amount) => html`${one(amount)} `)}</p>`;
}

/** Blanks for "which amount of this given brings that line to what is wanted?", and what was found. */
export function solveForm(props: SolveProps): TemplateResult {
  const { open, asking } = props;
  const lines = workedLines(open);
  const line = asking.picked("line") ?? lines[0] ?? "";
  if (line === "") return html`<p class="because" role="alert">There is no worked line to solve for yet.</p>`;
  const cases = open.cases().filter(({ hidden }) => !hidden);
  return html`${form({
    id: "solve",
    title: "Solve for a line",
    blanks: html`${choose("line", "line", plainly(lines), line, (value) => asking.pick("line", value))}
      ${blank("wanted", "is to come to", { about: "With its unit." })}
      ${choose("by", "by changing", plainly(givensBehind(open, line)))}
      ${cases.length > 1 ? choose("case", "in the case", plainly(cases.map(({ name }) => name))) : nothing}`,
    does: "look for it",
    wrong: asking.wrong,
    take: (written) =>
      void find(props, line, written("wanted"), written("by"), written("case") || (cases[0]?.name ?? "")),
    close: () => {
      props.tell(undefined);
      asking.ask(undefined);
    },
  })}${outcome(props)}`;
}
