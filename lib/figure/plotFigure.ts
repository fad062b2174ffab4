import * as Plot from "@observablehq/plot";

export interface PlotFigure {
  readonly document: Document;
  readonly width: number;
  readonly height: number;
  /** What the figure says, for who cannot see it. */
  readonly finding: string;
  readonly x: { readonly domain: readonly number[]; readonly range: readonly number[] };
  readonly y: { readonly domain: readonly number[]; readonly range: readonly number[] };
  readonly marks: readonly Plot.Markish[];
  readonly name: string;
}

/** A mark of Plot's that draws one ready element. */
export const drawn =
  (element: SVGElement): Plot.RenderFunction =>
  () =>
    element;

/**
 * A figure on Plot's scales without its axes, colours and style sheet: everything seen is ours, every colour a
 * custom property, and a strict content-security policy finds no inline style element in it.
 * @example plotFigure({ document, width, height, finding, x, y, marks, name: "hold" })
 */
export function plotFigure(figure: PlotFigure): SVGSVGElement {
  const root = Plot.plot({
    document: figure.document,
    width: figure.width,
    height: figure.height,
    margin: 0,
    x: { axis: null, type: "linear", domain: [...figure.x.domain], range: [...figure.x.range] },
    y: { axis: null, type: "linear", domain: [...figure.y.domain], range: [...figure.y.range] },
    marks: [...figure.marks],
  }) as SVGSVGElement;
  for (const style of [...root.querySelectorAll("style")]) style.remove();
  // Inside an image nothing else is announced, and a label on a bare group is not allowed (WAI-ARIA 1.2, 6.6).
  for (const group of [...root.querySelectorAll("g[aria-label]")]) {
    group.setAttribute("data-mark", group.getAttribute("aria-label") ?? "");
    group.removeAttribute("aria-label");
  }
  root.setAttribute("class", "figure");
  root.setAttribute("data-figure", figure.name);
  root.setAttribute("role", "img");
  root.setAttribute("aria-label", figure.finding);
  root.setAttribute("font-family", '"National Park Variable", "National Park", sans-serif');
  root.setAttribute("fill", "var(--ink)");
  root.setAttribute("xmlns", "http://www.w3.org/2000/svg");
  root.removeAttribute("text-anchor");
  root.removeAttribute("font-size");
  root.style.setProperty("font-feature-settings", '"tnum"');
  root.style.setProperty("display", "block");
  root.style.setProperty("overflow", "visible");
  return root;
}
