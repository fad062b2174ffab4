/** The figures of some draws. */
export interface DrawStatistics {
  readonly mean: number;
  readonly deviation: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Mean, standard deviation and the probabilistically symmetric 95 % interval of some draws (JCGM 101:2008, 7.6 and 7.7).
 * @param draws In rising order, at least two.
 * @returns The figures.
 * @example drawStatistics(Float64Array.of(1, 2, 3)).mean // 2
 */
export function drawStatistics(draws: Float64Array): DrawStatistics {
  const mean = meanOf(draws);
  let squares = 0;
  for (const draw of draws) squares += (draw - mean) ** 2;
  return {
    mean,
    deviation: Math.sqrt(squares / (draws.length - 1)),
    low: quantile(draws, 0.025),
    high: quantile(draws, 0.975),
  };
}

/**
 * @param numbers One or more.
 * @returns Their mean.
 * @example meanOf([1, 3]) // 2
 */
export function meanOf(numbers: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < numbers.length; i++) sum += numbers[i] as number;
  return sum / numbers.length;
}

/**
 * The number that a share of the draws lies below: straight between draws, the r-th of M standing for (r - 1/2)/M
 * (JCGM 101:2008, D.3).
 * @param sorted In rising order.
 * @param share 0 to 1.
 * @returns The quantile.
 * @example quantile(Float64Array.of(1, 2, 3), 0.5) // 2
 */
export function quantile(sorted: Float64Array, share: number): number {
  const place = Math.min(Math.max(share * sorted.length - 0.5, 0), sorted.length - 1);
  const below = Math.floor(place);
  const [a, b] = [sorted[below] as number, sorted[Math.min(below + 1, sorted.length - 1)] as number];
  return a + (b - a) * (place - below);
}

/**
 * The shortest interval that holds 95 % of the draws (JCGM 101:2008, 7.7.4).
 * @param sorted In rising order.
 * @returns Its ends.
 * @example shortest95(Float64Array.of(0, 1, 1, 2)) // [0, 2]
 */
export function shortest95(sorted: Float64Array): readonly [number, number] {
  const count = sorted.length;
  const held = Math.min(Math.round(0.95 * count), count - 1);
  let at = 0;
  const width = (i: number) => (sorted[i + held] as number) - (sorted[i] as number);
  for (let i = 1; i + held < count; i++) if (width(i) < width(at)) at = i;
  return [sorted[at] as number, sorted[at + held] as number];
}

/**
 * The standard deviation of the mean of some figures.
 * @param figures Two or more.
 * @returns The deviation.
 * @example errorOfMean([1, 3]) // 1
 */
export function errorOfMean(figures: readonly number[]): number {
  const mean = meanOf(figures);
  const squares = figures.reduce((sum, figure) => sum + (figure - mean) ** 2, 0);
  return Math.sqrt(squares / (figures.length * (figures.length - 1)));
}
