import type { Worked } from "./types.ts";

export type WorkedOptions = Omit<Worked, "kind" | "formula" | "unit">;

/**
 * A line that is worked out from others.
 * @param formula How, over the names of lines and functions: "salt / water at the start".
 * @param unit Unit in which it is shown.
 * @param options How a page lists it.
 * @returns The line as plain data. Its formula is read when the notebook is opened.
 * @example worked("burner rate * time lit", "lb").formula // "burner rate * time lit"
 */
export function worked(formula: string, unit?: string, options: WorkedOptions = {}): Worked {
  return { kind: "worked", formula, ...(unit !== undefined && { unit }), ...options };
}
