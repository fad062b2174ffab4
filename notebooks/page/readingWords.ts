import { html, type TemplateResult } from "lit-html";

/** What the page says while a long log is read, with a way to stop it. */
export function readingWords({ rows, stop }: { readonly rows: number; readonly stop: () => void }): TemplateResult {
  return html`<p class="sheet working" role="status" aria-busy="true">
    <b>working</b> reading ${rows.toLocaleString("en-US")} rows <button class="word" type="button" @click=${stop}>stop</button>
  </p>`;
}
