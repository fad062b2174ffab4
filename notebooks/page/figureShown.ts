import { html, nothing, type TemplateResult } from "lit-html";

export interface FigureProps {
  readonly number: number;
  readonly title: string;
  readonly caption: string;
  readonly drawing: Element | undefined;
  readonly cautions: readonly string[];
  readonly savePng: () => void;
  readonly saveSvg: () => void;
}

/** A figure from edge to edge, its caption below, and two words that save it as a picture. */
export function figureShown(props: FigureProps): TemplateResult | typeof nothing {
  const { number, title, caption, drawing, cautions, savePng, saveSvg } = props;
  if (!drawing) return nothing;
  return html`<figure>
    ${drawing}
    <figcaption>
      <b>${number}.</b> <i>${title}.</i> ${caption}
      <span class="tools">save as <button class="word" type="button" aria-label="save figure ${number} as PNG" @click=${savePng}>PNG</button><button class="word" type="button" aria-label="save figure ${number} as SVG" @click=${saveSvg}>SVG</button></span>
      ${cautions.map((says) => html`<p class="caution"><strong>Caution.</strong> ${says}</p>`)}
    </figcaption>
  </figure>`;
}
