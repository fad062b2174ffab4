const isObject = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;

const keysOf = (value: Record<string, unknown>): string[] =>
  Object.keys(value).filter((key) => value[key] !== undefined);

/**
 * Whether two pieces of plain data would be written as the same JSON, the order of keys apart. A key that holds
 * undefined counts as absent, as it does in JSON.
 *
 * @returns true or false.
 * @example
 * same({ a: 1, b: undefined }, { a: 1 }); // true
 */
export function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (!isObject(a) || !isObject(b) || Array.isArray(a) !== Array.isArray(b)) return a === b;
  if (Array.isArray(a) && Array.isArray(b)) return a.length === b.length && a.every((item, i) => same(item, b[i]));
  const keys = keysOf(a);
  return keys.length === keysOf(b).length && keys.every((key) => Object.hasOwn(b, key) && same(a[key], b[key]));
}
