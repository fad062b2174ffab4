import { dimensionLine } from "./dimensionLine.ts";
import { hatched } from "./hatch.ts";
import { cuts, type HeatLay, type HeatPlace, thinLine, within } from "./heatAcross.ts";
import { drawHeatText, heatText } from "./heatLabel.ts";
import type { HeatLabel, HeatSplit } from "./heatSplit.ts";
import { spreadOut } from "./spreadOut.ts";
import { svg } from "./svg.ts";

/**
 * The bar on end, for a phone or where labels find no room side by side: labels to its right in the order of the
 * pieces, the gas as a thinner stock at its left. It grows as long as its labels need.
 */
export function heatUpright(
  split: HeatSplit,
  place: HeatPlace,
  whole: { readonly total?: HeatLabel; readonly burnt?: HeatLabel },
): HeatLay {
  const { document, size, left } = place;
  const [gasLeft, gasRight] = [left + 18, left + 34];
  const barLeft = split.fire ? left + 150 : left + 20;
  const barRight = barLeft + 40;
  const dimensions = barRight + 12;
  const textX = dimensions + 26;
  const room = place.width - 8 - textX;
  const texts = split.pieces.map((piece) => heatText(piece.label, size, room));
  const heading = whole.total ? heatText(whole.total, size, place.width - 8 - barLeft) : undefined;
  const burnt = split.fire && whole.burnt ? heatText(whole.burnt, size, barLeft - left - 10) : undefined;
  const top = Math.max(heading?.height ?? 0, burnt?.height ?? 0) + 18;
  const needed = texts.reduce((sum, text) => sum + text.height + 12, 0);
  const length = Math.max(260, needed);
  const foot = top + length;
  const ends = cuts(split, top, length);
  const centres = spreadOut(
    ends.map(([start, end]) => (start + end) / 2),
    texts.map((text) => text.height),
    { gap: 11, low: top, high: foot },
  );
  const pieces = split.pieces.flatMap((piece, index) => {
    const [start = top, end = top] = ends[index] ?? [];
    const text = texts[index];
    const centre = centres?.[index] ?? start;
    const from = within(centre, start, end);
    if (!text) return [];
    const kerf = end - start > 5 ? 1 : 0;
    const box = { x: barLeft, y: start + kerf, width: 40, height: Math.max(0.8, end - start - 2 * kerf) };
    return [
      svg(document, "g", { "data-piece": piece.kind }, [
        hatched(document, piece.hatch, box),
        ...dimensionLine(document, [dimensions, start], [dimensions, end]),
        thinLine(document, [
          [dimensions + 3, from],
          [dimensions + 8, from],
          [textX - 8, centre],
          [textX - 4, centre],
        ]),
        ...drawHeatText(document, text, { x: textX, y: centre - text.height / 2, anchor: "start" }),
      ]),
    ];
  });
  const marks = [top, ...ends.map(([, end]) => end)].map((y) =>
    thinLine(document, [
      [barRight + 3, y],
      [dimensions + 5, y],
    ]),
  );
  const share = Math.min(1, Math.max(0, (split.total?.value ?? 0) / split.stock));
  const overall = [
    ...(heading ? drawHeatText(document, heading, { x: barLeft, y: 2, anchor: "start" }) : []),
    ...(split.fire
      ? []
      : [
          thinLine(document, [
            [barLeft - 3, top],
            [barLeft - 17, top],
          ]),
          thinLine(document, [
            [barLeft - 3, top + share * length],
            [barLeft - 17, top + share * length],
          ]),
          ...dimensionLine(document, [barLeft - 12, top], [barLeft - 12, top + share * length]),
        ]),
  ];
  const elements = [...pieces, ...marks, svg(document, "g", { "data-part": "whole" }, overall)];
  if (!split.fire || !burnt) return { elements, bottom: foot + 12 };
  const into = split.total?.value ?? 0;
  const cut = top + (into / (into + split.fire.past.length)) * length;
  const past = heatText(split.fire.past.label, size);
  const mark = left + 6;
  const gas = [
    ...drawHeatText(document, burnt, { x: left, y: 2, anchor: "start" }),
    hatched(document, "fire", { x: gasLeft, y: top, width: 16, height: Math.max(0.8, cut - top - 1) }),
    hatched(document, "lost fire", { x: gasLeft, y: cut + 1, width: 16, height: Math.max(0.8, foot - cut - 1) }),
    thinLine(document, [
      [gasRight + 3, top],
      [barLeft - 3, top],
    ]),
    thinLine(document, [
      [gasRight + 3, cut],
      [barLeft - 3, foot],
    ]),
    ...[cut, foot].map((y) =>
      thinLine(document, [
        [mark - 5, y],
        [gasLeft - 3, y],
      ]),
    ),
    ...dimensionLine(document, [mark, cut], [mark, foot]),
    thinLine(document, [
      [mark, foot + 3],
      [mark, foot + 14],
    ]),
    ...drawHeatText(document, past, { x: left, y: foot + 18, anchor: "start" }),
  ];
  return {
    elements: [...elements, svg(document, "g", { "data-part": "gas" }, gas)],
    bottom: foot + 18 + past.height + 14,
  };
}
