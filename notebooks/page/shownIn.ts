import type { Result } from "../../lib/lines/index.ts";
import type { Value } from "../../lib/measure/types.ts";

/** Whether a result is a number of lib/measure, with its unit and its doubt. */
export function isValue(value: unknown): value is Value {
  return typeof value === "object" && value !== null && "components" in value && "dimension" in value;
}

/** The number a line came to, if it came to one. */
export function valueIn(result: Result): Value | undefined {
  return result.state === "settled" && isValue(result.value) ? result.value : undefined;
}

/** The number to show for a line: what it came to, or, while it is worked again, what it came to before. */
export function shownIn(result: Result): { readonly value: Value; readonly before: boolean } | undefined {
  const value = valueIn(result);
  if (value) return { value, before: false };
  return result.state === "working" && isValue(result.before) ? { value: result.before, before: true } : undefined;
}
