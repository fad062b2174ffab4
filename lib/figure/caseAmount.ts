import { clockUnit } from "../measure/formatQuantity.ts";
import { formatWithSpread } from "../measure/formatWithSpread.ts";
import { inUnit, unitMeasuring } from "../measure/inUnit.ts";
import { interval95 } from "../measure/standardUncertainty.ts";
import type { Dimension, Value } from "../measure/types.ts";
import { unit as unitOf } from "../measure/unit.ts";

/** A value in the unit shown, with its 95 % limits, which may be endless. */
export interface CaseLimits {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** The same, and how the page writes it. */
export interface CaseAmount extends CaseLimits {
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
  const limits = caseLimits(value, unit);
  const { text, spread } = formatWithSpread(value, unit, { system });
  const plain = text.replaceAll("\u00a0", " ");
  const from = plain.indexOf(spread.replaceAll("\u00a0", " "));
  return { ...limits, text: plain, number: plain.slice(0, from).trimEnd(), spread: plain.slice(from) };
}

/**
 * A value without its words, for what is only drawn: writing hundreds of points costs more than drawing them. Errors
 * as `caseAmount`.
 * @example caseLimits(measuredValue(10, 0.1, { mass: 1 }, "scale"), "kg").high // 10.196
 */
export function caseLimits(value: Value, unit: string): CaseLimits {
  if (!Number.isFinite(value.value)) throw new RangeError(`invalid value: ${value.value}; a finite number expected`);
  const [bottom, top] = interval95(value);
  if (!(bottom <= top)) throw new RangeError(`invalid interval: ${bottom} to ${top}; two numbers, the lower first`);
  const { factor, offset = 0 } = unitMeasuring(ruleUnit(unit), value.dimension);
  const shown = (end: number) => end / factor - offset;
  return { value: shown(value.value), low: shown(bottom), high: shown(top) };
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
