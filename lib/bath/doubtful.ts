import type { Doubtful } from "./types.ts";

/**
 * A number with its doubt, from a number alone or with its own doubt.
 *
 * @param what name for the error
 * @param given the number
 * @param share default standard uncertainty as a share of the number
 * @throws RangeError unless value and doubt are finite and the doubt is 0 or more
 * @example doubtful("water", 9, 0.05) // { value: 9, u: 0.45 }
 */
export function doubtful(what: string, given: Doubtful, share: number): { readonly value: number; readonly u: number } {
  const value = typeof given === "number" ? given : given.value;
  const u = typeof given === "number" ? Math.abs(given) * share : given.standardUncertainty;
  if (!Number.isFinite(value)) throw new RangeError(`invalid ${what}: ${value}; a number is needed`);
  if (!(Number.isFinite(u) && u >= 0)) throw new RangeError(`invalid doubt of ${what}: ${u}; 0 or more is needed`);
  return { value, u };
}
