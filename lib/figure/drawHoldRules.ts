import { breakMark } from "./breakMark.ts";
import type { ScaleStretch } from "./brokenScale.ts";
import { type HoldFrame, stretchTicks } from "./holdFrame.ts";
import { marginLabels } from "./holdLabels.ts";
import { steelRule } from "./steelRule.ts";
import { linePath, svg } from "./svg.ts";
import { drawTimeRule } from "./timeRule.ts";
import type { HoldReplayedData } from "./types.ts";
import { decimal } from "./words.ts";

/**
 * The temperature rule at the left and the time rule between plate and water, each with its unit once at its end.
 * `limits` are figures that stand on the rule already: its own keep clear of them.
 */
export function drawHoldRules(frame: HoldFrame, limits: readonly { readonly at: number }[]): SVGElement {
  const { document, size } = frame;
  const unit = frame.units.temperature;
  const taken = (along: number) =>
    limits.some((limit) => Math.abs(limit.at - along) < size * 1.15) ||
    along < frame.plateTop + size * 2 ||
    frame.scale.breaks.some((at) => Math.abs(at - along) < size * 0.7);
  const upright = frame.scale.stretches.map((stretch: ScaleStretch, index) =>
    steelRule(document, {
      ticks: stretchTicks(stretch, unit, size),
      at: (value) => frame.y(unit.toSI(value)),
      from: stretch.highAt,
      // Down to the time rule, past the words that stand on it.
      to: index === 0 ? frame.plateBottom : stretch.lowAt,
      edge: frame.left,
      side: "left",
      figure: (value) => decimal(value, 2),
      taken,
      size,
    }),
  );
  const name = svg(
    document,
    "text",
    {
      x: frame.left - 18,
      y: frame.plateTop + size,
      "text-anchor": "end",
      "font-size": size,
      fill: frame.narrow ? "var(--ink)" : "var(--faint)",
    },
    [unit.name],
  );
  const along = drawTimeRule({ ...frame, edge: frame.plateBottom, name: frame.narrow ? "left" : "right" });
  return svg(document, "g", { "data-part": "rules" }, [
    ...upright,
    along,
    name,
    ...frame.scale.breaks.map((at) => breakMark(document, at, frame.left, frame.width)),
  ]);
}

/** An arrowed dimension line across the strip, in the right margin; nothing on a phone or without a target. */
export function drawBandDimension(data: HoldReplayedData, frame: HoldFrame): SVGElement {
  const group = svg(frame.document, "g", { "data-part": "band dimension" });
  if (!data.target || frame.narrow) return group;
  const x = frame.right + marginLabels - 12;
  const high = frame.y(data.target.high);
  const low = frame.y(data.target.low);
  const head = Math.min(7, (low - high) / 3);
  const arrow = (at: number, way: number) =>
    svg(frame.document, "path", {
      d: `${linePath([
        [x, at],
        [x - 2.6, at + way * head],
        [x + 2.6, at + way * head],
      ])}Z`,
      fill: "var(--ink)",
    });
  group.append(
    svg(frame.document, "line", { x1: x, x2: x, y1: high, y2: low, stroke: "var(--ink)", "stroke-width": 0.9 }),
    arrow(high, 1),
    arrow(low, -1),
  );
  return group;
}
