import { clockUnit } from "../measure/formatQuantity.ts";
import { formatWithSpread } from "../measure/formatWithSpread.ts";
import { inUnit, unitMeasuring } from "../measure/inUnit.ts";
import { interval95 } from "../measure/standardUncertainty.ts";
import type { Dimension, Value } from "../measure/types.ts";
import { unit as unitOf } from "../measure/unit.ts";

/** A value in the unit shown, with its 95 % limits (which may be endless) and how the page writes it. */
export interface CaseAmount {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** "4.6 ±0.3 fl oz/min", and the same in two: the number, and its spread with the unit. */
  readonly text: string;
  readonly number: string;
  readonly spread: string;
}

/** The unit that a rule counts in: a clock's time in min. */
export const ruleUnit = (unit: string): string => (unit === clockUnit ? "min" : unit);

/** How a rule is named: what it measures and its unit. */
export function ruleName(line: string, unit: string): string {
  return [line, ruleUnit(unit)].filter((part) => part !== "").join(", ");
}

/**
 * A value as figures of cases draw and write it.
 * @param unit a unit of what it measures, or "m:ss" for a time
 * @throws RangeError for a value that is not finite or limits that are not numbers, the lower first; TypeError for a
 * unit of something else.
 * @example
 * caseAmount(measuredValue(10.9, 0.1, { mass: 1 }, "scale"), "kg", "metric").text // "10.9 ±0.2 kg"
 */
export function caseAmount(value: Value, unit: string, system: "US" | "metric"): CaseAmount {
  const { text, spread } = formatWithSpread(value, unit, { system });
  const [bottom, top] = interval95(value);
  if (!(bottom <= top)) throw new RangeError(`invalid interval: ${bottom} to ${top}; two numbers, the lower first`);
  const known = unitMeasuring(ruleUnit(unit), value.dimension);
  const shown = (end: number) => (Number.isFinite(end) ? inUnit(end, value.dimension, known) : end);
  const plain = text.replaceAll("\u00a0", " ");
  const from = plain.indexOf(spread.replaceAll("\u00a0", " "));
  return {
    value: inUnit(value.value, value.dimension, known),
    low: shown(bottom),
    high: shown(top),
    text: plain,
    number: plain.slice(0, from).trimEnd(),
    spread: plain.slice(from),
  };
}

/**
 * An SI number in the unit that a rule counts in.
 * @param dimension what it measures; default: what the unit measures by itself
 * @example onRule(0.508, "in") // 20
 */
export function onRule(si: number, unit: string, dimension?: Dimension): number {
  const known = unitOf(ruleUnit(unit), dimension && !dimension.point ? "number" : "temperature");
  return inUnit(si, dimension ?? known.dimension, known);
}
