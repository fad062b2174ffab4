/**
 * A function that remembers what it last found: for work that depends on nothing but its key and is asked for again and
 * again, such as a boiling curve while a log is being mended.
 *
 * @param most results kept; the one that was not asked for longest is forgotten first
 * @returns what a key stood for, or else what the work gives; an error is not remembered
 * @example remembered(2)("twice two", () => 4) // 4
 */
export function remembered<Found>(most: number): (key: string, work: () => Found) => Found {
  const known = new Map<string, Found>();
  return (key, work) => {
    const found = known.has(key) ? (known.get(key) as Found) : work();
    known.delete(key);
    known.set(key, found);
    for (const oldest of known.keys()) {
      if (known.size <= most) break;
      known.delete(oldest);
    }
    return found;
  };
}
