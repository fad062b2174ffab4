import { type CaseAmount, caseAmount, ruleName } from "./caseAmount.ts";
import { caseFigure } from "./caseFigure.ts";
import { drawCaseMark } from "./caseMark.ts";
import type { CaseValue, LineAcrossCasesData } from "./caseTypes.ts";
import { cutTo, linesOf } from "./cutTo.ts";
import { dropLine } from "./dropLine.ts";
import { assertWidth } from "./finite.ts";
import { intervalBar } from "./intervalBar.ts";
import { lineAcrossCasesFinding } from "./lineAcrossCasesFinding.ts";
import { svg } from "./svg.ts";
import { textWidth } from "./textWidth.ts";
import type { Box, FigureOptions } from "./types.ts";
import { footRule, footRuleHeight, valueTicks } from "./valueRule.ts";
import { type ValueScale, valueScale } from "./valueScale.ts";

interface Words {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: "start" | "end";
  readonly weight: number;
}

/** One case, laid out: its words, its mark's place, and px of its bar. */
interface Lane {
  readonly words: readonly Words[];
  readonly markX: number;
  readonly markY: number;
  readonly barY: number;
}

interface Layout {
  readonly lanes: readonly Lane[];
  readonly from: number;
  readonly to: number;
  readonly edge: number;
}

/**
 * One line across its cases: a row for each, its 95 % interval as a bar with end ticks and its value as the case's mark,
 * all on one steel rule with the unit once at its end; the base as a dropped line. Values of one kind in SI, shown in
 * `unit`; a case without a number says so. Works from none to a dozen cases and more. Gives an SVG element with custom
 * properties for colours.
 * @throws RangeError for a value that is not finite, limits that are not numbers with the lower first, and a width
 * outside 200 to 10,000 px; TypeError for a unit of something else.
 * @example
 * const cases = [{ name: "Small tank", value: measuredValue(4.6, 0.15, {}, "a") }, { name: "Longer tank", value: exact(6) }];
 * lineAcrossCases({ line: "Burners", unit: "", cases, base: "Small tank" }, { document, width: 640, system: "US" });
 */
export function lineAcrossCases(data: LineAcrossCasesData, options: FigureOptions): SVGSVGElement {
  assertWidth(options.width);
  const { document, width, system } = options;
  const narrow = options.narrow ?? width < 600;
  const size = narrow ? 13 : 14;
  const amounts = data.cases.map(({ value }) => value && caseAmount(value, data.unit, system));
  const names = data.cases.map(({ name }) => (name === data.base ? `${name}, base` : name));
  const layout =
    (narrow ? undefined : inColumns(data.cases, names, amounts, width, size)) ??
    stacked(data.cases, names, amounts, width, size);
  const scale = valueScale(
    amounts.flatMap((one) => (one ? [one.value, one.low, one.high] : [])),
    layout.from,
    layout.to,
    10,
  );
  const words = layout.lanes.flatMap((lane) => lane.words);
  const base = data.cases.findIndex(({ name }) => name === data.base);
  const nothing = { x: 8, y: layout.edge - 18, "font-size": 17 };
  return caseFigure(
    {
      document,
      width,
      height: Math.round(layout.edge + (amounts.some((one) => one) ? footRuleHeight(size) : 0)),
      name: "a line across cases",
      finding: lineAcrossCasesFinding(data, options),
    },
    [
      ...dropped(
        document,
        amounts[base],
        scale,
        layout,
        words.map((one) => boxOf(one, size)),
      ),
      ...layout.lanes.map((lane, index) => drawLane(document, lane, index, amounts[index], scale, size)),
      // A rule without a number on it would measure nothing.
      ...(amounts.some((one) => one)
        ? [
            footRule(document, {
              scale,
              ticks: valueTicks(scale, { size, upright: false, system }),
              edge: layout.edge,
              name: ruleName(data.line, data.unit),
              room: layout.to - 4,
              width,
              size,
              narrow,
            }),
          ]
        : []),
      ...(data.cases.length === 0 ? [svg(document, "text", nothing, ["no case yet"])] : []),
    ],
  );
}

const wordsOf = (one: CaseValue, amount: CaseAmount | undefined) =>
  amount ?? { number: "", spread: one.says ?? "no number", text: one.says ?? "no number" };

