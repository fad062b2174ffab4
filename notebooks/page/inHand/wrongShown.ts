import { html, nothing, type TemplateResult } from "lit-html";
import type { Wrong } from "./checked.ts";

/** A text with a caret under the character that an error points at. */
function withCaret(text: string, at: number): TemplateResult {
  const character = text.slice(at, at + 1);
  return html`<span class="written" aria-hidden="true">${text.slice(0, at)}<span class="at">${character === "" || character === " " ? "\u00a0" : character}</span>${text.slice(at + 1)}</span>`;
}

/** What is wrong with what is written, the character it is at, and what was probably meant as a word to press. */
export function wrongShown(id: string, text: string, wrong: Wrong, mend: (text: string) => void): TemplateResult {
  const { says, at, meant } = wrong;
  // The question is asked by the word itself.
  const words = meant ? says.replace(/: did you mean "[^"]*"\?/u, "") : says;
  return html`<div class="wrong" id=${id}>
    ${at === undefined || text.trim() === "" ? nothing : withCaret(text, at)}
    <p><b class="stopped">stopped</b> <span class="stopped">${words}${/[.?!]$/u.test(words) ? "" : "."}</span>${
      meant
        ? html` Did you mean <button class="word" type="button" @click=${() => mend(meant.text)}>${meant.word}</button>?`
        : nothing
    }</p>
  </div>`;
}
