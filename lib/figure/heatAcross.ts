import { dimensionLine } from "./dimensionLine.ts";
import { hatched } from "./hatch.ts";
import { drawHeatText, heatText } from "./heatLabel.ts";
import type { HeatPiece, HeatSplit } from "./heatSplit.ts";
import { spreadOut } from "./spreadOut.ts";
import { linePath, svg } from "./svg.ts";
import { textWidth } from "./textWidth.ts";

/** What both lays of the figure need. */
export interface HeatPlace {
  readonly document: Document;
  readonly width: number;
  readonly size: number;
  readonly left: number;
  readonly right: number;
  /** Words of the whole: the longest first, to be taken as there is room. */
  readonly wholeWords: readonly string[];
  readonly burntWords: string;
}

export interface HeatLay {
  readonly elements: readonly SVGElement[];
  /** px down to where the notes may start. */
  readonly bottom: number;
}

type Point = readonly [number, number];

/** A thin line: leader, extension or projection. */
export const thinLine = (document: Document, points: readonly Point[]): SVGElement =>
  svg(document, "path", { d: linePath(points), stroke: "var(--ink)", "stroke-width": 0.9, fill: "none" });

/** Where each piece starts and ends, px along a bar of a length. */
export function cuts(split: HeatSplit, from: number, length: number): readonly (readonly [number, number])[] {
  let at = 0;
  return split.pieces.map((piece) => {
    const start = from + (at / split.stock) * length;
    at += piece.length;
    return [start, from + (at / split.stock) * length];
  });
}

/**
 * The bar from left to right: pieces with their dimension lines below, labels under them in one row, the whole
 * outermost; above it the gas as a thinner stock, from which it is cut. Nothing where the labels find no room.
 */
export function heatAcross(split: HeatSplit, place: HeatPlace): HeatLay | undefined {
  const { document, size, left, right } = place;
  const ends = cuts(split, left, right - left);
  const texts = split.pieces.map((piece) => heatText(piece.label, size));
  const middles = ends.map(([start, end]) => (start + end) / 2);
  const room = { gap: 16, low: left + 8, high: right - 8 };
  const centres = spreadOut(
    middles,
    texts.map((text) => text.width),
    room,
  );
  if (!centres) return undefined;
  const gas = split.fire ? gasAcross(split, split.fire, place) : { elements: [], bottom: 8 };
  const top = gas.bottom;
  const foot = top + 44;
  const dimensions = foot + 14;
  const words = dimensions + 34;
  const tallest = Math.max(0, ...texts.map((text) => text.height));
  const outermost = words + tallest + 24;
  const pieces = split.pieces.flatMap((piece, index) => {
    const [start = left, end = left] = ends[index] ?? [];
    const text = texts[index];
    const centre = centres[index] ?? start;
    const from = within(centre, start, end);
    if (!text) return [];
    const under = centre - text.width / 2 >= start - 2 && centre + text.width / 2 <= end + 2;
    const leader: Point[] = [
      [from, dimensions + 3],
      [from, dimensions + 8],
      [centre, words - 8],
      [centre, words - 4],
    ];
    return [
      svg(document, "g", { "data-piece": piece.kind }, [
        hatched(document, piece.hatch, pieceBox(start, end, top, foot)),
        ...dimensionLine(document, [start, dimensions], [end, dimensions]),
        ...(under ? [] : [thinLine(document, leader)]),
        ...drawHeatText(document, text, { x: centre, y: words, anchor: "middle" }),
      ]),
    ];
  });
  const whole = (split.total?.value ?? 0) / split.stock;
  const wholeEnd = left + Math.min(1, Math.max(0, whole)) * (right - left);
  const inner = ends.slice(1).map(([start]) =>
    thinLine(document, [
      [start, foot + 3],
      [start, dimensions + 5],
    ]),
  );
  const outer = [left, right].map((x) =>
    thinLine(document, [
      [x, foot + 3],
      [x, (x === left || wholeEnd > right - 1 ? outermost : dimensions) + 5],
    ]),
  );
  const said = place.wholeWords.find((text) => textWidth(text, size, 600) + 60 < wholeEnd - left);
  const gap = said ? textWidth(said, size, 600) + 16 : 0;
  const sum = [
    ...(wholeEnd > right - 1
      ? []
      : [
          thinLine(document, [
            [wholeEnd, words + tallest + 8],
            [wholeEnd, outermost + 5],
          ]),
        ]),
    ...dimensionLine(document, [left, outermost], [wholeEnd, outermost], gap),
    ...(said ? [words600(document, said, (left + wholeEnd) / 2, outermost + size * 0.35, size, "middle")] : []),
    ...(said
      ? []
      : [words600(document, place.wholeWords.at(-1) ?? "", left, outermost + size * 0.35 + 18, size, "start")]),
  ];
  return {
    elements: [...gas.elements, ...pieces, ...inner, ...outer, svg(document, "g", { "data-part": "whole" }, sum)],
    bottom: outermost + (said ? 18 : 36),
  };
}

