const namespace = "http://www.w3.org/2000/svg";

export type Attributes = Readonly<Record<string, string | number>>;

const written = (value: string | number): string => {
  if (typeof value === "string") return value;
  if (!Number.isFinite(value)) throw new RangeError(`invalid drawing coordinate: ${value}; a finite number of px`);
  return String(Math.round(value * 100) / 100);
};

/**
 * An SVG element with attributes (numbers in px, to a hundredth) and children; a string child is its text.
 * Throws a RangeError for a coordinate that is not finite.
 * @example svg(document, "line", { x1: 0, x2: 10, y1: 5, y2: 5, stroke: "var(--ink)" })
 */
export function svg(
  document: Document,
  name: string,
  attributes: Attributes = {},
  children: readonly (Element | string)[] = [],
): SVGElement {
  const element = document.createElementNS(namespace, name) as SVGElement;
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, written(value));
  for (const child of children) {
    element.appendChild(typeof child === "string" ? document.createTextNode(child) : child);
  }
  return element;
}

/**
 * Path data of a line through points in px; empty for none.
 * @example linePath([[0, 0], [10, 5]]) // "M0,0L10,5"
 */
export function linePath(points: readonly (readonly [x: number, y: number])[]): string {
  return points.map(([x, y], index) => `${index ? "L" : "M"}${written(x)},${written(y)}`).join("");
}
