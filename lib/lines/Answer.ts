import { formatWithSpread } from "../measure/formatWithSpread.ts";
import { siUnit } from "../measure/siUnit.ts";
import { standardUncertainty } from "../measure/standardUncertainty.ts";
import type { Value } from "../measure/types.ts";
import { widthFrom } from "../measure/widthFrom.ts";
import { isValue } from "./isValue.ts";
import type { Line, Result } from "./types.ts";
import { unitShown } from "./unitShown.ts";

/** A line's result for who asks from outside: the amount in SI with its doubt, or why there is none. */
export type Answer =
  | {
      readonly value: number;
      readonly standardUncertainty: number;
      /** As it is shown, with its spread and unit. */
      readonly text: string;
      /** What the width comes from: shares of the variance, largest first. */
      readonly widthFrom: readonly { readonly source: string; readonly share: number }[];
    }
  /** A thing that is no amount: words, a log, a table. */
  | { readonly thing: unknown }
  | { readonly stopped: string; readonly at?: number }
  /** It waits for a line that is stopped or not given; a given without a text waits for itself, and says `notGiven`. */
  | { readonly waitsFor: string; readonly notGiven?: true };

/**
 * A line's result as an answer: plain numbers in SI, and the text that a page would show.
 * @param result What the line came to; it is no longer being worked.
 * @param line The line, for its unit.
 * @param name The line's name: a given that has no text waits for itself.
 * @returns The answer.
 * @example answerOf({ state: "not given" }, given(""), "salt") // { waitsFor: "salt", notGiven: true }
 */
export function answerOf(result: Result, line: Line, name: string): Answer {
  switch (result.state) {
    case "settled":
      return isValue(result.value)
        ? amountAnswer(result.value, line.unit ?? result.written?.unit)
        : { thing: result.value };
    case "not given":
      return { waitsFor: name, notGiven: true };
    case "waits":
      return { waitsFor: result.for };
    case "stopped":
      return { stopped: result.says, ...(result.at !== undefined && { at: result.at }) };
    case "working":
      throw new Error("invalid result: working; wait until the line is settled");
  }
}

function amountAnswer(value: Value, asked: string | undefined): Answer {
  return {
    value: value.value,
    standardUncertainty: standardUncertainty(value),
    text: shown(value, unitShown(value.dimension, asked)),
    widthFrom: widthFrom(value),
  };
}

/** Where the unit is one of something else, or none that texts can name: the SI's. */
function shown(value: Value, unit: string): string {
  try {
    return formatWithSpread(value, unit).text;
  } catch {
    return formatWithSpread(value, siUnit(value.dimension)).text;
  }
}
