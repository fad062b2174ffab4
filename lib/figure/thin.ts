/**
 * Leaves out points that fall on the same few px: of each column of `column` px keeps the first, the lowest, the
 * highest and the last, in their order. Points in order of x; x and y in px.
 * @example thin(readings, (one) => x(one.time), (one) => y(one.temperature), 3)
 */
export function thin<T>(
  points: readonly T[],
  x: (point: T) => number,
  y: (point: T) => number,
  column: number,
): readonly T[] {
  const kept: T[] = [];
  let start = 0;
  while (start < points.length) {
    const first = points[start] as T;
    const cell = Math.floor(x(first) / column);
    let low = start;
    let high = start;
    let end = start;
    while (end + 1 < points.length && Math.floor(x(points[end + 1] as T) / column) === cell) {
      end += 1;
      if (y(points[end] as T) < y(points[low] as T)) low = end;
      if (y(points[end] as T) > y(points[high] as T)) high = end;
    }
    const indices = [...new Set([start, low, high, end])].sort((a, b) => a - b);
    for (const index of indices) kept.push(points[index] as T);
    start = end + 1;
  }
  return kept;
}
