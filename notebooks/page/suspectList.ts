import { html, nothing, type TemplateResult } from "lit-html";
import type { Entry } from "../../lib/log/types.ts";

/** Something that the log has probably left out or got wrong, and what can be done about it. */
export interface Suspect {
  /** 0..1. */
  readonly probability: number;
  readonly says: string;
  readonly reason: string;
  readonly act:
    | { readonly does: "strike out"; readonly what: string; readonly entry: Entry }
    | { readonly does: "write this pour"; readonly what: string; readonly time: number; readonly text: string };
}

export interface SuspectListProps {
  readonly suspects: readonly Suspect[];
  readonly strike: (entry: Entry, reason: string) => void;
  readonly write: (pour: { readonly time: number; readonly text: string }) => void;
}

/** What the log has probably left out or got wrong: above its rows, each with one thing to do, which undo takes back. */
export function suspectList({ suspects, strike, write }: SuspectListProps): TemplateResult | typeof nothing {
  if (suspects.length === 0) return nothing;
  const doing = ({ act }: Suspect) =>
    act.does === "strike out"
      ? html`<button class="word" type="button" aria-label="strike out ${act.what}" @click=${() => strike(act.entry, "mis-read")}>strike out</button>`
      : html`<button class="word" type="button" aria-label="write the pour of ${act.what}" @click=${() => write(act)}>write this pour</button>`;
  return html`<section class="suspects" aria-labelledby="suspects-title">
    <h3 id="suspects-title">What this log has probably left out or got wrong</h3>
    <ul>${suspects.map((one) => html`<li><p>${one.says[0]?.toUpperCase()}${one.says.slice(1)}: <span class="faint">${one.reason}.</span></p>${doing(one)}</li>`)}</ul>
  </section>`;
}
