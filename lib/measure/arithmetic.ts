import { applyFunction } from "./applyFunction.ts";
import { divideDimensions, multiplyDimensions, powerDimension, sameDimension, sameExponents } from "./dimension.ts";
import { dimensionName } from "./dimensionName.ts";
import type { Dimension, Value } from "./types.ts";

function refuse(operation: string, a: Dimension, b: Dimension, allowed: string): never {
  throw new TypeError(`invalid ${operation}: ${dimensionName(a)} and ${dimensionName(b)}; ${allowed}`);
}

function refusePoint(operation: string, ...values: readonly Value[]): void {
  if (values.some((each) => each.dimension.point)) {
    throw new TypeError(
      `invalid ${operation}: a temperature; take another temperature from it first, differences are allowed`,
    );
  }
}

/**
 * a + b. Two of one kind, or a temperature and a difference of temperatures, which give a temperature.
 *
 * @throws TypeError for other kinds, and for two temperatures on the scale.
 * @example
 * add(exact(1, { mass: 1 }), exact(2, { mass: 1 })).value // 3
 */
export function add(a: Value, b: Value): Value {
  if (!sameExponents(a.dimension, b.dimension)) refuse("sum", a.dimension, b.dimension, "both of one kind expected");
  if (a.dimension.point && b.dimension.point) {
    refuse("sum", a.dimension, b.dimension, "a temperature and a difference of temperatures expected");
  }
  const dimension = a.dimension.point ? a.dimension : b.dimension;
  return applyFunction((x, y) => (x ?? 0) + (y ?? 0), [a, b], { dimension, partials: () => [1, 1] });
}

/**
 * a − b. Two of one kind; two temperatures give their difference, a temperature less a difference a temperature.
 *
 * @throws TypeError for other kinds, and for a difference less a temperature.
 * @example
 * subtract(exact(5, { time: 1 }), exact(2, { time: 1 })).value // 3
 */
export function subtract(a: Value, b: Value): Value {
  if (!sameExponents(a.dimension, b.dimension))
    refuse("difference", a.dimension, b.dimension, "both of one kind expected");
  if (b.dimension.point && !a.dimension.point) {
    refuse("difference", a.dimension, b.dimension, "a temperature can only be taken from a temperature");
  }
  const dimension: Dimension = a.dimension.point && b.dimension.point ? { temperature: 1 } : a.dimension;
  return applyFunction((x, y) => (x ?? 0) - (y ?? 0), [a, b], { dimension, partials: () => [1, -1] });
}

/**
 * a x b.
 *
 * @throws TypeError for a temperature on the scale: twice 290 °F means nothing.
 * @example
 * multiply(exact(2, { mass: 1, time: -1 }), exact(3, { time: 1 })).dimension // { mass: 1 }
 */
export function multiply(a: Value, b: Value): Value {
  refusePoint("product", a, b);
  const dimension = multiplyDimensions(a.dimension, b.dimension);
  return applyFunction((x, y) => (x ?? 0) * (y ?? 0), [a, b], { dimension, partials: (x, y) => [y ?? 0, x ?? 0] });
}

/**
 * a / b.
 *
 * @throws TypeError for a temperature on the scale; RangeError where b is zero.
 * @example
 * divide(exact(6, { mass: 1 }), exact(3, { mass: 1 })).value // 2
 */
export function divide(a: Value, b: Value): Value {
  refusePoint("quotient", a, b);
  if (b.value === 0) throw new RangeError(`invalid divisor: 0; ${dimensionName(b.dimension)} other than zero expected`);
  const dimension = divideDimensions(a.dimension, b.dimension);
  return applyFunction((x, y) => (x ?? 0) / (y ?? 1), [a, b], {
    dimension,
    partials: (x, y) => [1 / (y ?? 1), -(x ?? 0) / (y ?? 1) ** 2],
  });
}

/**
 * a to a power without doubt.
 *
 * @param exponent finite; a negative a takes whole ones only
 * @throws TypeError for a temperature on the scale; RangeError where the result is no finite number.
 * @example
 * power(exact(3, { length: 1 }), 2).value // 9
 */
export function power(a: Value, exponent: number): Value {
  refusePoint("power", a);
  if (!Number.isFinite(exponent)) throw new RangeError(`invalid exponent: ${exponent}; a finite number expected`);
  return applyFunction((x) => (x ?? 0) ** exponent, [a], {
    dimension: powerDimension(a.dimension, exponent),
    partials: (x) => [exponent === 0 ? 0 : exponent * (x ?? 0) ** (exponent - 1)],
  });
}

/**
 * −a.
 *
 * @throws TypeError for a temperature on the scale.
 * @example
 * negate(exact(3)).value // -3
 */
export function negate(a: Value): Value {
  refusePoint("sign", a);
  return applyFunction((x) => -(x ?? 0), [a], { dimension: a.dimension, partials: () => [-1] });
}

/**
 * a times a plain number without doubt.
 *
 * @throws TypeError for a temperature on the scale.
 * @example
 * scale(exact(3, { mass: 1 }), 2).value // 6
 */
export function scale(a: Value, factor: number): Value {
  refusePoint("product", a);
  return applyFunction((x) => (x ?? 0) * factor, [a], { dimension: a.dimension, partials: () => [factor] });
}

/**
 * Minus, equal or plus, of values of one kind, by their numbers alone.
 *
 * @throws TypeError for different kinds.
 * @example
 * compare(exact(3, { mass: 1 }), exact(2, { mass: 1 })) // 1
 */
export function compare(a: Value, b: Value): number {
  if (!sameDimension(a.dimension, b.dimension))
    refuse("comparison", a.dimension, b.dimension, "both of one kind expected");
  return Math.sign(a.value - b.value);
}
