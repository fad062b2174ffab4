import * as Plot from "@observablehq/plot";
import { scaleKnots } from "./brokenScale.ts";
import { drawBandBar } from "./drawBandBar.ts";
import { drawEvents } from "./drawEvents.ts";
import { drawBandDimension, drawHoldRules } from "./drawHoldRules.ts";
import { drawLabel } from "./drawLabel.ts";
import { drawPlate, limitPlaces } from "./drawPlate.ts";
import { drawSetApart, setApart, shownReadings } from "./drawReadings.ts";
import { drawWater } from "./drawWater.ts";
import { assertFinite, assertWidth } from "./finite.ts";
import { holdFrame } from "./holdFrame.ts";
import { holdLabels } from "./holdLabels.ts";
import { courseMarks, holdPlate } from "./holdPlate.ts";
import { holdReplayedFinding } from "./holdReplayedFinding.ts";
import { drawn, plotFigure } from "./plotFigure.ts";
import { svg } from "./svg.ts";
import { thin } from "./thin.ts";
import { throughBreaks } from "./throughBreaks.ts";
import type { FigureOptions, HoldReplayedData } from "./types.ts";

/**
 * The hold, replayed: the target band as a bright strip across the darker plate, readings as dots on it, the bath's
 * boiling point with its 95 % spread, the time in the band above, water hanging from its own line below. Data in SI
 * (s from the first row, K, kg); any number of readings, none included. Gives an SVG element whose colours are
 * custom properties (`var(--ink)` …) and whose `aria-label` says what is to be seen.
 * Throws a RangeError for a number that is not finite, and for a width outside 200 to 10,000 px.
 * @example
 * holdReplayed(
 *   { readings: [{ id: "1", time: 0, temperature: 416, struck: false }], additions: [], events: [] },
 *   { document, width: 1280, system: "US" },
 * );
 */
export function holdReplayed(data: HoldReplayedData, options: FigureOptions): SVGSVGElement {
  assertWidth(options.width);
  assertFinite(data, "figure data");
  const sorted = { ...data, readings: [...data.readings].sort((a, b) => a.time - b.time) };
  const frame = holdFrame(sorted, options);
  const { document, x, y } = frame;
  const plate = holdPlate(frame, data.target);
  const course = thin(
    throughBreaks(data.course ?? [], frame.scale),
    (one) => x(one.time),
    (one) => y(one.value),
    2,
  );
  const { shown, radius, halo } = shownReadings(sorted.readings, frame);
  const labels = holdLabels({ ...sorted, course }, frame);
  const empty =
    data.readings.length === 0 && course.length === 0
      ? [svg(document, "text", { x: frame.left + 24, y: frame.plateBottom - 40, "font-size": 17 }, ["no readings yet"])]
      : [];
  return plotFigure({
    document,
    width: frame.width,
    height: frame.height,
    name: "hold replayed",
    finding: holdReplayedFinding(data, options),
    x: { domain: [frame.start, frame.end], range: [frame.left, frame.right] },
    y: scaleKnots(frame.scale),
    marks: [
      drawn(drawPlate(plate)),
      ...courseMarks(course),
      drawn(drawHoldRules(frame, limitPlaces(plate))),
      drawn(drawBandBar(data, frame)),
      drawn(drawEvents(data, frame)),
      drawn(drawBandDimension(data, frame)),
      Plot.dot(shown, {
        x: "time",
        y: "temperature",
        r: radius,
        fill: "var(--ink)",
        ...(halo > 0 ? { stroke: "var(--ground)", strokeWidth: halo } : {}),
      }),
      drawn(
        svg(
          document,
          "g",
          { "data-part": "set apart" },
          setApart(sorted.readings, frame).map((one) => drawSetApart(document, one, frame)),
        ),
      ),
      drawn(
        svg(document, "g", { "data-part": "labels" }, [...labels.map((one) => drawLabel(document, one)), ...empty]),
      ),
      drawn(drawWater(data, frame)),
    ],
  });
}
