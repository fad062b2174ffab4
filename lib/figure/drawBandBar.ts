import { drawLabel } from "./drawLabel.ts";
import type { HoldFrame } from "./holdFrame.ts";
import { type Label, placeLabels, type Spot } from "./placeLabels.ts";
import { svg } from "./svg.ts";
import type { BandStretch, HoldReplayedData } from "./types.ts";
import { decimal } from "./words.ts";

/** Seconds as minutes: tenths below ten, whole from there. */
export const minutesText = (seconds: number): string => {
  const minutes = seconds / 60;
  return decimal(minutes, Math.abs(minutes) < 9.95 ? 1 : 0);
};

const lengthOf = (stretches: readonly BandStretch[]): number =>
  stretches.reduce((sum, one) => sum + (one.end - one.start), 0);

/** Words for the time in the band: the caller's, or the sum of its stretches. */
export function bandWords(data: HoldReplayedData): string {
  if (data.sums?.inBand) return data.sums.inBand;
  const inside = (data.inBand ?? []).filter((one) => one.side === "inside");
  return `in the band ${minutesText(lengthOf(inside))} of ${minutesText(lengthOf(data.inBand ?? []))} min`;
}

/**
 * Time in the band as a thick bar above the plate, thin where the bath stood over or under it, each thin stretch
 * saying how long and which way; parts in and parts out as extension lines down to the time rule.
 * @example group.append(drawBandBar(data, frame))
 */
export function drawBandBar(data: HoldReplayedData, frame: HoldFrame): SVGElement {
  const { document, size, x } = frame;
  const at = frame.plateTop - 12;
  const group = svg(document, "g", { "data-part": "time in the band" });
  const labels: Label[] = [];
  const stretches = (data.inBand ?? []).filter((one) => one.end > one.start);
  for (const one of stretches) {
    const height = one.side === "inside" ? 6 : 1;
    const x1 = x(one.start);
    const width = Math.max(0.5, x(one.end) - x1);
    group.appendChild(
      svg(document, "rect", { x: x1, y: at - height / 2, width, height, fill: "var(--ink)", "data-side": one.side }),
    );
  }
  const first = stretches[0];
  if (first) labels.push(above([{ text: bandWords(data), weight: 600 }], x(first.start), "start"));
  for (const one of [...stretches].sort((a, b) => b.end - b.start - (a.end - a.start))) {
    if (one.side === "inside" || one.end - one.start < 15) continue;
    const words = `${minutesText(one.end - one.start)} ${frame.narrow ? "" : "min "}${one.side}`;
    labels.push(above([{ text: words }], (x(one.start) + x(one.end)) / 2, "middle"));
  }
  const marks: [number | undefined, string, -1 | 1][] = [
    [data.partsIn, "parts in", -1],
    [data.partsOut, "parts out", 1],
  ];
  for (const [time, text, way] of marks) {
    if (time === undefined) continue;
    group.appendChild(
      svg(document, "line", {
        x1: x(time),
        x2: x(time),
        y1: at - 4,
        y2: frame.plateBottom,
        stroke: "var(--ink)",
        "stroke-width": 0.7,
        "data-mark": text,
      }),
    );
    const beside: Spot = { x: x(time) + way * 8, y: at, side: "level", anchor: way < 0 ? "end" : "start" };
    const inward: Spot = { x: x(time) - way * 4, y: at - 8, side: "above", anchor: way < 0 ? "start" : "end" };
    labels.push({ lines: [{ text }], size, spots: stretches.length > 0 ? [beside] : [beside, inward] });
  }
  const placed = placeLabels(labels, {
    bounds: { x: 2, y: 0, width: frame.width - 4, height: frame.plateTop },
    boxes: [],
    segments: [],
  });
  for (const one of placed) group.appendChild(drawLabel(document, one));
  return group;

  function above(lines: Label["lines"], along: number, anchor: Spot["anchor"]): Label {
    const spot = (dx: number, how: Spot["anchor"]): Spot => ({ x: along + dx, y: at - 7, side: "above", anchor: how });
    return {
      lines,
      size,
      spots: [spot(0, anchor), spot(0, "start"), spot(0, "end"), spot(-20, anchor), spot(20, anchor)],
    };
  }
}
