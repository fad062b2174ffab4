import * as Plot from "@observablehq/plot";
import type { Plate } from "./drawPlate.ts";
import type { HoldFrame } from "./holdFrame.ts";
import type { CoursePoint, Target } from "./types.ts";

/** The plate under a hold, its limits' figures on the rule at the left. */
export function holdPlate(frame: HoldFrame, target: Target | undefined): Plate {
  return {
    document: frame.document,
    width: frame.width,
    top: frame.plateTop,
    bottom: frame.plateBottom,
    figures: { x: frame.left - 18, anchor: "end" },
    size: frame.size,
    unit: frame.units.temperature,
    y: frame.y,
    ...(target ? { target } : {}),
  };
}

/** A course (s, K) on the plate: the strip where it lies in 95 of 100, and its middle over it. */
export function courseMarks(course: readonly CoursePoint[]): readonly Plot.Markish[] {
  return [
    Plot.areaY(course, {
      x: "time",
      y1: "low",
      y2: "high",
      fill: "var(--spread)",
      stroke: "var(--fitted)",
      strokeWidth: 0.7,
    }),
    Plot.line(course, { x: "time", y: "value", stroke: "var(--fitted)", strokeWidth: 2.2, strokeLinejoin: "round" }),
  ];
}