/** The place on a piece from which a leader goes to a label: as near to the label as the piece reaches. */
export function within(wanted: number, start: number, end: number): number {
  const aside = Math.min(10, (end - start) / 2);
  return Math.min(Math.max(wanted, start + aside), end - aside);
}

/** Text of the whole and of the gas. */
export const words600 = (
  document: Document,
  text: string,
  x: number,
  y: number,
  size: number,
  anchor: "start" | "middle" | "end",
): SVGElement =>
  svg(document, "text", { x, y, "text-anchor": anchor, "font-size": size, "font-weight": 600, fill: "var(--ink)" }, [
    text,
  ]);

// A saw takes its kerf; a piece too short for that keeps its length, and no piece is thinner than a hair.
function pieceBox(start: number, end: number, top: number, foot: number) {
  const kerf = end - start > 5 ? 1 : 0;
  return { x: start + kerf, y: top, width: Math.max(0.8, end - start - 2 * kerf), height: foot - top };
}

function gasAcross(
  split: HeatSplit,
  fire: { readonly past: HeatPiece },
  { document, size, left, right, burntWords }: HeatPlace,
): HeatLay {
  const intoBath = split.total?.value ?? 0;
  const cut = left + (intoBath / (intoBath + fire.past.length)) * (right - left);
  const one = `${fire.past.label.name} ${[fire.past.label.number, fire.past.label.spread, ...fire.past.label.words].filter(Boolean).join(" ")}`;
  const [overall, near, top, foot, next] = [size, size * 2.9, size * 2.9 + 12, size * 2.9 + 24, size * 2.9 + 58];
  const length = textWidth(one, size);
  const fits = length + 44 < right - cut;
  const text = (x: number, anchor: string) =>
    svg(document, "text", { x, y: near + size * 0.35, "text-anchor": anchor, "font-size": size, fill: "var(--ink)" }, [
      one,
    ]);
  const line = (from: Point, to: Point) => thinLine(document, [from, to]);
  const elements = [
    line([left, top - 3], [left, overall - 5]),
    line([right, top - 3], [right, overall - 5]),
    line([cut, top - 3], [cut, near - 5]),
    ...dimensionLine(document, [left, overall], [right, overall], textWidth(burntWords, size, 600) + 16),
    words600(document, burntWords, (left + right) / 2, overall + size * 0.35, size, "middle"),
    ...dimensionLine(document, [cut, near], [right, near], fits ? length + 12 : 0),
    fits ? text((cut + right) / 2, "middle") : text(cut - 10, "end"),
    hatched(document, "fire", { x: left, y: top, width: Math.max(0.8, cut - left - 1), height: foot - top }),
    hatched(document, "lost fire", {
      x: Math.min(cut + 1, right - 0.8),
      y: top,
      width: Math.max(0.8, right - cut - 1),
      height: foot - top,
    }),
    line([left, foot + 3], [left, next - 3]),
    line([cut, foot + 3], [right, next - 3]),
  ];
  return { elements: [svg(document, "g", { "data-part": "gas" }, elements)], bottom: next };
}
