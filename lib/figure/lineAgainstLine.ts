import { againstLabels, type PlacedCase } from "./againstLabels.ts";
import { type CaseAmount, caseAmount, ruleName } from "./caseAmount.ts";
import { caseFigure } from "./caseFigure.ts";
import { caseList, type ListedCase } from "./caseList.ts";
import { drawCaseMark } from "./caseMark.ts";
import type { LineAgainstLineData } from "./caseTypes.ts";
import { drawLabel } from "./drawLabel.ts";
import { assertWidth } from "./finite.ts";
import { intervalBar } from "./intervalBar.ts";
import { lineAgainstLineFinding } from "./lineAgainstLineFinding.ts";
import { svg } from "./svg.ts";
import type { FigureOptions } from "./types.ts";
import { footRule, footRuleHeight, sideRule, valueTicks } from "./valueRule.ts";
import { type ValueScale, valueScale } from "./valueScale.ts";

interface Pair {
  readonly mark: number;
  readonly name: string;
  readonly x: CaseAmount;
  readonly y: CaseAmount;
}

/**
 * One line against another: each case its mark, with both 95 % intervals as crossing bars, on two steel rules. Names
 * stand beside their marks; those without room, and cases without both numbers, are named below. Values in SI, shown in
 * `unit` and `againstUnit`. Gives an SVG element with custom properties for colours.
 * @throws RangeError for a value that is not finite, limits that are not numbers with the lower first, and a width
 * outside 200 to 10,000 px; TypeError for a unit of something else.
 * @example
 * const cases = [{ name: "Small tank", x: measuredValue(4.6, 0.15, {}, "a"), y: measuredValue(9.4, 0.3, {}, "b") }];
 * lineAgainstLine({ line: "gas", unit: "", against: "boil-off", againstUnit: "", cases }, { document, width: 640, system: "US" });
 */
export function lineAgainstLine(data: LineAgainstLineData, options: FigureOptions): SVGSVGElement {
  assertWidth(options.width);
  const { document, width, system } = options;
  const narrow = options.narrow ?? width < 600;
  const size = narrow ? 13 : 14;
  const pairs = data.cases.flatMap(({ name, x, y }, mark): readonly Pair[] =>
    x && y ? [{ mark, name, x: caseAmount(x, data.againstUnit, system), y: caseAmount(y, data.unit, system) }] : [],
  );
  const top = 16 + size * 1.6;
  const bottom = top + (narrow ? 260 : 340);
  const numbers = (pick: (pair: Pair) => CaseAmount) =>
    pairs.flatMap((pair) => [pick(pair).value, pick(pair).low, pick(pair).high]);
  const up = valueScale(
    numbers((pair) => pair.y),
    bottom,
    top,
    14,
  );
  const upTicks = valueTicks(up, { size, upright: true, system });
  const left = Math.max(narrow ? 40 : 56, Math.min(upTicks.widest + 24, width * 0.68));
  const right = width - (narrow ? 12 : 32);
  const along = valueScale(
    numbers((pair) => pair.x),
    left,
    right,
    14,
  );
  const placed = pairs.map((pair) => placeCase(pair, along, up));
  const bounds = { x: left + 4, y: top, width: width - left - 8, height: bottom - top - 4 };
  const labels = againstLabels(placed, bounds, size);
  const listTop = pairs.length > 0 ? bottom + footRuleHeight(size) + 4 : 44;
  const list = caseList(document, listed(data, pairs, new Set(labels.map((one) => one.mark))), {
    top: listTop,
    width,
    size,
  });
  const rule = { size, narrow, width };
  const rules = [
    footRule(document, {
      ...rule,
      scale: along,
      ticks: valueTicks(along, { size, upright: false, system }),
      edge: bottom,
      name: ruleName(data.against, data.againstUnit),
      room: right - 4,
    }),
    sideRule(document, {
      ...rule,
      scale: up,
      ticks: upTicks,
      edge: left,
      name: ruleName(data.line, data.unit),
      room: width - 8,
      nameAt: size + 2,
    }),
  ];
  const silent = svg(document, "text", { x: 8, y: 28, "font-size": 17 }, [
    data.cases.length === 0 ? "no case yet" : "no case with both yet",
  ]);
  return caseFigure(
    {
      document,
      width,
      height: Math.round(listTop + list.height),
      name: "a line against another",
      finding: lineAgainstLineFinding(data, options),
    },
    [
      ...(pairs.length > 0 ? rules : [silent]),
      ...pairs.map((pair, index) => drawBars(document, pair, placed[index])),
      // The first case last: a filled dot lets an open shape under it be seen, not the other way about.
      ...placed.toReversed().map((one) => drawCaseMark(document, one.mark, one.x, one.y, 4.5)),
      ...labels.map(({ label }) => drawLabel(document, label)),
      ...list.elements,
    ],
  );
}

const placeCase = ({ mark, name, x, y }: Pair, along: ValueScale, up: ValueScale): PlacedCase => ({
  mark,
  name,
  x: along.at(x.value),
  y: up.at(y.value),
  left: along.at(x.low),
  right: along.at(x.high),
  top: up.at(y.high),
  bottom: up.at(y.low),
});

function listed(data: LineAgainstLineData, pairs: readonly Pair[], named: ReadonlySet<number>): readonly ListedCase[] {
  return data.cases.flatMap(({ name, says }, mark): readonly ListedCase[] => {
    if (named.has(mark)) return [];
    const pair = pairs.find((one) => one.mark === mark);
    return [
      {
        mark,
        name,
        says: pair ? `${data.line} ${pair.y.text}, ${data.against} ${pair.x.text}` : (says ?? "no number"),
      },
    ];
  });
}

function drawBars(document: Document, { mark, x, y }: Pair, at: PlacedCase | undefined): SVGElement {
  const open = ({ low, high }: CaseAmount) => ({
    openFrom: low === Number.NEGATIVE_INFINITY,
    openTo: high === Number.POSITIVE_INFINITY,
  });
  const bars = at
    ? [
        x.low < x.high ? intervalBar({ from: at.left, to: at.right, across: at.y, tick: 4, ...open(x) }) : "",
        y.low < y.high
          ? intervalBar({ from: at.bottom, to: at.top, across: at.x, tick: 4, upright: true, ...open(y) })
          : "",
      ]
    : [];
  const paint = { fill: "none", stroke: "var(--ink)", "stroke-width": 1.2, "data-mark": "interval" };
  return svg(
    document,
    "g",
    { "data-case": mark + 1 },
    bars.filter((d) => d !== "").map((d) => svg(document, "path", { d, ...paint })),
  );
}
