import { digits } from "../measure/digits.ts";
import { cutTo } from "./cutTo.ts";
import { ruleTicks, type Tick } from "./ruleTicks.ts";
import { steelRule } from "./steelRule.ts";
import { svg } from "./svg.ts";
import { textWidth } from "./textWidth.ts";
import type { ValueScale } from "./valueScale.ts";

export interface ValueTicks {
  readonly ticks: readonly Tick[];
  readonly figure: (value: number) => string;
  /** px that the widest figure takes. */
  readonly widest: number;
}

/**
 * Ticks for numbers of any size, with figures that keep clear of each other and only the decimals that tell them apart.
 * @example valueTicks(valueScale([0, 0.002], 0, 300, 0), { size: 14, upright: false, system: "US" }).figure(0.001) // "0.0010"
 */
export function valueTicks(
  { low, high, from, to }: ValueScale,
  { size, upright, system }: { readonly size: number; readonly upright: boolean; readonly system: "US" | "metric" },
): ValueTicks {
  const pixels = Math.abs(to - from);
  // Counted in tens, hundreds … or tenths, so that rules of any size have ticks of the same kinds.
  const power = Math.floor(Math.log10(high - low)) - 1;
  const scaled = (value: number, by: number) => (by < 0 ? value * 10 ** -by : value / 10 ** by);
  const withGap = (gap: number): ValueTicks => {
    const ticks = ruleTicks(scaled(low, power), scaled(high, power), pixels, gap).map((tick) => ({
      ...tick,
      value: scaled(tick.value, -power),
    }));
    const [first, second] = ticks.filter((tick) => tick.figure).map((tick) => tick.value);
    const step = first === undefined || second === undefined ? high - low : second - first;
    const places = Math.max(0, -Math.floor(Math.log10(step) + 1e-6));
    const figure = (value: number) => digits(value, places, system);
    const widest = Math.max(
      0,
      ...ticks.filter((tick) => tick.figure).map((tick) => textWidth(figure(tick.value), size)),
    );
    return { ticks, figure, widest };
  };
  let found = withGap(size * 2.2);
  // Wider figures need a wider gap, and a wider gap other figures: three rounds settle it.
  for (let round = 0; round < 3 && !upright; round += 1) found = withGap(found.widest + size * 1.3);
  return found;
}

export interface FootRule {
  readonly scale: ValueScale;
  readonly ticks: ValueTicks;
  /** px of the edge. */
  readonly edge: number;
  /** What it measures and its unit; stands at the rule's end, below the figures. */
  readonly name: string;
  /** px that the name may take. */
  readonly room: number;
  /** Width of the figure, px. */
  readonly width: number;
  readonly size: number;
  readonly narrow: boolean;
  /** px of the baseline of a side rule's name. Default: just above the rule. */
  readonly nameAt?: number;
}

/** px that a rule along the foot takes below its edge. */
export const footRuleHeight = (size: number): number => 15 + size * 2.5 + 6;

/**
 * A steel rule along the foot of a figure, its name once at its end.
 * @example group.append(footRule(document, { scale, ticks, edge: 300, name: "tank length, in", room: 400, width: 640, size: 14, narrow: false }))
 */
export function footRule(document: Document, rule: FootRule): SVGElement {
  const { scale, ticks, edge, size } = rule;
  const end = { x: scale.to, y: edge + 15 + size * 2.3, "text-anchor": "end", "font-size": size };
  // A figure that would run out of the picture is left out; its tick stays.
  const isWithin = ({ value }: Tick): boolean => {
    const half = textWidth(ticks.figure(value), size) / 2;
    return scale.at(value) - half >= 0 && scale.at(value) + half <= rule.width;
  };
  const shown = ticks.ticks.map((tick) => ({ ...tick, figure: tick.figure && isWithin(tick) }));
  const along = { at: scale.at, from: scale.from, to: scale.to, edge, size };
  return svg(document, "g", { "data-part": "foot rule" }, [
    steelRule(document, { ...along, ticks: shown, figure: ticks.figure, side: "below" }),
    svg(document, "text", { ...end, fill: nameInk(rule.narrow) }, [cutTo(rule.name, size, rule.room)]),
  ]);
}

/**
 * A steel rule up the left side, its name above it from the figure's left edge.
 * @example group.append(sideRule(document, { scale, ticks, edge: 60, name: "boil-off, lb/h", room: 400, width: 640, size: 14, narrow: false }))
 */
export function sideRule(document: Document, rule: FootRule): SVGElement {
  const { scale, ticks, edge, size } = rule;
  const [top, bottom] = [Math.min(scale.from, scale.to), Math.max(scale.from, scale.to)];
  const name = { x: 4, y: rule.nameAt ?? top - size * 0.8, "font-size": size, fill: nameInk(rule.narrow) };
  return svg(document, "g", { "data-part": "side rule" }, [
    steelRule(document, {
      ...ticks,
      at: scale.at,
      from: top,
      to: bottom,
      edge,
      side: "left",
      size,
      // The foot rule's first figure stands close to the lower end.
      taken: (along) => along > bottom - 2 || along < top + size * 0.3,
    }),
    svg(document, "text", name, [cutTo(rule.name, size, rule.room)]),
  ]);
}

// No faint ink on phones.
const nameInk = (narrow: boolean): string => (narrow ? "var(--ink)" : "var(--faint)");
