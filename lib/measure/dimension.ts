import type { Dimension } from "./types.ts";

const bases = ["length", "mass", "time", "temperature", "money"] as const;
type Base = (typeof bases)[number];

function combine(exponent: (base: Base) => number): Dimension {
  const result: Partial<Record<Base, number>> = {};
  for (const base of bases) {
    const value = exponent(base);
    if (Math.abs(value) > 1e-9) result[base] = value;
  }
  return result;
}

/**
 * The dimension of a product. A scale point loses its mark: only differences multiply.
 *
 * @example
 * multiplyDimensions({ mass: 1 }, { time: -1 }) // { mass: 1, time: -1 }
 */
export function multiplyDimensions(a: Dimension, b: Dimension): Dimension {
  return combine((base) => (a[base] ?? 0) + (b[base] ?? 0));
}

/**
 * The dimension of `a` to a power (any finite number).
 *
 * @example
 * powerDimension({ length: 1 }, 3) // { length: 3 }
 */
export function powerDimension(a: Dimension, exponent: number): Dimension {
  return combine((base) => (a[base] ?? 0) * exponent);
}

/**
 * The dimension of a quotient.
 *
 * @example
 * divideDimensions({ mass: 1 }, { length: 3 }) // { mass: 1, length: -3 }
 */
export function divideDimensions(a: Dimension, b: Dimension): Dimension {
  return multiplyDimensions(a, powerDimension(b, -1));
}

/**
 * Whether two dimensions are one kind. A temperature on a scale and a difference of temperatures are two.
 *
 * @example
 * sameDimension({ temperature: 1 }, { temperature: 1, point: true }) // false
 */
export function sameDimension(a: Dimension, b: Dimension): boolean {
  return sameExponents(a, b) && (a.point ?? false) === (b.point ?? false);
}

/**
 * Whether two dimensions have the same exponents, scale point or not.
 *
 * @example
 * sameExponents({ temperature: 1 }, { temperature: 1, point: true }) // true
 */
export function sameExponents(a: Dimension, b: Dimension): boolean {
  return bases.every((base) => Math.abs((a[base] ?? 0) - (b[base] ?? 0)) < 1e-9);
}
