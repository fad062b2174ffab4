import { max, min, scaleLinear } from "d3";
import { limitText } from "./drawPlate.ts";
import { type FigureUnits, figureUnits } from "./figureUnits.ts";
import { margins } from "./holdFrame.ts";
import { ruleTicks, type Tick } from "./ruleTicks.ts";
import { textWidth } from "./textWidth.ts";
import type { FigureOptions, RatioAndBoilingPointData } from "./types.ts";
import { decimal } from "./words.ts";

/** Where everything of "ratio and boiling point" lies, px. */
export interface RatioFrame {
  readonly document: Document;
  readonly units: FigureUnits;
  readonly width: number;
  readonly narrow: boolean;
  readonly size: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly start: number;
  readonly end: number;
  readonly zero: number;
  readonly zeroName: string;
  /** kg salt per kg water at the foot and the head of the rules. */
  readonly low: number;
  readonly high: number;
  readonly x: (seconds: number) => number;
  readonly y: (ratio: number) => number;
  /** px of a boiling point, at its own ratio's place. */
  readonly yBoiling: (kelvin: number) => number;
}

/** Lays out "ratio and boiling point" for a width. */
export function ratioFrame(data: RatioAndBoilingPointData, options: FigureOptions): RatioFrame {
  const { width } = options;
  const narrow = options.narrow ?? width < 600;
  const top = 30;
  const bottom = top + (narrow ? 220 : 270);
  const size = narrow ? 13 : 14;
  const units = figureUnits(options.system);
  const limits = data.target ? [data.target.low, data.target.high] : [];
  const limitWidths = limits.map((limit) => textWidth(limitText(limit, units.temperature), size, 600));
  const right = width - Math.max(narrow ? 48 : 72, ...limitWidths.map((one) => one + 24));
  const ratios = [
    ...data.course.flatMap((one) => [one.ratio, data.ratioAt(one.low), data.ratioAt(one.high)]),
    ...(data.target ? [data.ratioAt(data.target.low), data.ratioAt(data.target.high)] : []),
  ];
  const least = min(ratios) ?? 1;
  const most = max(ratios) ?? 1.4;
  const pad = Math.max((most - least) * 0.08, 0.04);
  // Room at the foot for the words under the two rings.
  const [low, high] = [least - pad * (data.hold ? 3.2 : 1), most + pad];
  // The rule's longest figure stands inside, tick and gap beside it.
  const figures = ruleTicks(units.ratio.fromSI(low), units.ratio.fromSI(high), bottom - top, size * 1.9)
    .filter(({ figure }) => figure)
    .map(({ value }) => textWidth(decimal(value, 3, units.system), size));
  const left = Math.max(margins(width, narrow).left, (max(figures) ?? 0) + 22);
  const times = [
    ...data.course.map((one) => one.time),
    ...(data.hold ? [data.hold.start, data.hold.end] : []),
    ...(data.partsIn === undefined ? [] : [data.partsIn]),
  ];
  const start = min(times) ?? 0;
  const end = Math.max(max(times) ?? 0, start + 60);
  const y = scaleLinear([low, high], [bottom, top]);
  return {
    document: options.document,
    units,
    width,
    narrow,
    size,
    left,
    right,
    top,
    bottom,
    start,
    end,
    zero: data.partsIn ?? 0,
    zeroName: data.partsIn === undefined ? "first row" : "parts in",
    low,
    high,
    x: scaleLinear([start, end], [left, right]),
    y,
    yBoiling: (kelvin) => y(data.ratioAt(kelvin)),
  };
}

/**
 * Ticks of the boiling-point rule, in the unit shown: each stands at its own ratio, so they need not lie evenly. The
 * rule stops where the boiling curve stops being known.
 */
export function boilingTicks(data: RatioAndBoilingPointData, frame: RatioFrame): readonly Tick[] {
  const unit = frame.units.temperature;
  const known = [
    ...data.course.flatMap((one) => [one.low, one.high]),
    ...(data.target ? [data.target.low, data.target.high] : []),
  ].map(unit.fromSI);
  const coldest = min(known);
  const hottest = max(known);
  if (coldest === undefined || hottest === undefined) return [];
  const span = Math.max(hottest - coldest, 2);
  const perUnit = Math.abs(heightOf(coldest) - heightOf(hottest)) / Math.max(hottest - coldest, 1e-6);
  const [from, to] = [coldest - span, hottest + span];
  const pixels = perUnit > 0 ? perUnit * (to - from) : frame.bottom - frame.top;
  const ticks = ruleTicks(from, to, pixels, frame.size * 1.7).filter((tick) => {
    const at = heightOf(tick.value);
    return at >= frame.top - 0.01 && at <= frame.bottom + 0.01;
  });
  // Ticks crowd where the curve is flat (thin brine): a figure too near to the one before it is left out.
  let before = Number.POSITIVE_INFINITY;
  return ticks.map((tick) => {
    const at = heightOf(tick.value);
    const figure = tick.figure && Number.isInteger(tick.value) && Math.abs(before - at) >= frame.size * 1.3;
    if (figure) before = at;
    return { ...tick, figure };
  });

  function heightOf(shown: number): number {
    try {
      return frame.yBoiling(unit.toSI(shown));
    } catch (problem) {
      if (problem instanceof RangeError) return Number.NaN;
      throw problem;
    }
  }
}
