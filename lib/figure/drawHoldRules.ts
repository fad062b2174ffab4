import type { ScaleStretch } from "./brokenScale.ts";
import { type HoldFrame, stretchTicks } from "./holdFrame.ts";
import { marginLabels } from "./holdLabels.ts";
import { ruleTicks } from "./ruleTicks.ts";
import { steelRule } from "./steelRule.ts";
import { linePath, svg } from "./svg.ts";
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
  const upright = frame.scale.stretches.map((stretch: ScaleStretch) =>
    steelRule(document, {
      ticks: stretchTicks(stretch, unit, size),
      at: (value) => frame.y(unit.toSI(value)),
      from: stretch.highAt,
      to: stretch.lowAt,
      edge: frame.left,
      side: "left",
      figure: (value) => decimal(value, 2),
      taken,
      size,
    }),
  );
  const minutes = (seconds: number) => (seconds - frame.zero) / 60;
  const along = steelRule(document, {
    ticks: ruleTicks(
      minutes(frame.start),
      minutes(frame.end),
      frame.right - frame.left,
      frame.narrow ? 44 : 60,
      "minutes",
    ),
    at: (value) => frame.x(value * 60 + frame.zero),
    from: frame.left,
    to: frame.right,
    edge: frame.plateBottom,
    side: "below",
    figure: (value) => decimal(value, 1),
    size,
  });
  const faint = { "font-size": size, fill: frame.narrow ? "var(--ink)" : "var(--faint)" };
  const names = [
    svg(document, "text", { x: frame.left - 18, y: frame.plateTop + size, "text-anchor": "end", ...faint }, [
      unit.name,
    ]),
    frame.narrow
      ? svg(document, "text", { x: 4, y: frame.plateBottom + 15 + size, ...faint }, ["min"])
      : svg(document, "text", { x: frame.right + 14, y: frame.plateBottom + 15 + size, ...faint }, [
          `${frame.width >= 1000 ? "minutes" : "min"} from ${frame.zeroName}`,
        ]),
  ];
  return svg(document, "g", { "data-part": "rules" }, [
    ...upright,
    along,
    ...names,
    ...frame.scale.breaks.map(breakMark),
  ]);

  // A short zigzag, as a drawing breaks a long part: beyond it the rule is squeezed.
  function breakMark(at: number): SVGElement {
    const zigzag = (x: number) =>
      linePath([
        [x - 10, at + 1],
        [x - 4, at - 4],
        [x + 4, at + 6],
        [x + 10, at + 1],
      ]);
    return svg(document, "g", { "data-mark": "break" }, [
      svg(document, "line", {
        x1: frame.left + 12,
        x2: frame.width,
        y1: at + 1,
        y2: at + 1,
        stroke: "var(--rule)",
        "stroke-width": 1,
        "stroke-dasharray": "12 4 3 4",
      }),
      svg(document, "path", { d: zigzag(frame.left), stroke: "var(--plate)", "stroke-width": 5, fill: "none" }),
      svg(document, "path", { d: zigzag(frame.left), stroke: "var(--ink)", "stroke-width": 1.2, fill: "none" }),
    ]);
  }
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
