import type { Knowing, Value } from "../measure/types.ts";
import { isValue } from "./isValue.ts";
import type { Given } from "./types.ts";

export type GivenOptions = Omit<Given, "kind" | "text" | "known" | "value">;

/**
 * A line that is typed in. Without a way of knowing and without a ± in its text it counts as measured, with the doubt that
 * goes with that; a count and a price are exact.
 * @param text What the maker wrote, with its unit ("24 lb"); empty for "not given"; or an amount of lib/measure.
 * @param known How it is known: `weighed`, `measured`, `guessed`, `from the label`, `published`.
 * @param options What it takes, the unit when none is written, and how a page lists it.
 * @returns The line as plain data.
 * @example given("24 lb", "weighed", { takes: "mass", unit: "lb" }).text // "24 lb"
 */
export function given(text: string | Value, known?: Knowing, options: GivenOptions = {}): Given {
  if (typeof text !== "string" && !isValue(text))
    throw new Error(`invalid given: ${String(text)}; a text or an amount is allowed`);
  return {
    kind: "given",
    text: typeof text === "string" ? text : "",
    ...(known !== undefined && { known }),
    ...(typeof text !== "string" && { value: text }),
    ...options,
  };
}
