/**
 * An object without a prototype that holds the entries: the safe place for anything keyed by a maker's words,
 * since a line may be called "constructor" or "__proto__". A later entry replaces an earlier one of the same key.
 *
 * @param entries - key and value, any number of them.
 * @returns a fresh object; nothing is inherited.
 * @example
 * keyed([["altitude", 1]])["constructor"]; // undefined
 */
export function keyed<T>(entries: Iterable<readonly [string, T]>): Record<string, T> {
  const result: Record<string, T> = Object.create(null);
  for (const [key, value] of entries) result[key] = value;
  return result;
}
