import { svg } from "./svg.ts";

export interface CaseFigure {
  readonly document: Document;
  readonly width: number;
  readonly height: number;
  readonly name: string;
  /** What the figure says, for who cannot see it. */
  readonly finding: string;
}

/**
 * The svg element around a figure that needs no plotting library: role, label, face and ink.
 * @example caseFigure({ document, width: 720, height: 300, name: "a sweep", finding }, [rule, lines])
 */
export function caseFigure(figure: CaseFigure, children: readonly SVGElement[]): SVGSVGElement {
  const { document, width, height } = figure;
  const root = svg(
    document,
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      class: "figure",
      "data-figure": figure.name,
      role: "img",
      "aria-label": figure.finding,
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
      "font-family": '"National Park Variable", "National Park", sans-serif',
      fill: "var(--ink)",
    },
    children,
  ) as SVGSVGElement;
  root.style.setProperty("font-feature-settings", '"tnum"');
  root.style.setProperty("display", "block");
  return root;
}
