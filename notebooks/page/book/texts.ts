import { html, nothing, type TemplateResult } from "lit-html";
import type { Lines, Notebook } from "../../../lib/lines/index.ts";
import type { Asking } from "./asking.ts";
import { form } from "./form.ts";

const area = (name: string, label: string, value: string, about: string): TemplateResult =>
  html`<label class="wide"><span>${label}</span><textarea class="blank" name=${name} rows="3" .value=${value}></textarea><span class="faint small">${about}</span></label>`;

const short = (text: string): string => (text.length > 60 ? `${text.slice(0, 60)}…` : text);

/** The question, to be changed in its place. */
export function question(open: Lines, book: Notebook, asking: Asking): TemplateResult {
  if (asking.form !== "asks")
    return html`<h1>${book.asks || "A question without words"}</h1>
      <button class="word small" type="button" @click=${() => asking.ask("asks")}>change the question</button>`;
  return html`<h1 class="hidden-from-sight">${book.asks}</h1>${form({
    id: "asks",
    title: "Change the question",
    blanks: html`<label class="wide"><span>question</span><input class="blank" name="asks" autocomplete="off" .value=${book.asks} /></label>`,
    does: "ask it so",
    wrong: asking.wrong,
    take: (written) =>
      asking.attempt(() => open.setRest(`the question was “${short(book.asks)}”`, { asks: written("asks") })),
    close: () => asking.ask(undefined),
  })}`;
}

const answerOf = ({ answer }: Notebook): string =>
  typeof answer === "string"
    ? answer
    : (answer ?? []).map((one) => (typeof one === "string" ? one : one.says)).join("\n");

/** The blank for the answer's sentence; each row is one clause. */
export function answerForm(open: Lines, book: Notebook, asking: Asking): TemplateResult {
  const was = answerOf(book);
  if (asking.form !== "answer")
    return html`<p class="small"><button class="word" type="button" @click=${() => asking.ask("answer")}>${was === "" ? "write an answer" : "change the answer"}</button></p>`;
  const names = open.names();
  return form({
    id: "answer",
    title: was === "" ? "Write an answer" : "Change the answer",
    blanks: area(
      "answer",
      "answer",
      was,
      `A line's name in braces becomes its number: It comes to {${names.at(-1) ?? "a line"}}. One sentence to a row.`,
    ),
    does: "say it so",
    wrong: asking.wrong,
    take: (written) =>
      asking.attempt(() => {
        const clauses = written("answer")
          .split(/\n+/)
          .map((one) => one.trim())
          .filter((one) => one !== "");
        open.setRest(was === "" ? "writing an answer" : `the answer was “${short(was)}”`, {
          answer: clauses.slice(0, 50),
        });
      }),
    close: () => asking.ask(undefined),
  });
}

/** Paragraphs of plain text, each to be changed or removed in its place. */
export function notes(open: Lines, book: Notebook, asking: Asking): TemplateResult | typeof nothing {
  const all = book.notes ?? [];
  const put = (at: number, text: string): void => {
    const was = all[at];
    const next = [...all];
    if (text === "") next.splice(at, 1);
    else next[at] = text;
    const undo =
      was === undefined
        ? "adding a note"
        : text === ""
          ? `removing the note “${short(was)}”`
          : `the note was “${short(was)}”`;
    open.setRest(undo, { notes: next });
  };
  const one = (at: number, text: string): TemplateResult =>
    form({
      id: "note",
      title: at < all.length ? "Change the note" : "Add a note",
      blanks: area("text", "note", text, "Plain text."),
      does: "write it down",
      wrong: asking.wrong,
      take: (written) =>
        asking.attempt(() => (written("text") === "" && at >= all.length ? undefined : put(at, written("text")))),
      close: () => asking.ask(undefined),
    });
  const adding = asking.form === "note";
  if (all.length === 0 && !adding) return nothing;
  return html`<section class="sheet notes" aria-labelledby="notes-title"><h2 id="notes-title">Notes</h2>
    ${all.map((text, i) =>
      asking.form === `note ${i}`
        ? one(i, text)
        : html`<div class="own-note"><p>${text}</p><p class="small"><button class="word" type="button" aria-label=${`change note ${i + 1}`} @click=${() => asking.ask(`note ${i}`)}>change</button>
          <button class="word" type="button" aria-label=${`remove note ${i + 1}`} @click=${() => asking.attempt(() => put(i, ""))}>remove</button></p></div>`,
    )}
    ${adding ? one(all.length, "") : nothing}
  </section>`;
}
