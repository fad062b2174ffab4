import type { Given, Result } from "../../../lib/lines/index.ts";
import { findUnit } from "../../../lib/measure/index.ts";
import { cutField } from "../fieldText.ts";

/** How a given stands on its blank, and what is typed over when it is changed. */
export interface GivenShown {
  /** As the maker wrote it, without a unit that the line names anyway. */
  readonly text: string;
  /** The unit that a bare number takes when it is typed here. */
  readonly unit: string;
  /** Whether the number stands in the line's unit: else the unit is written behind it. */
  readonly inItsUnit: boolean;
}

/**
 * A given's text on its blank in a grid whose line names `unit`. What could not be read stays whole, to be mended there.
 */
export function givenShown(line: Given, text: string, result: Result, unit: string): GivenShown {
  const whole = { text: text.trim(), unit, inItsUnit: text.trim() === "" };
  if (line.choices || line.takes === "words" || result.state !== "settled") return whole;
  if (text.includes("±") && result.written)
    return { ...whole, unit: result.written.unit, inItsUnit: sameUnit(result.written.unit, unit) };
  const cut = cutField(text);
  const bare = cut.unit === "" && !/\p{L}|[°%$'"±]/u.test(cut.number);
  if (bare) return { text: cut.number, unit, inItsUnit: !result.written || sameUnit(result.written.unit, unit) };
  if (cut.unit === "" || !sameUnit(cut.unit, unit)) return { ...whole, unit: cut.unit || unit };
  return { text: cut.number, unit: cut.unit, inItsUnit: true };
}

/** Whether two texts name one unit, however they are spelt. */
export function sameUnit(one: string, other: string): boolean {
  if (one === other) return true;
  const [a, b] = [findUnit(one, "temperature"), findUnit(other, "temperature")];
  return a !== undefined && a.symbol === b?.symbol;
}
