import { lineAgainstLine, sweepDrawn } from "../../lib/figure/index.ts";
import type { Lines, Result } from "../../lib/lines/index.ts";
import { dimensionOf, exact } from "../../lib/measure/index.ts";
import type { Value } from "../../lib/measure/types.ts";
import { unitOfAmount, valueIn } from "../page/showValue.ts";
import type { BookFigureInput, BookFigureMaker } from "../page/tool/types.ts";
import type { HoldCourse, HoldsOfFiring } from "../partsOfFiring.ts";

const caseName = (name: string): string => name || "as it is";

const shownCases = (open: Lines) => open.cases().filter(({ hidden }) => !hidden);

function whyNot(result: Result): string {
  if (result.state === "stopped") return result.says;
  return result.state === "waits" ? `waits for ${result.for}` : "no number yet";
}

/** The holds of a case's firing, where it came to something. */
function holdsOf(result: Result): HoldsOfFiring | undefined {
  const thing = result.state === "settled" ? result.value : result.state === "working" ? result.before : undefined;
  return thing instanceof Map ? (thing.get("whole hold") as HoldsOfFiring | undefined) : undefined;
}

const temperature = dimensionOf("temperature");

function pointsOf({ times, T, low, high }: HoldCourse, target: number): readonly { x: number; y: Value }[] {
  return times.map((x, i) => {
    const [value, bottom, top] = [T[i] ?? 0, low[i] ?? 0, high[i] ?? 0];
    const y = { value: target + value, dimension: temperature, components: new Map() };
    return { x, y: { ...y, interval95: [target + Math.min(bottom, value), target + Math.max(top, value)] } };
  });
}

const firing = "firing in trial";
const feed = "own feed";

/** Whether a case has a feed of its own, so that its hold is drawn fed. */
const isFed = (open: Lines, name: string): boolean => valueIn(open.result(feed, name)) !== undefined;

function drawHolds({ open, system, width, narrow }: BookFigureInput): SVGSVGElement | undefined {
  const cases = shownCases(open);
  const base = cases.find((one) => one.base)?.name;
  const all = cases.map(({ name }) => ({ name, result: open.result(firing, name) }));
  const known = all.map(({ result }) => holdsOf(result));
  const first = (base === undefined ? undefined : holdsOf(open.result(firing, base))) ?? known.find(Boolean);
  if (!first) return undefined;
  const { target, band } = first;
  const said = all.map(({ name, result }) => {
    const holds = holdsOf(result);
    if (!holds) return { name: caseName(name), points: [{ x: 0, says: whyNot(result) }] };
    const fed = isFed(open, name);
    return {
      name: `${caseName(name)}${fed ? ", fed" : ""}`,
      points: pointsOf(fed ? holds.fed : holds.unfed, holds.target),
    };
  });
  const limit = (T: number) => exact(T, temperature);
  return sweepDrawn(
    {
      line: "bath",
      unit: system === "US" ? "°F" : "°C",
      by: "after parts in",
      byUnit: "min",
      byDimension: dimensionOf("time"),
      cases: said,
      strip: { low: limit(target - band), high: limit(target + band) },
    },
    { document, width, system, narrow },
  );
}

const [steadiness, burnt] = ["drift left alone", "gas for a firing"];

function drawTradeOff({ open, system, width, narrow }: BookFigureInput): SVGSVGElement | undefined {
  const cases = shownCases(open).map(({ name }) => {
    const [up, along] = [open.result(steadiness, name), open.result(burnt, name)];
    const [y, x] = [valueIn(up), valueIn(along)];
    const says = y && x ? undefined : whyNot(y ? along : up);
    return { name: caseName(name), ...(x && { x }), ...(y && { y }), ...(says !== undefined && { says }) };
  });
  if (!cases.some(({ x, y }) => x && y)) return undefined;
  const unit = (line: string, values: readonly (Value | undefined)[]) => {
    const value = values.find((one) => one !== undefined);
    return value ? unitOfAmount(open.line(line), value, system) : "";
  };
  return lineAgainstLine(
    {
      line: steadiness,
      unit: unit(
        steadiness,
        cases.map(({ y }) => y),
      ),
      against: burnt,
      againstUnit: unit(
        burnt,
        cases.map(({ x }) => x),
      ),
      cases,
    },
    { document, width, system, narrow },
  );
}

/** Figures for comparing tanks and fires. */
export const compareFigures: ReadonlyMap<string, BookFigureMaker> = new Map<string, BookFigureMaker>([
  [
    "hold of each case",
    {
      title: "The hold of each case",
      caption: ({ open }) =>
        `${
          shownCases(open).some(({ name }) => isFed(open, name))
            ? "A case with a feed of its own is drawn fed, the others left alone"
            : "Left alone after the parts go in at the target"
        }; the bright strip is the band of the base, the fill each case's 95 %.`,
      inset: true,
      draw: drawHolds,
    },
  ],
  [
    "steadiness against gas",
    {
      title: "Steadiness against gas",
      caption: () =>
        "Low and to the left is better: a bath that climbs slowly when nobody feeds it, on little gas. Bars are the 95 % of each case by itself; what the cases share cancels between them.",
      inset: true,
      draw: drawTradeOff,
    },
  ],
]);
