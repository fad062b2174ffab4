import type { ScaledAnswer } from "./types.ts";

/**
 * Quantiles of weighted numbers, of which some may be infinite.
 *
 * @param values numbers
 * @param weights of as many, summing to 1
 * @param shares rising, 0..1
 * @example quantilesOf([1, 2, 3], [1 / 3, 1 / 3, 1 / 3], [0.5]) // [2]
 */
export function quantilesOf(
  values: ArrayLike<number>,
  weights: ArrayLike<number>,
  shares: readonly number[],
): readonly number[] {
  const order = Array.from(values, (_, i) => i).sort((a, b) => {
    const [x, y] = [values[a] as number, values[b] as number];
    return x < y ? -1 : x > y ? 1 : 0;
  });
  const middles: number[] = [];
  let sum = 0;
  for (const i of order) {
    const weight = weights[i] as number;
    middles.push(sum + weight / 2);
    sum += weight;
  }
  const at = (place: number) => values[order[place] as number] as number;
  return shares.map((share) => {
    let low = 0;
    let high = order.length - 1;
    if (share <= (middles[0] as number)) return at(0);
    if (share >= (middles[high] as number)) return at(high);
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((middles[middle] as number) <= share) low = middle;
      else high = middle;
    }
    if (!Number.isFinite(at(high))) return at(high);
    const [a, b] = [middles[low] as number, middles[high] as number];
    return at(low) + ((at(high) - at(low)) * (share - a)) / Math.max(1e-300, b - a);
  });
}

/**
 * An answer from weighted draws: median, spread and 95 % interval. Where the median is infinite so is the spread; where
 * a draw alone is, the spread is that of the inner two thirds.
 *
 * @example answerOfDraws([1, 2, 3], [1 / 3, 1 / 3, 1 / 3]).value // 2
 */
export function answerOfDraws(values: ArrayLike<number>, weights: ArrayLike<number>): ScaledAnswer {
  const [low, inner, value, outer, high] = quantilesOf(values, weights, [0.025, 0.15866, 0.5, 0.84134, 0.975]) as [
    number,
    number,
    number,
    number,
    number,
  ];
  let mean = 0;
  let square = 0;
  for (let i = 0; i < values.length; i++) {
    const [x, w] = [values[i] as number, weights[i] as number];
    if (w === 0) continue;
    mean += w * x;
    square += w * x * x;
  }
  const finite = Number.isFinite(square);
  const half = outer === Infinity ? Infinity : (outer - inner) / 2;
  return {
    value,
    standardUncertainty: finite ? Math.sqrt(Math.max(0, square - mean * mean)) : half,
    interval95: [low, high],
  };
}