/** Names at the left, numbers at the right with every ± in line; nothing where that leaves the bars too little room. */
function inColumns(
  cases: readonly CaseValue[],
  names: readonly string[],
  amounts: readonly (CaseAmount | undefined)[],
  width: number,
  size: number,
): Layout | undefined {
  const shown = cases.map((one, index) => wordsOf(one, amounts[index]));
  const widest = (texts: readonly string[], weight?: number) =>
    Math.max(0, ...texts.map((text) => textWidth(text, size, weight)));
  const nameRoom = Math.min(widest(names) + 1, width * 0.3);
  const numbers = widest(
    shown.map((one) => one.number),
    600,
  );
  const spreads = Math.min(widest(shown.map((one) => one.spread)), width * 0.3);
  const from = 22 + nameRoom + 16;
  const spreadAt = width - spreads - 4;
  const to = spreadAt - 5 - numbers - 20;
  if (to - from < 260) return undefined;
  let y = 6;
  const lanes = cases.map((_, index): Lane => {
    const lines = linesOf(names[index] ?? "", size, nameRoom, 2);
    const height = Math.max(32, lines.length * size * 1.25 + 12);
    const middle = y + height / 2;
    y += height;
    const baseline = middle + size * 0.34;
    const first = baseline - ((lines.length - 1) * size * 1.25) / 2;
    const { number = "", spread = "" } = shown[index] ?? {};
    return {
      markX: 8,
      markY: middle,
      barY: middle,
      words: [
        ...lines.map(
          (text, line): Words => ({ text, x: 22, y: first + line * size * 1.25, anchor: "start", weight: 400 }),
        ),
        { text: number, x: spreadAt - 5, y: baseline, anchor: "end", weight: 500 },
        { text: cutTo(spread, size, spreads), x: spreadAt, y: baseline, anchor: "start", weight: 400 },
      ],
    };
  });
  return { lanes, from, to, edge: Math.max(y, 38) + 8 };
}

/** Name and number above the bar, for a phone and for long names. */
function stacked(
  cases: readonly CaseValue[],
  names: readonly string[],
  amounts: readonly (CaseAmount | undefined)[],
  width: number,
  size: number,
): Layout {
  let y = 4;
  const lanes = cases.map((one, index): Lane => {
    const number = cutTo(wordsOf(one, amounts[index]).text, size, width - 26, 500);
    const name = names[index] ?? "";
    const room = width - 26 - textWidth(number, size, 500);
    const beside = textWidth(name, size) + 16 <= room;
    const lines = beside ? [name] : linesOf(name, size, width - 26, 2);
    const first = y + size;
    const words = lines.map(
      (text, line): Words => ({ text, x: 22, y: first + line * size * 1.25, anchor: "start", weight: 400 }),
    );
    const last = first + (lines.length - (beside ? 1 : 0)) * size * 1.25;
    words.push(
      beside
        ? { text: number, x: width - 4, y: last, anchor: "end", weight: 500 }
        : { text: number, x: 22, y: last, anchor: "start", weight: 500 },
    );
    const barY = last + (amounts[index] ? 14 : 0);
    y = barY + (amounts[index] ? 16 : 12);
    return { markX: 8, markY: first - size * 0.34, barY, words };
  });
  return { lanes, from: 8, to: width - 8, edge: Math.max(y, 44) };
}

function drawLane(
  document: Document,
  lane: Lane,
  index: number,
  amount: CaseAmount | undefined,
  { at }: ValueScale,
  size: number,
): SVGElement {
  const texts = lane.words
    .filter(({ text }) => text !== "")
    .map(({ text, x, y, anchor, weight }) =>
      svg(document, "text", { x, y, "text-anchor": anchor, "font-size": size, "font-weight": weight }, [text]),
    );
  const bar = (one: CaseAmount) => [
    ...(one.low < one.high
      ? [
          svg(document, "path", {
            d: intervalBar({
              from: at(one.low),
              to: at(one.high),
              across: lane.barY,
              tick: 4.5,
              openFrom: one.low === Number.NEGATIVE_INFINITY,
              openTo: one.high === Number.POSITIVE_INFINITY,
            }),
            fill: "none",
            stroke: "var(--ink)",
            "stroke-width": 1.2,
            "data-mark": "interval",
          }),
        ]
      : []),
    drawCaseMark(document, index, at(one.value), lane.barY, 4.5),
  ];
  return svg(document, "g", { "data-case": index + 1 }, [
    drawCaseMark(document, index, lane.markX, lane.markY),
    ...texts,
    ...(amount ? bar(amount) : []),
  ]);
}

function dropped(
  document: Document,
  amount: CaseAmount | undefined,
  { at }: ValueScale,
  layout: Layout,
  boxes: readonly Box[],
): readonly SVGElement[] {
  if (!amount) return [];
  const d = dropLine(at(amount.value), (layout.lanes[0]?.barY ?? 10) - 10, layout.edge, boxes);
  return [svg(document, "path", { d, fill: "none", stroke: "var(--ink)", "stroke-width": 0.9, "data-mark": "base" })];
}

function boxOf({ text, x, y, anchor, weight }: Words, size: number): Box {
  const width = textWidth(text, size, weight);
  return { x: anchor === "end" ? x - width : x, y: y - size * 0.8, width, height: size };
}
