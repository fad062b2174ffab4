/** A straight scale of numbers along px: the rule's own ends are `low` at `from` and `high` at `to`. */
export interface ValueScale {
  readonly at: (value: number) => number;
  readonly low: number;
  readonly high: number;
  readonly from: number;
  readonly to: number;
}

/**
 * Least and greatest of what is finite; numbers that are all equal (but for rounding) stand in the middle of a twentieth
 * of their size to either side, and no numbers at all give 0 to 1.
 * @example spanOf([4, 4]) // [3.8, 4.2]
 */
export function spanOf(numbers: readonly number[]): readonly [low: number, high: number] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const number of numbers) {
    if (!Number.isFinite(number)) continue;
    low = Math.min(low, number);
    high = Math.max(high, number);
  }
  if (low > high) return [0, 1];
  const size = Math.max(Math.abs(low), Math.abs(high));
  // Numbers as small as these are what rounding leaves of zero; dividing by them would overflow.
  const isZero = size < 1e-200;
  if (!isZero && high - low > 1e-9 * size) return [low, high];
  const aside = isZero ? 1 : size / 20;
  return [low - aside, high + aside];
}

/**
 * A scale that holds `numbers` between two px, `inset` px clear of both ends; `from` may be the greater, for a rule
 * that goes up. What is endless is taken to the rule's end.
 * @example valueScale([0, 10], 0, 120, 10).at(5) // 60
 */
export function valueScale(numbers: readonly number[], from: number, to: number, inset: number): ValueScale {
  const [low, high] = spanOf(numbers);
  const way = Math.sign(to - from) || 1;
  const start = from + way * inset;
  const each = (to - way * inset - start) / (high - low);
  const aside = inset / Math.abs(each);
  const at = (value: number): number => {
    if (value === Number.POSITIVE_INFINITY) return to;
    if (value === Number.NEGATIVE_INFINITY) return from;
    return start + (value - low) * each;
  };
  return { at, low: low - aside, high: high + aside, from, to };
}
