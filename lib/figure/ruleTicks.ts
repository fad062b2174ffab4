/** One tick of a steel rule: where, how long (3 longest), and whether a figure stands at it. */
export interface Tick {
  readonly value: number;
  readonly length: 1 | 2 | 3;
  readonly figure: boolean;
}

interface Graduation {
  readonly short: number;
  readonly middle: number;
  readonly long: number;
  readonly figures: number;
}

const decades = (mantissas: readonly [number, number, number, number][]): readonly Graduation[] =>
  [-4, -3, -2, -1, 0, 1, 2, 3, 4, 5, 6].flatMap((power) =>
    mantissas.map(([short, middle, long, figures]) => {
      // 10 ** -1 is exact only when written as a division.
      const size = (amount: number) => (power < 0 ? amount / 10 ** -power : amount * 10 ** power);
      return { short: size(short), middle: size(middle), long: size(long), figures: size(figures) };
    }),
  );

const decimalGraduations = decades([
  [0.1, 0.5, 1, 1],
  [0.5, 1, 2, 2],
  [1, 5, 10, 5],
]);

const minuteGraduations: readonly Graduation[] = [
  { short: 0.1, middle: 0.5, long: 1, figures: 1 },
  { short: 0.5, middle: 1, long: 2, figures: 2 },
  { short: 1, middle: 5, long: 10, figures: 5 },
  { short: 1, middle: 5, long: 10, figures: 10 },
  { short: 2, middle: 10, long: 20, figures: 20 },
  { short: 5, middle: 15, long: 30, figures: 30 },
  { short: 10, middle: 30, long: 60, figures: 60 },
  { short: 20, middle: 60, long: 120, figures: 120 },
  { short: 60, middle: 120, long: 240, figures: 240 },
  ...decades([[1, 5, 10, 10]]).filter((graduation) => graduation.long >= 1000),
];

const isMultiple = (value: number, step: number): boolean => Math.abs(value / step - Math.round(value / step)) < 1e-6;

/**
 * Ticks of a steel rule from `low` to `high` (in the unit shown), with three lengths and no more figures than
 * keep `gap` px between them at `pixels` px for the whole rule. Finite limits, low <= high; a rule of no length
 * has the one tick that falls on it, if any.
 * @example ruleTicks(0, 54, 800, 60).filter((tick) => tick.figure).map((tick) => tick.value) // [0, 5, 10, 15, 20, 25, 30, 35, 40, 45, 50]
 */
export function ruleTicks(
  low: number,
  high: number,
  pixels: number,
  gap: number,
  kind: "decimal" | "minutes" = "decimal",
): readonly Tick[] {
  if (!(Number.isFinite(low) && Number.isFinite(high) && low <= high)) {
    throw new RangeError(`invalid rule: ${low} to ${high}; two finite limits, the lower first`);
  }
  const choices = kind === "minutes" ? minuteGraduations : decimalGraduations;
  const perUnit = pixels / Math.max(high - low, 1e-9);
  const chosen = choices.find((one) => one.figures * perUnit >= gap) ?? choices[choices.length - 1];
  if (!chosen) return [];
  const step = [chosen.short, chosen.middle, chosen.figures].find((size) => size * perUnit >= 3.5) ?? chosen.figures;
  const ticks: Tick[] = [];
  const last = Math.floor(high / step + 1e-9);
  for (let index = Math.ceil(low / step - 1e-9); index <= last && ticks.length < 2000; index += 1) {
    const value = Number((index * step).toPrecision(12)) + 0;
    const length = isMultiple(value, chosen.long) ? 3 : isMultiple(value, chosen.middle) ? 2 : 1;
    ticks.push({ value, length, figure: isMultiple(value, chosen.figures) });
  }
  return ticks;
}
