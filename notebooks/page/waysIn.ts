import { html, type TemplateResult } from "lit-html";

export interface WaysInProps {
  readonly readFile: (file: File) => void;
  readonly writeByHand: () => void;
}

/** How a log gets in: a file, a paste, a hand. Files may be dropped and rows pasted anywhere on the page. */
export function waysIn({ readFile, writeByHand }: WaysInProps): TemplateResult {
  return html`<p class="ways-in">
    <label class="file word">read in a log<input type="file" accept=".csv,.tsv,.txt,text/*" @change=${(
      event: Event,
    ) => {
      if (!(event.target instanceof HTMLInputElement)) return;
      const file = event.target.files?.[0];
      if (file) readFile(file);
      event.target.value = "";
    }} /></label>
    <button class="word" type="button" @click=${writeByHand}>write one by hand</button>
    <span class="faint">or drop a file, or paste rows copied from any table, anywhere on this page</span>
  </p>`;
}
