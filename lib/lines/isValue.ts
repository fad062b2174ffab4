import type { Value } from "../measure/types.ts";

/**
 * Whether something is an amount: a number with dimension and doubt.
 * @param thing What a line came to.
 * @returns true for a Value of lib/measure.
 * @example isValue(exact(2, {})) // true
 */
export function isValue(thing: unknown): thing is Value {
  if (typeof thing !== "object" || thing === null) return false;
  const { value, dimension, components } = thing as Partial<Value>;
  return typeof value === "number" && typeof dimension === "object" && components instanceof Map;
}
