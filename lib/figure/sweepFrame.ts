import { median } from "d3";
import { formatQuantity } from "../measure/formatQuantity.ts";
import { type CaseAmount, type CaseLimits, caseAmount, caseLimits, onRule, ruleUnit } from "./caseAmount.ts";
import type { SweepCase, SweepDrawnData } from "./caseTypes.ts";
import { linesOf } from "./cutTo.ts";
import { textWidth } from "./textWidth.ts";
import type { FigureOptions } from "./types.ts";
import { type ValueTicks, valueTicks } from "./valueRule.ts";
import { spanOf, type ValueScale, valueScale } from "./valueScale.ts";

/** A point of a sweep in the units shown. */
export interface SweepSpot {
  readonly x: number;
  readonly y?: CaseLimits;
  readonly says?: string;
}

/** A stretch of the given without numbers, from the last number before it to the first after it. */
export interface SweepGap {
  readonly from: number;
  readonly to: number;
  readonly says: string;
}

/** One case of a sweep in the units shown, its points in the order of x. */
export interface SweepLine {
  readonly mark: number;
  readonly name: string;
  readonly runs: readonly (readonly (SweepSpot & { readonly y: CaseLimits })[])[];
  readonly gaps: readonly SweepGap[];
  /** Where the given stands now, in words too, and what the line comes to there. */
  readonly present?: { readonly x: number; readonly text: string; readonly y?: CaseAmount };
}

export interface SweepFrame {
  readonly document: Document;
  readonly width: number;
  readonly narrow: boolean;
  readonly size: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  /** px where the plot ends; stretches without numbers follow below it, down to the foot rule at `edge`. */
  readonly bottom: number;
  readonly edge: number;
  readonly x: ValueScale;
  readonly y: ValueScale;
  readonly xTicks: ValueTicks;
  readonly yTicks: ValueTicks;
  readonly lines: readonly SweepLine[];
  /** Limits of y that are wanted, in the unit shown. */
  readonly strip?: { readonly low: number; readonly high: number };
  /** Each case's name in lines, where there is room for all of them beside the plot; else they are listed below it. */
  readonly names?: readonly (readonly string[])[];
}

/** px that one row of a stretch without numbers takes. */
export const gapRow = (size: number): number => size + 17;

/** The cases of a sweep in the units shown, each cut into runs of numbers and the stretches without. */
export function sweepLines(data: SweepDrawnData, system: "US" | "metric"): readonly SweepLine[] {
  const amountAt = (si: number) => {
    if (!Number.isFinite(si)) throw new RangeError(`invalid ${data.by}: ${si}; a finite number in SI units`);
    return onRule(si, data.byUnit, data.byDimension);
  };
  const spot = (one: SweepCase["points"][number]): SweepSpot => ({
    x: amountAt(one.x),
    ...(one.y ? { y: caseLimits(one.y, data.unit) } : {}),
    ...(one.says === undefined ? {} : { says: one.says }),
  });
  return data.cases.map(({ name, points, present }, mark) => {
    const spots = points.map(spot).sort((a, b) => a.x - b.x);
    const now = present && {
      present: {
        x: amountAt(present.x),
        text: sweptText(present.x, data, system),
        ...(present.y ? { y: caseAmount(present.y, data.unit, system) } : {}),
      },
    };
    return { mark, name, ...runsOf(spots), ...now };
  });
}

/** An amount of the given as the page writes it. */
export function sweptText(si: number, { byUnit, byDimension }: SweepDrawnData, system: "US" | "metric"): string {
  const dimension = byDimension ? { dimension: byDimension } : {};
  return formatQuantity(si, ruleUnit(byUnit), { system, ...dimension }).replaceAll("\u00a0", " ");
}

