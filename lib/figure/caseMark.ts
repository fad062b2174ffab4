import { linePath, svg } from "./svg.ts";

/** The mark that a case wears wherever it is drawn: its word, its shape around 0, 0 and whether it is filled. */
export interface CaseMark {
  readonly word: string;
  readonly path: string;
  readonly filled: boolean;
}

type Shape = (x: number, y: number, radius: number) => string;

const round: Shape = (x, y, radius) => {
  const across = Math.round(200 * radius) / 100;
  const half = across / 2;
  return `${linePath([[x - half, y]])}a${half},${half} 0 1 0 ${across},0a${half},${half} 0 1 0 ${-across},0Z`;
};

// Corners at these angles, in degrees clockwise from straight up; `size` makes the shapes look equally large.
const cornered =
  (size: number, ...angles: readonly number[]): Shape =>
  (x, y, radius) =>
    `${linePath(
      angles.map((angle): [number, number] => [
        x + size * radius * Math.sin((angle * Math.PI) / 180),
        y - size * radius * Math.cos((angle * Math.PI) / 180),
      ]),
    )}Z`;

const square = cornered(1.25, 45, 135, 225, 315);
const triangle = cornered(1.3, 0, 120, 240);
const upturned = cornered(1.3, 60, 180, 300);
const diamond = cornered(1.3, 0, 90, 180, 270);
const pentagon = cornered(1.15, 0, 72, 144, 216, 288);

// A filled dot among open shapes first; then the same shapes the other way about.
const marks: readonly (readonly [word: string, shape: Shape, filled: boolean])[] = [
  ["dot", round, true],
  ["square", square, false],
  ["triangle", triangle, false],
  ["triangle on its point", upturned, false],
  ["diamond", diamond, false],
  ["pentagon", pentagon, false],
  ["ring", round, false],
  ["solid square", square, true],
  ["solid triangle", triangle, true],
  ["solid triangle on its point", upturned, true],
  ["solid diamond", diamond, true],
  ["solid pentagon", pentagon, true],
];

const markOf = (index: number): (typeof marks)[number] => {
  const mark = Number.isInteger(index) && index >= 0 ? marks[index % marks.length] : undefined;
  if (!mark) throw new RangeError(`invalid case: ${index}; a whole number from 0`);
  return mark;
};

/**
 * The mark of the case at `index`, a whole number from 0: a shape, never a colour. Twelve differ, then they come round
 * again. The path lies around 0, 0, about twice `radius` px across (default 4). Throws a RangeError for another index.
 * @example caseMark(2).word // "triangle"
 */
export function caseMark(index: number, radius = 4): CaseMark {
  const [word, , filled] = markOf(index);
  return { word, path: caseMarkPath(index, 0, 0, radius), filled };
}

/**
 * Path data of a case's mark around a point, px.
 * @example caseMarkPath(4, 10, 10, 5) // "M10,3.5L16.5,10L10,16.5L3.5,10Z"
 */
export function caseMarkPath(index: number, x: number, y: number, radius = 4): string {
  return markOf(index)[1](x, y, radius);
}

/**
 * A case's mark at a point, px: ink, open shapes filled with the ground so that no line shows through them.
 * @example group.append(drawCaseMark(document, 0, 100, 20))
 */
export function drawCaseMark(document: Document, index: number, x: number, y: number, radius = 4): SVGElement {
  const { word, filled } = caseMark(index);
  return svg(document, "path", { d: caseMarkPath(index, x, y, radius), ...markPaint(filled), "data-mark": word });
}

/** How a mark is painted. */
export const markPaint = (filled: boolean) =>
  ({
    fill: filled ? "var(--ink)" : "var(--ground)",
    stroke: "var(--ink)",
    "stroke-width": filled ? 0.6 : 1.4,
    "stroke-linejoin": "round",
  }) as const;
