import { drawLabel } from "./drawLabel.ts";
import type { HoldFrame } from "./holdFrame.ts";
import { type Label, placeLabels } from "./placeLabels.ts";
import { svg } from "./svg.ts";
import type { HoldReplayedData } from "./types.ts";
import { shortened } from "./words.ts";

/**
 * Words standing on the time rule where the fire changed or something was remarked; a word that finds no room is
 * left out, its mark stays.
 * @example group.append(drawEvents(data, frame))
 */
export function drawEvents(data: HoldReplayedData, frame: HoldFrame): SVGElement {
  const { document, size } = frame;
  const foot = frame.plateBottom - 1;
  const group = svg(document, "g", { "data-part": "events" });
  const labels: Label[] = [];
  for (const event of data.events) {
    const along = frame.x(event.time);
    group.appendChild(
      svg(document, "line", {
        x1: along,
        x2: along,
        y1: foot - 9,
        y2: foot,
        stroke: "var(--fire)",
        "stroke-width": 3,
        "data-mark": "event",
      }),
    );
    const y = foot - 2;
    labels.push({
      lines: [{ text: shortened(event.text, frame.narrow ? 18 : 30) }],
      size,
      spots: [
        { x: along + 5, y, side: "above", anchor: "start" },
        { x: along - 5, y, side: "above", anchor: "end" },
      ],
    });
  }
  const marks = [data.partsIn, data.partsOut].filter((time) => time !== undefined).map((time) => frame.x(time));
  const placed = placeLabels(labels, {
    bounds: { x: frame.left, y: foot - size - 8, width: frame.width - frame.left - 2, height: size + 8 },
    boxes: data.events.map((event) => ({ x: frame.x(event.time) - 1, y: foot - 9, width: 2, height: 9 })),
    segments: marks.map((along) => [along, foot - 40, along, foot]),
  });
  for (const one of placed) group.appendChild(drawLabel(document, one));
  return group;
}
