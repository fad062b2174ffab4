import * as Plot from "@observablehq/plot";
import { drawLabel } from "./drawLabel.ts";
import { drawPlate, limitPlaces, type Plate } from "./drawPlate.ts";
import { assertFinite, assertWidth } from "./finite.ts";
import { type Label, placeLabels, type Segment, type Spot } from "./placeLabels.ts";
import { drawn, plotFigure } from "./plotFigure.ts";
import { ratioAndBoilingPointFinding } from "./ratioAndBoilingPointFinding.ts";
import { boilingTicks, type RatioFrame, ratioFrame } from "./ratioFrame.ts";
import { ruleTicks } from "./ruleTicks.ts";
import { steelRule } from "./steelRule.ts";
import { svg } from "./svg.ts";
import { thin } from "./thin.ts";
import { drawTimeRule, timeRuleHeight } from "./timeRule.ts";
import type { FigureOptions, RatioAndBoilingPointData, RatioPoint } from "./types.ts";
import { decimal } from "./words.ts";

/**
 * One line with two rules, as on a slide rule: salt to water on the left, and on the right the boiling point that
 * each ratio has at this pressure, every tick at its own ratio's place. The strip is the target band, the fill the
 * 95 % spread. Data in SI (s, kg/kg, K); `ratioAt` must rise with temperature and may throw a RangeError beyond the
 * known curve. Gives an SVG element with custom properties for colours. Throws a RangeError for a number that is not
 * finite and for a width outside 200 to 10,000 px.
 * @example
 * const course = [{ time: 0, ratio: 1.2, boilingPoint: 416, low: 415.6, high: 416.4 }];
 * ratioAndBoilingPoint({ course, ratioAt: (kelvin) => (kelvin - 373.15) / 36 }, { document, width: 640, system: "US" });
 */
export function ratioAndBoilingPoint(data: RatioAndBoilingPointData, options: FigureOptions): SVGSVGElement {
  assertWidth(options.width);
  assertFinite(data, "figure data");
  const frame = ratioFrame(data, options);
  const { document, x, y } = frame;
  const course = thin(
    data.course,
    (one) => x(one.time),
    (one) => y(one.ratio),
    2,
  );
  const plate: Plate = {
    document,
    width: frame.width,
    top: frame.top,
    bottom: frame.bottom,
    figures: { x: frame.right + 18, anchor: "start" },
    size: frame.size,
    unit: frame.units.temperature,
    y: frame.yBoiling,
    ...(data.target ? { target: data.target } : {}),
  };
  const spread = course.map((one) => ({
    time: one.time,
    low: data.ratioAt(one.low),
    high: data.ratioAt(one.high),
  }));
  const empty = [
    svg(document, "text", { x: frame.left + 24, y: frame.bottom - 24, "font-size": 17 }, ["no boil read yet"]),
  ];
  return plotFigure({
    document,
    width: frame.width,
    height: frame.bottom + timeRuleHeight({ size: frame.size, name: "below" }),
    name: "ratio and boiling point",
    finding: ratioAndBoilingPointFinding(data, options),
    x: { domain: [frame.start, frame.end], range: [frame.left, frame.right] },
    y: { domain: [frame.low, frame.high], range: [frame.bottom, frame.top] },
    marks: [
      drawn(drawPlate(plate)),
      Plot.areaY(spread, {
        x: "time",
        y1: "low",
        y2: "high",
        fill: "var(--spread)",
        stroke: "var(--fitted)",
        strokeWidth: 0.7,
      }),
      Plot.line(course, { x: "time", y: "ratio", stroke: "var(--fitted)", strokeWidth: 2.2, strokeLinejoin: "round" }),
      drawn(drawRatioRules(data, frame, limitPlaces(plate))),
      drawn(drawTimeRule({ ...frame, edge: frame.bottom, name: "below" })),
      drawn(drawHoldEnds(data, course, frame)),
      Plot.dot(course.length === 1 ? course : [], { x: "time", y: "ratio", r: 3.3, fill: "var(--fitted)" }),
      drawn(svg(document, "g", {}, course.length === 0 ? empty : [])),
    ],
  });
}

