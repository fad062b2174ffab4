import { svg } from "./svg.ts";
import type { SweepFrame } from "./sweepFrame.ts";

/**
 * The limits that are wanted as a bright strip on a plate, behind all lines; nothing where none are.
 * @example root.append(...drawStrip(frame))
 */
export function drawStrip(frame: SweepFrame): readonly SVGElement[] {
  const { document, left, right, top, bottom, strip, y } = frame;
  if (!strip) return [];
  const across = { x: left, width: Math.max(0, right - left) };
  const [high, low] = [y.at(strip.high), y.at(strip.low)];
  const edge = (at: number) =>
    svg(document, "line", { x1: left, x2: right, y1: at, y2: at, stroke: "var(--ink)", "stroke-width": 0.7 });
  return [
    svg(document, "g", { "data-part": "strip" }, [
      svg(document, "rect", { ...across, y: top, height: bottom - top, fill: "var(--plate)" }),
      svg(document, "rect", { ...across, y: high, height: low - high, fill: "var(--strip)", "data-mark": "strip" }),
      edge(high),
      edge(low),
    ]),
  ];
}
