import { html, svg, type TemplateResult } from "lit-html";
import { caseMark } from "../../../lib/figure/index.ts";

/** The mark of a case as a small drawing beside its name; the name says the same to who cannot see it. */
export function drawnMark(mark: number): TemplateResult {
  const { path, filled } = caseMark(mark, 4.5);
  return html`<svg class="case-mark" viewBox="-7 -7 14 14" width="14" height="14" aria-hidden="true" focusable="false">${svg`<path d=${path} fill=${filled ? "var(--ink)" : "var(--ground)"} stroke="var(--ink)" stroke-width=${filled ? 0.6 : 1.4} stroke-linejoin="round" />`}</svg>`;
}
