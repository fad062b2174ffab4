import { max, min, scaleLinear } from "d3";
import { type BrokenScale, brokenScale, type ScaleStretch, scaleKnots } from "./brokenScale.ts";
import { limitText } from "./drawPlate.ts";
import { type EdgeUnit, type FigureUnits, figureUnits } from "./figureUnits.ts";
import { ruleTicks, type Tick } from "./ruleTicks.ts";
import { textWidth } from "./textWidth.ts";
import type { CoursePoint, FigureOptions, HoldReplayedData, Target } from "./types.ts";
import { decimal } from "./words.ts";

/** Where everything of "the hold, replayed" lies, px. */
export interface HoldFrame {
  readonly document: Document;
  readonly units: FigureUnits;
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  /** Text size. */
  readonly size: number;
  readonly left: number;
  readonly right: number;
  readonly plateTop: number;
  readonly plateBottom: number;
  /** The line that water hangs down from, and how deep the largest pour goes. */
  readonly waterTop: number;
  readonly waterDepth: number;
  /** s from the first row that minutes are counted from, and its name. */
  readonly zero: number;
  readonly zeroName: string;
  /** s from the first row. */
  readonly start: number;
  readonly end: number;
  readonly x: (seconds: number) => number;
  readonly y: (kelvin: number) => number;
  readonly scale: BrokenScale;
}

/** Margins that fit a figure of a width in px: desk, tablet, phone. */
export function margins(width: number, narrow: boolean): { readonly left: number; readonly right: number } {
  if (narrow) return { left: 46, right: 14 };
  return width >= 1000 ? { left: 96, right: 216 } : { left: 56, right: 204 };
}

/**
 * Lays out "the hold, replayed" for a width.
 * @example holdFrame(data, options).x(0) // px of the first row
 */
export function holdFrame(data: HoldReplayedData, options: FigureOptions): HoldFrame {
  const { width } = options;
  const narrow = options.narrow ?? width < 600;
  const size = narrow ? 13 : 14;
  const units = figureUnits(options.system);
  const { right, left: least } = margins(width, narrow);
  const plateTop = narrow ? 40 : 48;
  const plateBottom = plateTop + (narrow ? 270 : 372);
  const waterTop = plateBottom + (narrow ? 38 : 44);
  const unwritten = data.unwritten ?? [];
  const waterDepth = data.additions.length + unwritten.length > 0 ? (narrow ? 34 : 48) : 0;
  // What was not written is said on a line of its own where it finds no room beside its bar.
  const wordsBelow = unwritten.length > 0 ? size * 1.25 * (narrow ? 2 : 1) + 8 : 0;
  const [start, end] = timeSpan(data);
  const scale = temperatureScale(data, plateTop + 14, plateBottom - (data.events.length > 0 ? 34 : 12));
  const left = Math.max(least, figuresWidth(scale, units, data, size) + 22);
  const knots = scaleKnots(scale);
  return {
    document: options.document,
    units,
    width,
    height: waterTop + waterDepth + (waterDepth > 0 ? 14 : 0) + wordsBelow,
    narrow,
    size,
    left,
    right: width - right,
    plateTop,
    plateBottom,
    waterTop,
    waterDepth,
    zero: data.partsIn ?? 0,
    zeroName: data.partsIn === undefined ? "first row" : "parts in",
    start,
    end,
    x: scaleLinear([start, end], [left, width - right]),
    y: scaleLinear(knots.domain, knots.range),
    scale,
  };
}

function figuresWidth(scale: BrokenScale, { temperature }: FigureUnits, data: HoldReplayedData, size: number): number {
  const ticks = scale.stretches.flatMap((stretch) => stretchTicks(stretch, temperature, size));
  const figures = ticks.filter((tick) => tick.figure).map((tick) => textWidth(decimal(tick.value, 2), size));
  const limits = data.target ? [data.target.low, data.target.high] : [];
  return Math.max(0, ...figures, ...limits.map((limit) => textWidth(limitText(limit, temperature), size, 600)));
}

/** Ticks of one stretch of the temperature rule, in the unit shown. */
export function stretchTicks(stretch: ScaleStretch, unit: EdgeUnit, size: number): readonly Tick[] {
  const height = stretch.lowAt - stretch.highAt;
  return ruleTicks(unit.fromSI(stretch.low), unit.fromSI(stretch.high), height, size * (height > 120 ? 2.4 : 1.7));
}

function timeSpan(data: HoldReplayedData): readonly [number, number] {
  const times = [
    ...data.readings.map((one) => one.time),
    ...data.additions.flatMap((one) => [one.time, one.time + (one.duration ?? 0)]),
    ...(data.unwritten ?? []).map((one) => one.time),
    ...data.events.map((one) => one.time),
    ...(data.course ?? []).map((one) => one.time),
    ...(data.inBand ?? []).flatMap((one) => [one.start, one.end]),
    ...[data.partsIn, data.partsOut, data.hold?.start, data.hold?.end].filter((time) => time !== undefined),
  ];
  const first = min(times) ?? 0;
  return [first, Math.max(max(times) ?? 0, first + 60)];
}

function temperatureScale(data: HoldReplayedData, top: number, bottom: number): BrokenScale {
  const { target, course = [] } = data;
  const from = data.hold?.start ?? data.partsIn ?? firstInTarget(data);
  const to = data.hold?.end ?? data.partsOut ?? Number.POSITIVE_INFINITY;
  const aside = target ? (target.high - target.low) * 0.75 : 0;
  const hasHold = Number.isFinite(from) || target !== undefined;
  const inHold = data.readings.filter(
    (one) =>
      !one.struck && !one.apart && one.time >= from && one.time <= to && !(target && farFrom(one.temperature, target)),
  );
  // A bath that is hardly known, or below its boil, has a spread that would press the band flat.
  const held = ({ value, low, high }: CoursePoint): readonly number[] => {
    if (!target) return [low, high];
    const reach = reachOf(target) / 2;
    return farFrom(value, target)
      ? []
      : [value, Math.max(low, target.low - reach), Math.min(high, target.high + reach)];
  };
  const drawnCourse = course.flatMap((one) => [one.value, one.low, one.high]);
  const core = hasHold
    ? [
        ...inHold.map((one) => one.temperature),
        ...(target ? [target.low - aside, target.high + aside] : []),
        ...course.filter((one) => one.time >= from && one.time <= to).flatMap(held),
      ]
    : [];
  const values = [
    ...data.readings.map((one) => one.temperature),
    ...drawnCourse,
    ...(target ? [target.low, target.high] : []),
  ];
  return brokenScale(core, values.length > 0 || core.length > 0 ? values : [373, 423], { top, bottom, least: 3 });
}

// Where no row says when the hold began, it began when the bath first came up to its target.
function firstInTarget({ target, course = [], readings }: HoldReplayedData): number {
  if (!target) return Number.NEGATIVE_INFINITY;
  const reached = [
    ...course.filter((one) => one.value >= target.low),
    ...readings.filter((one) => !one.struck && !one.apart && one.temperature >= target.low),
  ].map((one) => one.time);
  return min(reached) ?? Number.NEGATIVE_INFINITY;
}

const reachOf = ({ low, high }: Target): number => Math.max(3 * (high - low), 10);

// A reading so far from its target is heating up or mis-read: it goes on the rule, but does not set its scale.
const farFrom = (temperature: number, target: Target): boolean =>
  temperature < target.low - reachOf(target) || temperature > target.high + reachOf(target);
