/** Boiling points of lye at sea level, °C against kg of hydroxide per kg of water: this generator's own table. */
const lye: readonly (readonly [ratio: number, celsius: number])[] = [
  [0, 99.97],
  [0.1111, 102.8],
  [0.25, 107.9],
  [0.4286, 117.0],
  [0.5385, 123.1],
  [0.6667, 130.1],
  [0.8182, 138.0],
  [0.9531, 144.35],
  [1, 146.4],
  [1.2222, 155.0],
  [1.5, 164.1],
  [2.3333, 185.7],
];

/** How an invented bath departs from the table: an offset in °C and a factor on the slope about 140 °C. */
export interface Departure {
  readonly offset: number;
  readonly scale: number;
}

/** What nitrate and nitrite count as hydroxide, kilogram for kilogram, at bath strength. */
const worth = { nitrate: 0.145, nitrite: 0.35 };

/**
 * Boiling point of an invented bath, °C.
 *
 * @param hydroxide kg per kg of water
 * @param nitrate kg per kg of water
 * @param pressure Pa
 */
export function boils(hydroxide: number, nitrate: number, pressure: number, departure: Departure): number {
  const ratio = hydroxide + worth.nitrate * nitrate;
  let i = 0;
  while (i < lye.length - 2 && (lye[i + 1]?.[0] ?? 0) < ratio) i++;
  const [x0, y0] = lye[i] ?? [0, 0];
  const [x1, y1] = lye[i + 1] ?? [1, 0];
  const [xa, ya] = lye[Math.max(0, i - 1)] ?? [0, 0];
  const [xb, yb] = lye[Math.min(lye.length - 1, i + 2)] ?? [1, 0];
  // Cubic through neighbours with their mean slopes, so that the slope has no steps.
  const h = x1 - x0;
  const m0 = (y1 - ya) / (x1 - xa);
  const m1 = (yb - y0) / (xb - x0);
  const u = (ratio - x0) / h;
  const v = 1 - u;
  const celsius = v * v * (1 + 2 * u) * y0 + u * u * (1 + 2 * v) * y1 + h * u * v * (v * m0 - u * m1);
  const level = 140 + (celsius - 140) * departure.scale + departure.offset;
  return level + 0.000305 * (pressure - 101_325);
}
