import { subtract } from "./arithmetic.ts";
import { standardUncertainty } from "./standardUncertainty.ts";
import type { Value } from "./types.ts";

/** What two ways to one number differ by: sixteen digits, some lost on the way. */
const rounding = 1e-11;
/** What a slope taken as a difference leaves of a part that cancels, as a share of the doubt. */
const slopes = 1e-6;

/**
 * a − b without what only rounding left of it: where both came to the same by two ways, 3e-17 gal give or take 5e-18
 * would be shown digit by digit, and is nothing.
 *
 * @throws TypeError for different kinds.
 * @example
 * difference(exact(0.1 + 0.2), exact(0.3)).value // 0
 */
export function difference(a: Value, b: Value): Value {
  const less = subtract(a, b);
  const least = slopes * Math.max(standardUncertainty(a), standardUncertainty(b));
  const components = new Map([...less.components].filter(([, part]) => Math.abs(part) > least));
  const smallest = rounding * Math.max(Math.abs(a.value), Math.abs(b.value));
  const value = Math.abs(less.value) > (components.size > 0 ? smallest : Math.max(smallest, least)) ? less.value : 0;
  if (value === less.value && components.size === less.components.size) return less;
  const { interval95, ...rest } = less;
  const kept = interval95 && components.size > 0 && value === less.value;
  return { ...rest, value, components, ...(kept && { interval95 }) };
}
