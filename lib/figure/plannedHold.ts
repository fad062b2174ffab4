import * as Plot from "@observablehq/plot";
import { scaleKnots } from "./brokenScale.ts";
import { drawBandBar } from "./drawBandBar.ts";
import { drawBandDimension, drawHoldRules } from "./drawHoldRules.ts";
import { drawLabel } from "./drawLabel.ts";
import { drawPlate, limitPlaces } from "./drawPlate.ts";
import { drawWater } from "./drawWater.ts";
import { assertFinite, assertWidth } from "./finite.ts";
import { holdFrame } from "./holdFrame.ts";
import { courseMarks, holdPlate } from "./holdPlate.ts";
import { plannedHoldFinding } from "./plannedHoldFinding.ts";
import { plannedHoldLabels } from "./plannedHoldLabels.ts";
import type { PlannedHoldData } from "./planTypes.ts";
import { drawn, plotFigure } from "./plotFigure.ts";
import { svg } from "./svg.ts";
import type { FigureOptions, HoldReplayedData } from "./types.ts";

/**
 * A hold before it is held: the target band as a bright strip across the plate, on it where the bath's true temperature
 * lies in 95 of 100 simulated holds, filled with the correction table followed, in dashed edges with nobody correcting;
 * the feed below, at its minutes. Data in SI (s from parts in, K, kg). Gives an SVG element with custom properties for
 * colours and an `aria-label` that says what is to be seen.
 * @throws RangeError for a number that is not finite, and for a width outside 200 to 10,000 px.
 * @example
 * const corrected = [{ time: 0, value: 416, low: 415.5, high: 416.5 }, { time: 600, value: 416, low: 415.4, high: 416.6 }];
 * const data = { target: { low: 415, high: 417 }, hold: 600, corrected, nobody: corrected, start: 415.8, startReads: 416,
 *   additions: [{ time: 0, mass: 1, duration: 600 }], poured: "34 fl oz", holds: { nobody: 60, corrected: 90 } };
 * plannedHold(data, { document, width: 1280, system: "US" });
 */
export function plannedHold(data: PlannedHoldData, options: FigureOptions): SVGSVGElement {
  assertWidth(options.width);
  assertFinite(data, "figure data");
  const { target, hold, corrected, nobody, additions, poured } = data;
  const widest = [...corrected, ...nobody].sort((a, b) => a.time - b.time);
  const laid: HoldReplayedData = {
    readings: [],
    target,
    hold: { start: 0, end: hold },
    partsIn: 0,
    partsOut: hold,
    additions,
    events: [],
    course: widest,
    sums: { poured },
  };
  const frame = holdFrame(laid, options);
  const { document, y } = frame;
  const plate = holdPlate(frame, target);
  const dashed = (edge: "low" | "high") =>
    Plot.line(nobody, { x: "time", y: edge, stroke: "var(--ink)", strokeWidth: 1.2, strokeDasharray: "7 4" });
  const labels = plannedHoldLabels(data, frame);
  return plotFigure({
    document,
    width: frame.width,
    height: frame.height,
    name: "planned hold",
    finding: plannedHoldFinding(data, options),
    x: { domain: [frame.start, frame.end], range: [frame.left, frame.right] },
    y: scaleKnots(frame.scale),
    marks: [
      drawn(drawPlate(plate)),
      ...courseMarks(corrected),
      dashed("low"),
      dashed("high"),
      drawn(drawHoldRules(frame, limitPlaces(plate))),
      drawn(drawBandBar(laid, frame)),
      drawn(drawBandDimension(laid, frame)),
      drawn(svg(document, "circle", { cx: frame.x(0), cy: y(data.start), r: 3.3, fill: "var(--ink)" })),
      drawn(
        svg(
          document,
          "g",
          { "data-part": "labels" },
          labels.map((one) => drawLabel(document, one)),
        ),
      ),
      drawn(drawWater(laid, frame)),
    ],
  });
}
