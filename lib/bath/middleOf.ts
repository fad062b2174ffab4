/**
 * The number that stands at a place when some numbers are put in order. What is smaller comes to stand before it, what
 * is larger behind it; that is quicker than to sort them.
 *
 * @param numbers in any order; they are moved about
 * @param place from 0, inside the list
 * @example placed(Float64Array.of(5, 1, 3), 1) // 3
 */
export function placed(numbers: Float64Array, place: number): number {
  let low = 0;
  let high = numbers.length - 1;
  while (low < high) {
    const pivot = numbers[(low + high) >> 1] as number;
    let i = low;
    let j = high;
    while (i <= j) {
      while ((numbers[i] as number) < pivot) i++;
      while ((numbers[j] as number) > pivot) j--;
      if (i > j) break;
      const held = numbers[i] as number;
      numbers[i] = numbers[j] as number;
      numbers[j] = held;
      i++;
      j--;
    }
    if (place <= j) high = j;
    else if (place >= i) low = i;
    else break;
  }
  return numbers[place] as number;
}

/**
 * Middle of some numbers.
 *
 * @param numbers in any order; they are moved about
 * @returns NaN for none
 * @example middleOf(Float64Array.of(5, 1, 3, 4)) // 3.5
 */
export function middleOf(numbers: Float64Array): number {
  if (numbers.length === 0) return Number.NaN;
  const half = numbers.length >> 1;
  const above = placed(numbers, half);
  if (numbers.length % 2 === 1) return above;
  let below = -Infinity;
  for (let i = 0; i < half; i++) below = Math.max(below, numbers[i] as number);
  return (below + above) / 2;
}