function drawRatioRules(
  data: RatioAndBoilingPointData,
  frame: RatioFrame,
  limits: readonly { readonly at: number }[],
): SVGElement {
  const { document, size, units } = frame;
  const { ratio, temperature } = units;
  const ends = { from: frame.top, to: frame.bottom, size };
  const [low, high] = [ratio.fromSI(frame.low), ratio.fromSI(frame.high)];
  const name = (x: number, anchor: string, text: string) =>
    svg(
      document,
      "text",
      {
        x,
        y: frame.top - 12,
        "text-anchor": anchor,
        "font-size": size,
        fill: frame.narrow ? "var(--ink)" : "var(--faint)",
      },
      [text],
    );
  return svg(document, "g", { "data-part": "rules" }, [
    steelRule(document, {
      ...ends,
      ticks: ruleTicks(low, high, frame.bottom - frame.top, size * 1.9),
      at: (value) => frame.y(ratio.toSI(value)),
      edge: frame.left,
      side: "left",
      figure: (value) => decimal(value, 3, units.system),
      taken: (along) => along < frame.top + 4,
    }),
    steelRule(document, {
      ...ends,
      ticks: boilingTicks(data, frame),
      at: (value) => frame.yBoiling(temperature.toSI(value)),
      edge: frame.right,
      side: "right",
      figure: (value) => decimal(value, 2, units.system),
      taken: (along) => along < frame.top + 4 || limits.some((limit) => Math.abs(limit.at - along) < size * 1.15),
    }),
    name(frame.left - 4, frame.narrow ? "middle" : "end", ratio.name),
    name(frame.right + 18, "start", temperature.name),
  ]);
}

/** Rings where the hold begins and ends, each saying its ratio. */
function drawHoldEnds(data: RatioAndBoilingPointData, course: readonly RatioPoint[], frame: RatioFrame): SVGElement {
  const { document, x, y, size, units } = frame;
  const group = svg(document, "g", { "data-part": "hold" });
  if (!data.hold || course.length === 0) return group;
  const ends = [
    { words: "hold begins at", point: nearest(course, data.hold.start), said: data.ends?.start },
    { words: "ends at", point: nearest(course, data.hold.end), said: data.ends?.end },
  ];
  const foot = frame.bottom - size - 8;
  const labels = ends.map(({ words, point, said }, index): Label => {
    const [px, py] = [x(point.time), y(point.ratio)];
    const amount = `${decimal(units.ratio.fromSI(said ?? point.ratio), units.system === "US" ? 1 : 2, units.system)} ${units.ratio.name}`;
    const spot = (anchor: Spot["anchor"], dx: number, at: number): Spot => ({
      x: px + dx,
      y: at,
      side: "below",
      anchor,
      leader: [
        [px, py + 5],
        [px, at - 3],
      ],
    });
    const anchors = index === 0 ? (["start", "middle", "end"] as const) : (["end", "middle", "start"] as const);
    const shift = { start: -4, middle: 0, end: 4 };
    const spots = [foot, foot - 22, foot - 44].flatMap((at) =>
      anchors.map((anchor) => spot(anchor, shift[anchor], at)),
    );
    return { lines: [{ text: `${words} ${amount}` }], size, spots };
  });
  const edges = data.target ? [frame.yBoiling(data.target.low), frame.yBoiling(data.target.high)] : [];
  const strokes = course.slice(1).map((one, index): Segment => {
    const from = course[index] ?? one;
    return [x(from.time), frame.yBoiling(from.low), x(one.time), frame.yBoiling(one.low)];
  });
  const placed = placeLabels(labels, {
    bounds: {
      x: frame.left + 4,
      y: frame.top,
      width: frame.right - frame.left - 4,
      height: frame.bottom - frame.top - 2,
    },
    boxes: [],
    segments: [...strokes, ...edges.map((at): Segment => [0, at, frame.width, at])],
  });
  for (const one of placed) group.appendChild(drawLabel(document, one));
  for (const { point } of ends) {
    const ring = { cx: x(point.time), cy: y(point.ratio), r: 4.5, fill: "var(--ground)", stroke: "var(--ink)" };
    group.appendChild(svg(document, "circle", { ...ring, "stroke-width": 1.6 }));
  }
  return group;
}

function nearest(course: readonly RatioPoint[], time: number): RatioPoint {
  return course.reduce((best, one) => (Math.abs(one.time - time) < Math.abs(best.time - time) ? one : best));
}
