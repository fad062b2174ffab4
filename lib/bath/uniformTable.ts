// Of this file, not of at.ts: only so do all engines work it in, and a simulation asks for it half a million times a second.
const at = (list: ArrayLike<number>, i: number): number => list[i] as number;

/** A function of one variable as cubics between evenly spaced points; straight beyond them. */
export class UniformTable {
  readonly #c: Float64Array;
  readonly #low: number;
  readonly #step: number;
  readonly #last: number;

  /**
   * @param low first x
   * @param step between points
   * @param values at the points, at least four
   * @param slopes at the points; differences of the values where absent
   */
  constructor(low: number, step: number, values: ArrayLike<number>, slopes?: ArrayLike<number>) {
    const n = values.length;
    const rise = (i: number) => slopes?.[i] ?? differenceAt(values, i) / step;
    this.#low = low;
    this.#step = step;
    this.#last = n - 2;
    this.#c = new Float64Array(4 * (n - 1));
    for (let i = 0; i < n - 1; i++) {
      const [y, z, a, b] = [at(values, i), at(values, i + 1), step * rise(i), step * rise(i + 1)];
      this.#c.set([y, a, 3 * (z - y) - 2 * a - b, 2 * (y - z) + a + b], 4 * i);
    }
  }

  /** The value at x. */
  at(x: number): number {
    const place = (x - this.#low) / this.#step;
    const i = place <= 0 ? 0 : Math.min(Math.floor(place), this.#last);
    const u = place - i;
    const k = 4 * i;
    const c = this.#c;
    if (u < 0) return at(c, k) + at(c, k + 1) * u;
    if (u <= 1) return at(c, k) + u * (at(c, k + 1) + u * (at(c, k + 2) + u * at(c, k + 3)));
    const end = at(c, k) + at(c, k + 1) + at(c, k + 2) + at(c, k + 3);
    return end + (u - 1) * (at(c, k + 1) + 2 * at(c, k + 2) + 3 * at(c, k + 3));
  }

  /** The slope at x. */
  slope(x: number): number {
    const place = (x - this.#low) / this.#step;
    const i = place <= 0 ? 0 : Math.min(Math.floor(place), this.#last);
    const u = Math.min(1, Math.max(0, place - i));
    const k = 4 * i;
    const c = this.#c;
    return (at(c, k + 1) + u * (2 * at(c, k + 2) + 3 * u * at(c, k + 3))) / this.#step;
  }
}

/** Slope per step through a point: of the quartic through its two neighbours on each side, near the ends of a cubic. */
function differenceAt(y: ArrayLike<number>, i: number): number {
  const n = y.length;
  if (i >= 2 && i < n - 2) return (at(y, i - 2) - 8 * at(y, i - 1) + 8 * at(y, i + 1) - at(y, i + 2)) / 12;
  const [end, way] = i < 2 ? [0, 1] : [n - 1, -1];
  const [a, b, c, d] = [at(y, end), at(y, end + way), at(y, end + 2 * way), at(y, end + 3 * way)];
  return (way * (i === end ? -11 * a + 18 * b - 9 * c + 2 * d : -2 * a - 3 * b + 6 * c - d)) / 6;
}

/**
 * Tabulates a function.
 *
 * @param f the function
 * @param low first x
 * @param high last x, at least three steps on
 * @param step between points, about
 * @example tabulate((x) => x * x, 0, 4, 1).at(2.5) // 6.25
 */
export function tabulate(f: (x: number) => number, low: number, high: number, step: number): UniformTable {
  const n = Math.max(3, Math.round((high - low) / step));
  const exact = (high - low) / n;
  return new UniformTable(
    low,
    exact,
    Float64Array.from({ length: n + 1 }, (_, i) => f(Math.min(high, low + i * exact))),
  );
}
