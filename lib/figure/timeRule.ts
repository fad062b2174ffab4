import { ruleTicks } from "./ruleTicks.ts";
import { steelRule } from "./steelRule.ts";
import { svg } from "./svg.ts";
import { decimal } from "./words.ts";

export interface TimeRule {
  readonly document: Document;
  /** Ends of the rule and the moment that minutes count from, s from the first row. */
  readonly start: number;
  readonly end: number;
  readonly zero: number;
  readonly zeroName: string;
  readonly left: number;
  readonly right: number;
  readonly width: number;
  readonly narrow: boolean;
  readonly size: number;
  readonly x: (seconds: number) => number;
  /** px down to the rule's edge. */
  readonly edge: number;
  /** Where "minutes from parts in" stands. */
  readonly name: "left" | "right" | "below";
}

/** px that a time rule takes below its edge, its name included. */
export const timeRuleHeight = (rule: Pick<TimeRule, "size" | "name">): number =>
  rule.size + (rule.name === "below" ? rule.size * 1.4 : 0) + 24;

/**
 * The time rule: minutes with three lengths of ticks, and once what they count from.
 * @example group.append(drawTimeRule(rule))
 */
export function drawTimeRule(rule: TimeRule): SVGElement {
  const { document, size, left, right, edge } = rule;
  const minutes = (seconds: number) => (seconds - rule.zero) / 60;
  const steel = steelRule(document, {
    ticks: ruleTicks(minutes(rule.start), minutes(rule.end), right - left, rule.narrow ? 44 : 60, "minutes"),
    at: (value) => rule.x(value * 60 + rule.zero),
    from: left,
    to: right,
    edge,
    side: "below",
    figure: (value) => decimal(value, 1),
    size,
  });
  const baseline = edge + 15 + size;
  const places = {
    left: { x: 4, y: baseline, "text-anchor": "start" },
    right: { x: right + 14, y: baseline, "text-anchor": "start" },
    below: { x: right, y: baseline + size * 1.4, "text-anchor": "end" },
  };
  const long = rule.name === "below" || rule.width >= 1000;
  const text = rule.name === "left" ? "min" : `${long ? "minutes" : "min"} from ${rule.zeroName}`;
  const fill = rule.narrow ? "var(--ink)" : "var(--faint)";
  return svg(document, "g", { "data-part": "time" }, [
    steel,
    svg(document, "text", { ...places[rule.name], "font-size": size, fill }, [text]),
  ]);
}
