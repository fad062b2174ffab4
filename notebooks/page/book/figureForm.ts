import { html, type TemplateResult } from "lit-html";
import type { Lines, Notebook, OwnFigure } from "../../../lib/lines/index.ts";
import type { Asking } from "./asking.ts";
import { blank, choose, form, plainly, type Written } from "./form.ts";
import { givensBehind, workedLines } from "./solveForm.ts";

const kinds = ["a line across cases", "a sweep", "a line against another"] as const;

function figureOf(draws: string, line: string, written: Written): OwnFigure {
  const title = written("title") === "" ? {} : { title: written("title") };
  if (draws === "a sweep") {
    const [by, from, to] = [written("by"), written("from"), written("to")];
    if (by === "") throw new Error("nothing is given that this line depends on; pick another line");
    if (from === "" || to === "") throw new Error("a sweep needs both its ends: two amounts with their units");
    return { draws, line, by, from, to, ...title };
  }
  if (draws === "a line against another") return { draws, line, against: written("against"), ...title };
  return { draws: "a line across cases", line, ...title };
}

/** Lines that can be drawn: those with a number in some case, worked ones first. */
function drawable(open: Lines): readonly string[] {
  const worked = workedLines(open);
  return [...worked, ...open.names().filter((name) => !worked.includes(name) && !open.line(name).hidden)];
}

/** Adds a figure to what a notebook draws. */
export function addFigure(open: Lines, book: Notebook, figure: OwnFigure): void {
  open.setRest("adding a figure", { figures: [...(book.figures ?? []), figure] });
}

/** Blanks for a figure of the maker's own; `only` holds it to one kind. */
export function figureForm(open: Lines, book: Notebook, asking: Asking, only?: "a sweep"): TemplateResult {
  const draws = only ?? asking.picked("draws") ?? kinds[0];
  const lines = draws === "a sweep" ? workedLines(open) : drawable(open);
  const picked = asking.picked("line");
  const line = picked !== undefined && lines.includes(picked) ? picked : (lines[0] ?? "");
  if (line === "") return html`<p class="because" role="alert">There is no line to draw yet.</p>`;
  const more = {
    "a line across cases": "",
    "a sweep": html`${choose("by", "over", plainly(givensBehind(open, line)))}
      ${blank("from", "from", { about: "With its unit." })} ${blank("to", "to")}`,
    "a line against another": choose("against", "against", plainly(drawable(open).filter((name) => name !== line))),
  };
  return form({
    id: "figure",
    title: only ? "Sweep a given" : "Add a figure",
    blanks: html`${only ? "" : choose("draws", "draws", plainly(kinds), draws, (value) => asking.pick("draws", value))}
      ${choose("line", "line", plainly(lines), line, (value) => asking.pick("line", value))}
      ${more[draws as keyof typeof more] ?? ""}
      ${blank("title", "title", { wide: true, about: "Left blank, it is named after what it draws." })}`,
    does: "draw it",
    wrong: asking.wrong,
    take: (written) => asking.attempt(() => addFigure(open, book, figureOf(draws, line, written))),
    close: () => asking.ask(undefined),
  });
}
