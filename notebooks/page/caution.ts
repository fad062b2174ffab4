import { html, type TemplateResult } from "lit-html";

/** A caution with its hatch and its word: Danger is for harm to a person alone. */
export function caution(says: string, content: unknown = says.replace(/^(Danger|Caution)\.\s*/, "")): TemplateResult {
  const word = says.startsWith("Danger.") ? "Danger." : "Caution.";
  return html`<p class="caution ${word === "Danger." ? "danger" : ""}"><strong>${word}</strong> ${content}</p>`;
}
