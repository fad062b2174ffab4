import { html, nothing, type TemplateResult } from "lit-html";
import { drawnMark } from "./drawnMark.ts";
import type { Edit } from "./hand.ts";
import { mended } from "./mended.ts";
import type { RowNote } from "./notes.ts";
import type { GridRow } from "./rows.ts";

/** A text with a caret under the character that an error points at. */
function withCaret(text: string, at: number): TemplateResult {
  const character = text.slice(at, at + 1);
  return html`<span class="written">${text.slice(0, at)}<span class="at">${character === "" ? "\u00a0" : character}</span>${text.slice(at + 1)}</span> `;
}

function noteWords({ line, name }: GridRow, { result, cases, everywhere }: RowNote, texts: readonly string[]): unknown {
  const whose = everywhere ? nothing : cases.map(({ mark, name: one }) => html`${drawnMark(mark)} ${one} `);
  switch (result.state) {
    case "waits":
      return html`<p>${whose}waits for <button class="word" type="button" tabindex="-1" data-go-to=${result.for} data-in-case=${cases[0]?.name ?? ""}>${result.for}</button></p>`;
    case "working":
      return html`<p>${whose}<b>working</b> ${result.says} <button class="word" type="button" tabindex="-1" data-stop aria-label="stop: ${name}">stop</button></p>`;
    case "stopped": {
      if (result.byYou)
        return html`<p>${whose}<b>stopped by you</b> <button class="word" type="button" tabindex="-1" data-again aria-label="work again: ${name}">work it again</button></p>`;
      const text = line.kind === "given" ? (texts[0] ?? "") : line.formula;
      const better = mended(text, result.says, result.at);
      return html`<p>${whose}${everywhere || line.kind === "given" ? nothing : html`<b class="stopped">stopped</b> `}${result.at === undefined ? nothing : withCaret(text, result.at)}<span class="stopped">${result.says}${/[.?!]$/u.test(result.says) ? "" : "."}</span>
        ${better ? html`<button class="word" type="button" tabindex="-1" data-mend=${better.text} data-in-case=${cases[0]?.name ?? ""}>${better.word}</button>` : nothing}</p>`;
    }
  }
}

/** What is to be done with a given that is being changed: words for a finger, keys for who types. */
export function editWords(edit: Edit, own: boolean): TemplateResult {
  const alone = edit.inCase === "";
  return html`<p class="edit" id="grid-edit"><span>was ${edit.was === "" ? "not given" : edit.was}.</span>
    <span class="by-key">Enter keeps it${alone ? "" : html` for ${edit.inCase} alone, Ctrl+Enter in every case`}, Esc puts it back.</span>
    <button class="word" type="button" tabindex="-1" data-keep>keep</button>
    ${alone ? nothing : html`<button class="word" type="button" tabindex="-1" data-keep-all>keep in every case</button>`}
    <button class="word" type="button" tabindex="-1" data-put-back>put back</button>
    ${own ? html`<button class="word" type="button" tabindex="-1" data-as-all>as in all</button>` : nothing}</p>`;
}

/** The notes of a row, each with the cases that it holds in. */
export function rowNotes(row: GridRow, notes: readonly RowNote[], textIn: (inCase: string) => string): unknown {
  return notes.map((note) =>
    noteWords(
      row,
      note,
      note.cases.map(({ name }) => textIn(name)),
    ),
  );
}
