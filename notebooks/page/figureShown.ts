import { html, nothing, type TemplateResult } from "lit-html";
import type { Beside } from "./drawings.ts";

export interface FigureProps {
  readonly number: number;
  readonly title: string;
  readonly caption: string;
  readonly drawing: Element | undefined;
  /** Why it could not be drawn. */
  readonly failed: string | undefined;
  /** Lines are worked: it shows what stood before. */
  readonly stale: boolean;
  readonly beside: Beside | undefined;
  readonly cautions: readonly string[];
  /** Drawn within the sheet's margins. */
  readonly inset?: boolean;
  /** Said where it is being worked: how far it is. */
  readonly waiting?: unknown;
  /** Words beside those that save it: remove. */
  readonly tools?: unknown;
  readonly savePng: () => void;
  readonly saveSvg: () => void;
}

/** A ranked list: what, how, and what it would gain. */
const ranked = ({ title, items }: Beside): TemplateResult => html`<section class="ranked">
  <h2>${title}</h2>
  <ol>${items.map(({ what, how, gain }) => html`<li><p><b>${what}.</b> ${how}</p><p class="gain">${gain}</p></li>`)}</ol>
</section>`;

/** A figure from edge to edge, its caption below, and two words that save it as a picture. */
export function figureShown(props: FigureProps): TemplateResult | typeof nothing {
  const { number, title, caption, drawing, beside, cautions, savePng, saveSvg } = props;
  if (!drawing)
    return html`<div class="sheet">
      ${props.failed === undefined ? nothing : html`<p class="because"><b>stopped</b> the figure “${title}” could not be drawn: ${props.failed} ${props.tools}</p>`}
      ${props.waiting}
      ${beside ? ranked(beside) : nothing}
    </div>`;
  const figure = html`<figure class="${props.stale ? "stale" : ""} ${props.inset ? "inset" : ""}">
    ${drawing}
    <figcaption>
      <b>${number}.</b> <i>${title}.</i> ${caption}${props.stale ? html` <span class="faint stale-word">before</span>` : nothing}
      <span class="tools">save as <button class="word" type="button" aria-label="save figure ${number} as PNG" @click=${savePng}>PNG</button><button class="word" type="button" aria-label="save figure ${number} as SVG" @click=${saveSvg}>SVG</button> ${props.tools}</span>
      ${props.waiting}
      ${cautions.map((says) => html`<p class="caution"><strong>Caution.</strong> ${says}</p>`)}
    </figcaption>
  </figure>`;
  return beside ? html`<div class="with-beside">${figure}${ranked(beside)}</div>` : figure;
}
