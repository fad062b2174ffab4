import * as Plot from "@observablehq/plot";
import { max, min, scaleLinear } from "d3";
import { limitText } from "./drawPlate.ts";
import { figureUnits } from "./figureUnits.ts";
import { assertFinite, assertWidth } from "./finite.ts";
import { drawn, plotFigure } from "./plotFigure.ts";
import { svg } from "./svg.ts";
import { thin } from "./thin.ts";
import type { FigureOptions, RunStripData } from "./types.ts";
import { counted } from "./words.ts";

/**
 * What a run's strip shows, in a sentence: the target, the range of the readings, how often water went in.
 * @example
 * runStripFinding({ readings: [], additions: [], span: { start: 0, end: 60 } }, { system: "US" }) // "no readings; no pours"
 */
export function runStripFinding(data: RunStripData, options: Pick<FigureOptions, "system">): string {
  const { temperature } = figureUnits(options.system);
  const counting = data.readings.filter((one) => !one.struck && !one.apart);
  const lowest = min(counting, (one) => one.temperature);
  const highest = max(counting, (one) => one.temperature);
  const text = (kelvin: number) => limitText(kelvin, temperature);
  const target = data.target
    ? [`target band ${text(data.target.low)}–${text(data.target.high)} ${temperature.name}`]
    : [];
  const range =
    lowest === undefined || highest === undefined
      ? "no readings"
      : `${counted(counting.length, "reading")}, ${text(lowest)} to ${text(highest)} ${temperature.name}`;
  return [...target, range, counted(data.additions.length, "pour")].join("; ");
}

/**
 * A run as one small strip without rules, for a row in a list: the target band with its scribed edges, the bath's
 * boiling point or else the readings, water as marks along the foot. `span` (s from the first row) is what the width
 * stands for; what lies before, after, or far below the band while the bath heats up runs out of the picture.
 * `narrow` is 48 px high, otherwise 60. Errors as `holdReplayed`.
 * @example runStrip({ readings: [], additions: [], span: { start: 0, end: 3600 } }, { document, width: 400, system: "US" });
 */
export function runStrip(data: RunStripData, options: FigureOptions): SVGSVGElement {
  assertWidth(options.width);
  assertFinite(data, "figure data");
  const { document, width } = options;
  const height = options.narrow ? 48 : 60;
  const counting = data.readings.filter((one) => !one.struck && !one.apart).sort((a, b) => a.time - b.time);
  const modelled = (data.course ?? []).map((one) => ({ time: one.time, value: one.value }));
  const course = modelled.length > 1 ? modelled : counting.map((one) => ({ time: one.time, value: one.temperature }));
  const [low, high] = limits(data, course);
  const end = Math.max(data.span.end, data.span.start + 1);
  const x = scaleLinear([data.span.start, end], [0, width]);
  const y = scaleLinear([low, high], [height, 0]);
  const line = thin(
    course,
    (one) => x(one.time),
    (one) => y(one.value),
    2,
  );
  const edge = (at: number) =>
    svg(document, "line", { x1: 0, x2: width, y1: at, y2: at, stroke: "var(--ink)", "stroke-width": 1 });
  const strip = data.target ? [y(data.target.high), y(data.target.low)] : [];
  const [top, bottom] = strip;
  const bright =
    top === undefined || bottom === undefined
      ? []
      : [
          svg(document, "rect", {
            x: 0,
            y: top,
            width,
            height: bottom - top,
            fill: "var(--strip)",
            "data-part": "strip",
          }),
          edge(top),
          edge(bottom),
        ];
  const marks = data.additions.map((one) => {
    const length = one.duration ? Math.max(5, x(one.time + one.duration) - x(one.time)) : 5;
    const at = one.duration ? x(one.time) : x(one.time) - 2.5;
    return svg(document, "rect", {
      x: at,
      y: height - 5,
      width: length,
      height: 5,
      fill: "var(--ink)",
      "data-mark": "water",
    });
  });
  const root = plotFigure({
    document,
    width,
    height,
    name: "run strip",
    finding: runStripFinding(data, options),
    x: { domain: [data.span.start, end], range: [0, width] },
    y: { domain: [low, high], range: [height, 0] },
    marks: [
      drawn(
        svg(document, "g", { "data-part": "plate" }, [
          svg(document, "rect", { x: 0, y: 0, width, height, fill: "var(--plate)" }),
          ...bright,
        ]),
      ),
      Plot.line(line, { x: "time", y: "value", stroke: "var(--fitted)", strokeWidth: 1.6, strokeLinejoin: "round" }),
      Plot.dot(line.length === 1 ? line : [], { x: "time", y: "value", r: 3, fill: "var(--ink)" }),
      drawn(svg(document, "g", { "data-part": "water" }, marks)),
    ],
  });
  root.style.setProperty("overflow", "hidden");
  return root;
}

// The band takes the middle third; without one, the readings fill the strip.
function limits({ target }: RunStripData, course: readonly { readonly value: number }[]): readonly [number, number] {
  if (target) {
    const span = Math.max(target.high - target.low, 0.5);
    const highest = max(course, (one) => one.value) ?? target.high;
    return [target.low - span, Math.max(target.high + span, Math.min(highest + span * 0.1, target.high + 3 * span))];
  }
  const low = min(course, (one) => one.value) ?? 0;
  const high = max(course, (one) => one.value) ?? 1;
  const pad = Math.max((high - low) * 0.15, 0.5);
  return [low - pad, high + pad];
}
