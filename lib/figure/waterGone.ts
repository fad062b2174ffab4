import * as Plot from "@observablehq/plot";
import { max, min, scaleLinear } from "d3";
import { breakMark } from "./breakMark.ts";
import { type BrokenScale, brokenScale, scaleKnots } from "./brokenScale.ts";
import { drawLabel } from "./drawLabel.ts";
import { drawPlate } from "./drawPlate.ts";
import { drawWaterMarks } from "./drawWaterMarks.ts";
import { type FigureUnits, figureUnits } from "./figureUnits.ts";
import { assertFinite, assertWidth } from "./finite.ts";
import { margins, stretchTicks } from "./holdFrame.ts";
import { type Placing, placeSlope } from "./placeSlope.ts";
import { drawn, plotFigure } from "./plotFigure.ts";
import { steelRule } from "./steelRule.ts";
import { linePath, svg } from "./svg.ts";
import { textWidth } from "./textWidth.ts";
import { drawTimeRule, timeRuleHeight } from "./timeRule.ts";
import type { CoursePoint, FigureOptions, WaterGoneData } from "./types.ts";
import { waterGoneFinding } from "./waterGoneFinding.ts";
import { decimal } from "./words.ts";

/**
 * The fitted line of water gone as knots with their 95 % spread: the caller's, or one straight line from the first
 * boil to the end whose spread opens with the slope's. s and kg.
 * @example waterLine({ points: [], slope: { value: 0.002, low: 0.0018, high: 0.0022 }, firstBoil: 0, end: 600 })[1]?.value // 1.2
 */
export function waterLine(data: WaterGoneData): readonly CoursePoint[] {
  if (data.line && data.line.length > 1) return data.line;
  const from = data.goneAtFirstBoil ?? 0;
  const time = Math.max(0, data.end - data.firstBoil);
  const { value, low, high } = data.slope;
  return [
    { time: data.firstBoil, value: from, low: from, high: from },
    { time: data.firstBoil + time, value: from + value * time, low: from + low * time, high: from + high * time },
  ];
}

/**
 * Water gone against time: what each reading says, with its give or take, the fitted line with its 95 % spread, and
 * its slope as a drawn triangle with its number. Data in SI (s, kg, kg/s); readings the line did not trust (weight
 * below 0.5) are rings with their reason. Gives an SVG element with custom properties for colours. Throws a
 * RangeError for a number that is not finite and for a width outside 200 to 10,000 px.
 * @example
 * const slope = { value: 0.0023, low: 0.0021, high: 0.0025 };
 * waterGone({ points: [], slope, firstBoil: 0, end: 1800 }, { document, width: 640, system: "US" });
 */
export function waterGone(data: WaterGoneData, options: FigureOptions): SVGSVGElement {
  assertWidth(options.width);
  assertFinite(data, "figure data");
  const { document, width } = options;
  const units = figureUnits(options.system);
  const narrow = options.narrow ?? width < 600;
  const size = narrow ? 13 : 14;
  const line = waterLine(data);
  const top = 30;
  const bottom = top + (narrow ? 220 : 270);
  const scale = waterScale(data, line, top + 8, bottom - 6);
  const knots = scaleKnots(scale);
  const times = [...data.points.map((one) => one.time), ...line.map((one) => one.time), data.firstBoil];
  const start = min(times) ?? 0;
  const end = Math.max(max(times) ?? 0, start + 60);
  const left = Math.max(margins(width, narrow).left, figuresWidth(scale, units, size) + 24);
  const right = width - (narrow ? 16 : 32);
  const x = scaleLinear([start, end], [left, right]);
  const y = scaleLinear(knots.domain, knots.range);
  const placing: Placing = {
    document,
    units,
    narrow,
    size,
    left,
    right,
    top,
    bottom,
    zero: data.partsIn ?? 0,
    x,
    y,
    breaks: scale.breaks,
  };
  const { triangle, labels } = placeSlope(data, line, placing);
  const zeroName = data.partsIn === undefined ? "first row" : "parts in";
  const frame = { ...placing, width, start, end, zeroName };
  const plate = {
    document,
    width,
    top,
    bottom,
    size,
    y,
    unit: units.temperature,
    figures: { x: left - 18, anchor: "end" as const },
  };
  return plotFigure({
    document,
    width,
    height: bottom + timeRuleHeight({ size, name: "below" }),
    name: "water gone",
    finding: waterGoneFinding(data, options),
    x: { domain: [start, end], range: [left, right] },
    y: knots,
    marks: [
      drawn(drawPlate(plate)),
      Plot.areaY(line, {
        x: "time",
        y1: "low",
        y2: "high",
        fill: "var(--spread)",
        stroke: "var(--fitted)",
        strokeWidth: 0.7,
      }),
      Plot.line(line, { x: "time", y: "value", stroke: "var(--fitted)", strokeWidth: 2.2 }),
      drawn(drawWaterRule(scale, placing, width)),
      drawn(drawTimeRule({ ...frame, edge: bottom, name: "below" })),
      drawn(drawWaterMarks(data.points, placing)),
      drawn(
        svg(document, "g", { "data-part": "slope" }, [
          ...(triangle
            ? [svg(document, "path", { d: linePath(triangle), fill: "none", stroke: "var(--ink)", "stroke-width": 1 })]
            : []),
          ...labels.map((one) => drawLabel(document, one)),
        ]),
      ),
    ],
  });
}

function waterScale(data: WaterGoneData, line: readonly CoursePoint[], top: number, bottom: number): BrokenScale {
  const trusted = data.points.filter((one) => one.weight >= 0.5);
  const core = [...line.flatMap((one) => [one.low, one.value, one.high]), ...trusted.map((one) => one.gone), 0];
  const ends = data.points.flatMap((one) => [
    one.gone - 1.96 * one.standardUncertainty,
    one.gone + 1.96 * one.standardUncertainty,
  ]);
  return brokenScale(core, [...core, ...ends], { top, bottom, least: 0.05 });
}

function figuresWidth(scale: BrokenScale, { water, system }: FigureUnits, size: number): number {
  const figures = scale.stretches.flatMap((one) => stretchTicks(one, water, size)).filter((tick) => tick.figure);
  return Math.max(0, ...figures.map((tick) => textWidth(decimal(tick.value, 2, system), size)));
}

function drawWaterRule(scale: BrokenScale, placing: Placing, width: number): SVGElement {
  const { document, units, left, top, bottom, narrow, size, y } = placing;
  const { water } = units;
  const rules = scale.stretches.map((one, index) =>
    steelRule(document, {
      ticks: stretchTicks(one, water, size),
      at: (value) => y(water.toSI(value)),
      from: index === scale.stretches.length - 1 ? top : one.highAt,
      to: index === 0 ? bottom : one.lowAt,
      edge: left,
      side: "left",
      figure: (value) => decimal(value, 2, units.system),
      taken: (along) => scale.breaks.some((at) => Math.abs(at - along) < size * 0.7),
      size,
    }),
  );
  const name = svg(
    document,
    "text",
    {
      x: narrow ? 4 : left - 4,
      y: top - 12,
      "text-anchor": narrow ? "start" : "end",
      "font-size": size,
      fill: narrow ? "var(--ink)" : "var(--faint)",
    },
    [water.name],
  );
  return svg(document, "g", { "data-part": "rules" }, [
    ...rules,
    name,
    ...scale.breaks.map((at) => breakMark(document, at, left, width)),
  ]);
}
