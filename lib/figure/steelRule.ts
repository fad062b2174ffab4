import type { Tick } from "./ruleTicks.ts";
import { svg } from "./svg.ts";

export interface SteelRule {
  readonly ticks: readonly Tick[];
  /** px at which a value of the rule lies. */
  readonly at: (value: number) => number;
  /** Ends of the rule's edge, px along it. */
  readonly from: number;
  readonly to: number;
  /** px of the edge across. */
  readonly edge: number;
  /** Which way the ticks point. */
  readonly side: "left" | "right" | "below";
  readonly figure: (value: number) => string;
  /** Whether a figure would stand too near to something else, by its px along the rule. */
  readonly taken?: (along: number) => boolean;
  readonly size: number;
}

const lengths = { 1: 5, 2: 8, 3: 12 } as const;

/**
 * A scale drawn as a steel rule: an edge, ticks of three lengths, figures at the long ones, no gridlines.
 * @example steelRule(document, { ticks, at: x, from: 96, to: 1000, edge: 400, side: "below", figure: String, size: 14 })
 */
export function steelRule(document: Document, rule: SteelRule): SVGElement {
  const upright = rule.side !== "below";
  const way = rule.side === "left" ? -1 : 1;
  const line = (along: readonly [number, number], across: readonly [number, number], width: number) =>
    svg(document, "line", {
      ...(upright
        ? { x1: across[0], x2: across[1], y1: along[0], y2: along[1] }
        : { x1: along[0], x2: along[1], y1: across[0], y2: across[1] }),
      stroke: "var(--ink)",
      "stroke-width": width,
    });
  const group = svg(document, "g", { "data-rule": rule.side }, [
    line([rule.from, rule.to], [rule.edge, rule.edge], 1.4),
  ]);
  for (const tick of rule.ticks) {
    const along = rule.at(tick.value);
    const end = rule.edge + way * lengths[tick.length];
    group.appendChild(line([along, along], [rule.edge, end], tick.length === 1 ? 0.7 : 1));
    if (!tick.figure || rule.taken?.(along)) continue;
    const past = rule.edge + way * (lengths[3] + 6);
    group.appendChild(
      svg(
        document,
        "text",
        {
          x: upright ? past : along,
          y: upright ? along + rule.size * 0.35 : rule.edge + lengths[3] + 3 + rule.size,
          "text-anchor": upright ? (rule.side === "left" ? "end" : "start") : "middle",
          "font-size": rule.size,
          fill: "var(--ink)",
        },
        [rule.figure(tick.value)],
      ),
    );
  }
  return group;
}
