import { colourNames, type Palette, palettes } from "./palette.ts";
import { svg } from "./svg.ts";
import { svgText, xmlText } from "./svgText.ts";
import { textWidth } from "./textWidth.ts";
import { titleLines } from "./titleLines.ts";
import { wrapped } from "./wrapped.ts";

export interface StandAloneOptions {
  /** The answer, as a sentence. */
  readonly title: string;
  /** Setup, counts, and what else must not be lost when the picture travels alone; one line each. */
  readonly foot?: readonly string[];
  /** Puts the boxed words "Invented data" on the picture. */
  readonly invented?: boolean;
  readonly palette?: "light" | "dark" | "print";
  /** The two faces as data URLs (woff2); without them the picture falls back on what its reader has. */
  readonly fonts?: { readonly besley?: string; readonly nationalPark?: string };
  /** px; the figure should be drawn at the same width. Default 1200. */
  readonly width?: number;
}

/** Said on every picture: what ± and the fill mean. */
export const meaningOfSpread =
  "± is the 95 % spread; the fill around a line is the same. The strip is the target band.";

const reading = '"Besley Variable", Besley, Georgia, serif';
const cutting = '"National Park Variable", "National Park", sans-serif';

/**
 * A figure as the text of an SVG file that stands alone: its title the answer, its foot the setup and the meaning of
 * ±, every colour a plain value, the fonts inside, "Invented data" boxed where it is. Only `data:` fonts are taken.
 * @example
 * const figure = runStrip({ readings: [], additions: [], span: { start: 0, end: 60 } }, { document, width: 1200, system: "US" });
 * standAlone(figure, { title: "No run yet" }).includes("var(") // false
 */
export function standAlone(figure: SVGSVGElement, options: StandAloneOptions): string {
  const document = figure.ownerDocument;
  const width = options.width ?? 1200;
  const palette = palettes[options.palette ?? "light"];
  const margin = Math.round(width * 0.073);
  const titleSize = width < 800 ? 22 : 31;
  const footSize = 15;
  const title = titleLines(options.title, titleSize, width - 2 * margin);
  const titleTop = 56;
  const figureTop = titleTop + title.length * titleSize * 1.4 + 20;
  const [figureWidth, figureHeight] = [measure(figure, "width"), measure(figure, "height")];
  const drawnHeight = figureHeight * (width / figureWidth);
  const footTop = figureTop + drawnHeight + 40;
  const box = textWidth("Invented data", footSize, 600) + 26;
  const room = width - 2 * margin - (options.invented ? box + 24 : 0);
  const lines = [...(options.foot ?? []), meaningOfSpread].flatMap((line) => wrapped(line, footSize, room));
  const height = Math.round(footTop + lines.length * footSize * 1.5 + 28);

  const inner = figure.cloneNode(true) as SVGSVGElement;
  for (const [name, value] of Object.entries({
    x: 0,
    y: Math.round(figureTop),
    width,
    height: Math.round(drawnHeight),
  }))
    inner.setAttribute(name, String(value));
  inner.setAttribute("overflow", "visible");
  for (const name of ["role", "aria-label", "class", "xmlns"]) inner.removeAttribute(name);

  const foot = lines.map((line, index) =>
    svg(
      document,
      "text",
      {
        x: margin,
        y: footTop + index * footSize * 1.5,
        "font-size": footSize,
        "font-weight": index === 0 && options.foot ? 500 : 400,
      },
      [line],
    ),
  );
  const root = svg(
    document,
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
      role: "img",
      "aria-label": `${options.title}${options.invented ? " (invented data)" : ""} ${figure.getAttribute("aria-label") ?? ""}`,
      "font-family": cutting,
      fill: "var(--ink)",
    },
    [
      svg(document, "rect", { x: 0, y: 0, width, height, fill: "var(--ground)" }),
      ...title.map((line, index) =>
        svg(
          document,
          "text",
          { x: margin, y: titleTop + titleSize * (0.4 + index * 1.4), "font-size": titleSize, "font-family": reading },
          line.map((part) =>
            part.kind === "words"
              ? part.text
              : svg(
                  document,
                  "tspan",
                  part.kind === "number"
                    ? { "font-weight": 600 }
                    : { "font-size": Math.max(14, titleSize * 0.6), "font-family": cutting },
                  [part.text],
                ),
          ),
        ),
      ),
      inner,
      ...foot,
      ...(options.invented ? inventedBox(document, width - margin - box, footTop - footSize, box, footSize) : []),
    ],
  );
  const style = svg(document, "style", {}, [fontFaces(options.fonts ?? {})]);
  root.insertBefore(style, root.firstChild);
  return plainColours(svgText(root), palette);
}

function inventedBox(document: Document, x: number, y: number, width: number, size: number): readonly SVGElement[] {
  const frame = { x, y, width, height: size * 2, fill: "none", stroke: "var(--ink)", "stroke-width": 1.2 };
  const text = { x: x + width / 2, y: y + size * 1.35, "text-anchor": "middle", "font-size": size, "font-weight": 600 };
  return [svg(document, "rect", frame), svg(document, "text", text, ["Invented data"])];
}

function fontFaces(fonts: NonNullable<StandAloneOptions["fonts"]>): string {
  const face = (family: string, url: string | undefined): string => {
    if (url === undefined) return "";
    if (!/^data:[\w/+.;=-]*,[\w+/=%-]*$/.test(url))
      throw new TypeError(`invalid font of ${family}: ${url.slice(0, 40)}; a data: URL`);
    return `@font-face{font-family:"${family}";font-weight:200 900;src:url(${url}) format("woff2")}`;
  };
  // The tabular 0 of the reading face has one weight, thin beside its other figures.
  const tabular =
    'text{font-feature-settings:"tnum";white-space:pre}text[font-family*="Besley"]{font-feature-settings:normal}';
  return face("Besley Variable", fonts.besley) + face("National Park Variable", fonts.nationalPark) + tabular;
}

/** Every `var(--name)` of the palette's names as its plain value. */
function plainColours(text: string, palette: Palette): string {
  const named = new RegExp(`var\\(--(${colourNames.join("|")})\\)`, "g");
  const values = new Map<string, string>(colourNames.map((name) => [name, palette[name].hex]));
  return text.replace(named, (whole, name: string) => values.get(name) ?? xmlText(whole));
}

function measure(figure: SVGSVGElement, name: "width" | "height"): number {
  const value = Number(figure.getAttribute(name));
  if (!(value > 0)) throw new RangeError(`invalid figure ${name}: ${figure.getAttribute(name)}; px above 0`);
  return value;
}
