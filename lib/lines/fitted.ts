import type { Worked } from "./types.ts";
import { type WorkedOptions, worked } from "./worked.ts";

/**
 * A line that is found by fitting to a log. It is worked like any other; pages say how it was come by.
 * @param formula The function that fits, and what it is given: "fit of run(log, salt in the bath)".
 * @param unit Unit in which it is shown.
 * @param options How a page lists it.
 * @returns The line as plain data.
 * @example fitted("fit of run(log)").kind // "fitted"
 */
export function fitted(formula: string, unit?: string, options: WorkedOptions = {}): Worked {
  return { ...worked(formula, unit, options), kind: "fitted" };
}