function runsOf(spots: readonly SweepSpot[]): Pick<SweepLine, "runs" | "gaps"> {
  const runs: (SweepSpot & { y: CaseLimits })[][] = [];
  const gaps: SweepGap[] = [];
  spots.forEach((one, index) => {
    const before = spots[index - 1];
    if (one.y) {
      const last = runs.at(-1);
      if (before?.y && last) last.push({ ...one, y: one.y });
      else runs.push([{ ...one, y: one.y }]);
      return;
    }
    const after = spots[index + 1] ?? one;
    const open = before && !before.y ? gaps.pop() : undefined;
    gaps.push({ from: open?.from ?? before?.x ?? one.x, to: after.x, says: open?.says ?? one.says ?? "no number" });
  });
  return { runs, gaps };
}

/**
 * Lays out a sweep for a width.
 * @example sweepFrame(data, options).x.at(20) // px of 20 in
 */
export function sweepFrame(data: SweepDrawnData, options: FigureOptions): SweepFrame {
  const { document, width, system } = options;
  const narrow = options.narrow ?? width < 600;
  const size = narrow ? 13 : 14;
  const lines = sweepLines(data, system);
  const nameRoom = Math.min(endsWidth(lines, size), width * 0.3);
  const top = 10 + size * (lines.some((one) => one.present) ? 3 : 1.9);
  // Without a number there is nothing to plot but where the numbers are wanting.
  const known = lines.some((one) => one.runs.length > 0);
  const bottom = top + (!known ? size * 3 : narrow ? 220 : 300);
  const gapped = lines.filter((one) => one.gaps.length > 0).length;
  const beside = lines.map(({ name }) => linesOf(name, size, nameRoom, 2));
  const taken = beside.reduce((sum, names) => sum + names.length * size * 1.25 + 3, 0);
  const named = !narrow && taken <= bottom - top;
  const right = width - (named ? nameRoom + 58 : 44);
  const edge = bottom + gapped * gapRow(size) + (gapped > 0 ? 8 : 0);
  const strip = data.strip && {
    low: caseLimits(data.strip.low, data.unit).value,
    high: caseLimits(data.strip.high, data.unit).value,
  };
  const y = valueScale([...upNumbers(lines), ...(strip ? [strip.low, strip.high] : [])], bottom, top, 10);
  const yTicks = valueTicks(y, { size, upright: true, system });
  const left = Math.max(narrow ? 40 : 56, Math.min(yTicks.widest + 24, width * 0.68));
  const across = lines.flatMap((one) => [
    ...one.runs.flat().map((spot) => spot.x),
    ...one.gaps.flatMap((gap) => [gap.from, gap.to]),
  ]);
  const x = valueScale(across, left, right, 0);
  const xTicks = valueTicks(x, { size, upright: false, system });
  return {
    document,
    width,
    narrow,
    size,
    left,
    right,
    top,
    bottom,
    edge,
    x,
    y,
    xTicks,
    yTicks,
    lines,
    ...(strip && { strip }),
    ...(named ? { names: beside } : {}),
  };
}

/** What stands under a case's name at the end of its line. */
export const endText = ({ present }: SweepLine): string => (present?.y ? `${present.y.text} now` : "");

const endsWidth = (lines: readonly SweepLine[], size: number): number =>
  Math.max(0, ...lines.flatMap((one) => [textWidth(one.name, size), textWidth(endText(one), size)])) + 1;

// A spread that runs away at one end would press the lines flat: it may run off the plot, the lines never.
function upNumbers(lines: readonly SweepLine[]): readonly number[] {
  const amounts = lines.flatMap((one) => [
    ...one.runs.flat().map((spot) => spot.y),
    ...(one.present?.y ? [one.present.y] : []),
  ]);
  if (amounts.length === 0) return [];
  const values = amounts.map((one) => one.value);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const widths = amounts.map((one) => one.high - one.low).filter(Number.isFinite);
  const reach = Math.max(high - low, median(widths) ?? 0);
  const ends = amounts.flatMap((one) => [one.low, one.high]).filter(Number.isFinite);
  return [low, high, ...ends.map((end) => Math.min(Math.max(end, low - reach), high + reach))];
}

/** Whether a present amount lies on the rule that was swept. */
export function isOnRule({ x }: SweepFrame, amount: number): boolean {
  const [low, high] = spanOf([x.low, x.high]);
  const aside = (high - low) * 1e-6;
  return amount >= low - aside && amount <= high + aside;
}
