import { html, nothing, type TemplateResult } from "lit-html";
import type { Lines } from "../../../lib/lines/index.ts";
import type { Asking } from "./asking.ts";
import { blank, form } from "./form.ts";

export interface LinePanelProps {
  readonly open: Lines;
  readonly line: string;
  readonly asking: Asking;
  readonly close: () => void;
}

/** A line opened in its place: its name and formula to be changed, what feeds it and what it feeds. */
export function linePanel({ open, line, asking, close }: LinePanelProps): TemplateResult {
  const found = open.line(line);
  const said = (words: string, names: readonly string[]) =>
    names.length === 0 ? nothing : html`<p class="small">${words} ${names.join(", ")}.</p>`;
  return html`${form({
    id: "hand",
    title: line,
    blanks: html`${blank("name", "name", { value: line })}
      ${found.kind === "given" ? nothing : blank("formula", "formula", { value: found.formula, wide: true })}`,
    does: "keep it",
    wrong: asking.wrong,
    take: (written) =>
      asking.attempt(() => {
        if (found.kind !== "given") {
          const formula = written("formula");
          open.set(line, found.kind === "fitted" ? { fitted: formula } : { worked: formula });
        }
        if (written("name") !== line) open.rename(line, written("name"));
        close();
      }),
    close,
  })}
  ${said("Fed by", open.uses(line))}${said("Feeds", open.usedBy(line))}
  <p class="small"><button class="word" type="button" @click=${() => {
    close();
    asking.attemptHere(() => open.remove(line));
  }}>remove this line</button></p>`;
}
