/**
 * The element of a list of numbers at a place that the caller knows to exist.
 *
 * @param list numbers
 * @param i place from 0, inside the list
 * @example at([3, 4], 1) // 4
 */
export function at(list: ArrayLike<number>, i: number): number {
  return list[i] as number;
}
