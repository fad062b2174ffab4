import { max } from "d3";
import { drawLabel } from "./drawLabel.ts";
import type { HoldFrame } from "./holdFrame.ts";
import { type Label, placeLabels } from "./placeLabels.ts";
import { svg } from "./svg.ts";
import type { AdditionDrawn, Box, HoldReplayedData } from "./types.ts";
import { drawUnwrittenBar, unwrittenLabels } from "./unwritten.ts";
import { counted, decimal, figuresFor } from "./words.ts";

/** An amount of water without its unit, in the unit of the figure. */
export const amountText = (mass: number, frame: Pick<HoldFrame, "units">): string => {
  const amount = frame.units.water.fromSI(mass);
  return decimal(amount, amount >= 10 ? 0 : Math.min(1, figuresFor(amount)), frame.units.system);
};

/** Words for all the water put in: the caller's, or the sum of the pours. */
export function pouredWords(data: HoldReplayedData, frame: Pick<HoldFrame, "units">): string {
  if (data.sums?.poured) return data.sums.poured;
  const sum = data.additions.reduce((total, one) => total + one.mass, 0);
  const feeds = data.additions.some((one) => (one.duration ?? 0) > 0);
  return `${amountText(sum, frame)} ${frame.units.water.name} in ${counted(data.additions.length, feeds ? "addition" : "pour")}`;
}

const barBox = (
  one: Pick<AdditionDrawn, "time" | "mass" | "duration">,
  largest: number,
  thickness: number,
  frame: HoldFrame,
): Box => {
  const along = frame.x(one.time);
  const length = one.duration ? Math.max(thickness, frame.x(one.time + one.duration) - along) : thickness;
  return {
    x: one.duration ? along : along - thickness / 2,
    y: frame.waterTop,
    width: length,
    height: Math.max(1.5, (Math.max(0, one.mass) / largest) * frame.waterDepth),
  };
};

/**
 * Water hanging down from its own line below the time rule: height is volume, the amount beside it where there is
 * room. Nothing where no water went in.
 * @example group.append(drawWater(data, frame))
 */
export function drawWater(data: HoldReplayedData, frame: HoldFrame): SVGElement {
  const { document, size, units } = frame;
  const group = svg(document, "g", { "data-part": "water" });
  const unwritten = data.unwritten ?? [];
  const count = data.additions.length + unwritten.length;
  if (count === 0) return group;
  const largest = Math.max(max([...data.additions, ...unwritten], (one) => one.mass) ?? 0, 1e-9);
  const room = (frame.right - frame.left) / count;
  const thickness = Math.max(1, Math.min(frame.narrow ? 7 : 10, room * 0.6));
  group.appendChild(
    svg(document, "line", {
      x1: frame.left,
      x2: frame.right,
      y1: frame.waterTop,
      y2: frame.waterTop,
      stroke: "var(--rule)",
      "stroke-width": 1,
    }),
  );
  const bars = data.additions.map((one) => ({ one, box: barBox(one, largest, thickness, frame) }));
  for (const { box } of bars)
    group.appendChild(svg(document, "rect", { ...box, fill: "var(--water)", "data-mark": "water" }));
  const hollow = unwritten.map((one) => ({ one, box: barBox(one, largest, Math.max(5, thickness), frame) }));
  for (const { one, box } of hollow) group.appendChild(drawUnwrittenBar(document, one, box));
  const amounts: Label[] = [...bars]
    .sort((a, b) => b.one.mass - a.one.mass)
    // So many pours that few amounts would find room: a chance choice of them tells less than the largest alone.
    .slice(0, room < 26 ? 1 : bars.length)
    .map(({ one, box }) => {
      const foot = frame.waterTop + box.height;
      const spot = (x: number, anchor: "start" | "end") => ({ x, y: foot + 2, side: "above" as const, anchor });
      return {
        lines: [{ text: one.label ?? amountText(one.mass, frame), weight: 500 }],
        size,
        spots: [
          {
            x: box.x + box.width + 4,
            y: Math.max(foot - size / 2, frame.waterTop + size / 2 + 3),
            side: "level",
            anchor: "start",
          },
          spot(box.x - 4, "end"),
        ],
      };
    });
  const name: Label[] = frame.narrow
    ? [
        {
          lines: [{ text: units.water.name, colour: "var(--ink)" }],
          size,
          spots: [{ x: 4, y: frame.waterTop + 2, side: "below", anchor: "start" }],
        },
      ]
    : [
        {
          lines: [
            { text: "water", weight: 600 },
            { text: units.water.name, colour: "var(--faint)" },
          ],
          size,
          spots: [
            { x: frame.left - 18, y: frame.waterTop + 2, side: "below", anchor: "end" },
            { x: 2, y: frame.waterTop + 2, side: "below", anchor: "start" },
          ],
        },
        {
          lines: [{ text: data.additions.length > 0 ? pouredWords(data, frame) : "none written" }],
          size,
          spots: [{ x: frame.right + 14, y: frame.waterTop + 4, side: "below", anchor: "start" }],
        },
      ];
  const placed = placeLabels([...name, ...unwrittenLabels(hollow, frame), ...amounts], {
    bounds: { x: 2, y: frame.waterTop - 2, width: frame.width - 4, height: frame.height - frame.waterTop },
    boxes: [...bars, ...hollow].map(({ box }) => ({ ...box, width: box.width - 0.5 })),
    segments: [],
  });
  for (const one of placed) group.appendChild(drawLabel(document, one));
  return group;
}
