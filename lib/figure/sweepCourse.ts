import { drawCaseMark } from "./caseMark.ts";
import { intervalBar } from "./intervalBar.ts";
import { linePath, svg } from "./svg.ts";
import type { SweepFrame, SweepLine, SweepSpot } from "./sweepFrame.ts";

type Point = readonly [x: number, y: number];

const dashes = ["none", "9 4", "2.5 3.5", "14 4 2.5 4", "5 2.5", "18 5"];

/** How the line of a case is dashed: six ways, then round again. */
export const dashOf = (mark: number): string => dashes[mark % dashes.length] ?? "none";

/**
 * The 95 % spreads of all cases under all their lines, each line with its own dash; a number that stands alone is a dot
 * with its bar.
 * @example root.append(...drawCourses(frame))
 */
export function drawCourses(frame: SweepFrame): readonly SVGElement[] {
  const { document, lines } = frame;
  const opacity = lines.filter((one) => one.runs.length > 0).length > 1 ? 0.5 : 1;
  const group = (part: string, draw: (line: SweepLine) => readonly SVGElement[]) =>
    svg(document, "g", { "data-part": part }, lines.flatMap(draw));
  return [
    group("spreads", (line) => longRuns(line).map((run) => drawSpread(frame, run, opacity))),
    group("lines", (line) =>
      longRuns(line).map((run) =>
        svg(document, "path", {
          d: linePath(run.map((one): Point => [frame.x.at(one.x), frame.y.at(one.y.value)])),
          fill: "none",
          stroke: "var(--ink)",
          "stroke-width": 2,
          "stroke-linejoin": "round",
          "stroke-dasharray": dashOf(line.mark),
          "data-mark": "line",
        }),
      ),
    ),
    group("alone", (line) =>
      line.runs.filter((run) => run.length === 1).flatMap((run) => run.map((one) => drawAlone(frame, line.mark, one))),
    ),
  ];
}

type Known = SweepLine["runs"][number][number];

const longRuns = (line: SweepLine) => line.runs.filter((run) => run.length > 1);

const within = ({ top, bottom }: SweepFrame, at: number): number => Math.min(Math.max(at, top), bottom);

function drawSpread(frame: SweepFrame, run: readonly Known[], opacity: number): SVGElement {
  const { document, x, y } = frame;
  const side = (pick: (one: Known) => number) => run.map((one): Point => [x.at(one.x), within(frame, y.at(pick(one)))]);
  const [low, high] = [side((one) => one.y.low), side((one) => one.y.high)];
  const edge = { fill: "none", stroke: "var(--fitted)", "stroke-width": 0.7 };
  return svg(document, "g", { "data-mark": "spread" }, [
    svg(document, "path", {
      d: `${linePath([...high, ...low.toReversed()])}Z`,
      fill: "var(--spread)",
      "fill-opacity": opacity,
    }),
    svg(document, "path", { d: linePath(high), ...edge }),
    svg(document, "path", { d: linePath(low), ...edge }),
  ]);
}

function drawAlone(frame: SweepFrame, mark: number, one: SweepSpot): SVGElement {
  const { document, x, y } = frame;
  const amount = one.y;
  if (!amount) return svg(document, "g");
  const bar = intervalBar({
    from: within(frame, y.at(amount.low)),
    to: within(frame, y.at(amount.high)),
    across: x.at(one.x),
    tick: 4.5,
    upright: true,
    openFrom: !(y.at(amount.low) <= frame.bottom) || amount.low === Number.NEGATIVE_INFINITY,
    openTo: !(y.at(amount.high) >= frame.top) || amount.high === Number.POSITIVE_INFINITY,
  });
  const stroke = { fill: "none", stroke: "var(--ink)", "stroke-width": 1.2, "data-mark": "interval" };
  return svg(document, "g", { "data-mark": "alone" }, [
    ...(amount.low < amount.high ? [svg(document, "path", { d: bar, ...stroke })] : []),
    drawCaseMark(document, mark, x.at(one.x), y.at(amount.value)),
  ]);
}
