/**
 * The fewest rows that must be doubted so that all others run forward in time.
 *
 * @param times s for each row, undefined where a row has no time
 * @returns positions of the rows that step back or jump ahead of those after them, in order
 * @example
 * stepsBack([0, 60, 30, 120]) // [2]
 */
export function stepsBack(times: readonly (number | undefined)[]): number[] {
  // From the last row to the first, so that of two rows that contradict each other the later one is doubted.
  const tails: number[] = [];
  const after = new Int32Array(times.length).fill(-1);
  for (let index = times.length - 1; index >= 0; index -= 1) {
    const time = times[index];
    if (time === undefined) continue;
    let low = 0;
    let high = tails.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((times[tails[middle] ?? 0] ?? 0) >= time) low = middle + 1;
      else high = middle;
    }
    after[index] = tails[low - 1] ?? -1;
    tails[low] = index;
  }
  const forward = new Set<number>();
  for (let at = tails.at(-1) ?? -1; at >= 0; at = after[at] ?? -1) forward.add(at);
  return times.flatMap((time, index) => (time === undefined || forward.has(index) ? [] : [index]));
}
