import { ruleName } from "./caseAmount.ts";
import { caseFigure } from "./caseFigure.ts";
import { caseList } from "./caseList.ts";
import type { SweepDrawnData } from "./caseTypes.ts";
import { assertWidth } from "./finite.ts";
import { svg } from "./svg.ts";
import { drawCourses } from "./sweepCourse.ts";
import { sweepDrawnFinding } from "./sweepDrawnFinding.ts";
import { sweepEnds } from "./sweepEnds.ts";
import { sweepFrame } from "./sweepFrame.ts";
import { drawGaps } from "./sweepGaps.ts";
import { drawNow } from "./sweepNow.ts";
import { drawStrip } from "./sweepStrip.ts";
import type { FigureOptions } from "./types.ts";
import { footRule, footRuleHeight, sideRule } from "./valueRule.ts";

/**
 * A line over the range of a given, in each case: the line with its 95 % spread, cases told apart by dash and by the
 * mark at the line's end beside its name, where the given stands now as a dropped line, and stretches without a number
 * as gaps with a word; limits that are wanted lie as a bright strip behind all of it. x in SI, in any order; y of one kind, shown in `unit`; one point and a flat line will do. Gives an
 * SVG element with custom properties for colours. A spread that runs far away from the lines runs off the plot.
 * @throws RangeError for an x or a value that is not finite, limits that are not numbers with the lower first, and a
 * width outside 200 to 10,000 px; TypeError for a unit of something else.
 * @example
 * const points = [{ x: 0.5, y: measuredValue(2, 0.1, {}, "a") }, { x: 1, y: measuredValue(4, 0.3, {}, "a") }];
 * const cases = [{ name: "Small tank", points, present: { x: 0.6 } }];
 * sweepDrawn({ line: "Burners", unit: "", by: "tank length", byUnit: "in", cases }, { document, width: 640, system: "US" });
 */
export function sweepDrawn(data: SweepDrawnData, options: FigureOptions): SVGSVGElement {
  assertWidth(options.width);
  const { document, width } = options;
  const frame = sweepFrame(data, options);
  const { size, narrow, left, right, edge, lines } = frame;
  const swept = lines.some((one) => one.runs.length + one.gaps.length > 0);
  const known = lines.some((one) => one.runs.length > 0);
  const ends = sweepEnds(frame);
  const listTop = swept ? edge + footRuleHeight(size) + 4 : 44;
  const list = caseList(document, ends.listed, { top: listTop, width, size });
  const rule = { size, narrow, width };
  const silent = { x: swept ? left + 12 : 8, y: swept ? frame.top + size * 2 : 28, "font-size": 17 };
  return caseFigure(
    {
      document,
      width,
      height: Math.round(listTop + list.height),
      name: "a sweep",
      finding: sweepDrawnFinding(data, options),
    },
    [
      ...drawStrip(frame),
      ...drawCourses(frame),
      ...(swept
        ? [
            ...drawGaps(frame),
            footRule(document, {
              ...rule,
              scale: frame.x,
              ticks: frame.xTicks,
              edge,
              name: ruleName(data.by, data.byUnit),
              room: right - 4,
            }),
          ]
        : []),
      ...(known
        ? [
            sideRule(document, {
              ...rule,
              scale: frame.y,
              ticks: frame.yTicks,
              edge: left,
              name: ruleName(data.line, data.unit),
              room: width - 8,
              nameAt: size + 2,
            }),
          ]
        : [svg(document, "text", silent, [swept ? "no number yet" : "nothing swept yet"])]),
      ...(swept ? drawNow(frame) : []),
      ...ends.elements,
      ...list.elements,
    ],
  );
}
