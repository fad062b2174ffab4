import { applyFunction } from "./applyFunction.ts";
import { add, compare, power, scale } from "./arithmetic.ts";
import { sameDimension } from "./dimension.ts";
import { dimensionName } from "./dimensionName.ts";
import type { Value } from "./types.ts";

function first(values: readonly Value[], what: string): Value {
  const [value] = values;
  if (!value) throw new RangeError(`missing values: none given; at least one expected for ${what}`);
  return value;
}

function plain(value: Value, what: string): void {
  if (!sameDimension(value.dimension, {})) {
    throw new TypeError(`invalid argument: ${dimensionName(value.dimension)}; a plain number expected for ${what}`);
  }
}

/**
 * The sum of values of one kind.
 *
 * @throws RangeError for none; TypeError for different kinds.
 * @example
 * sum([exact(1), exact(2)]).value // 3
 */
export function sum(values: readonly Value[]): Value {
  return values.slice(1).reduce(add, first(values, "a sum"));
}

/**
 * The mean of values of one kind; of temperatures too.
 *
 * @throws RangeError for none; TypeError for different kinds.
 * @example
 * mean([exact(1), exact(2)]).value // 1.5
 */
export function mean(values: readonly Value[]): Value {
  const { dimension } = first(values, "a mean");
  for (const value of values) compare(value, first(values, "a mean"));
  const count = values.length;
  return applyFunction((...numbers) => numbers.reduce((total, each) => total + each, 0) / count, values, {
    dimension,
    partials: () => values.map(() => 1 / count),
  });
}

/**
 * The smallest of values of one kind, with its own doubt.
 *
 * @throws RangeError for none; TypeError for different kinds.
 * @example
 * least([exact(1), exact(2)]).value // 1
 */
export function least(values: readonly Value[]): Value {
  return values.reduce((best, each) => (compare(each, best) < 0 ? each : best), first(values, "the least"));
}

/**
 * The largest of values of one kind, with its own doubt.
 *
 * @throws RangeError for none; TypeError for different kinds.
 * @example
 * greatest([exact(1), exact(2)]).value // 2
 */
export function greatest(values: readonly Value[]): Value {
  return values.reduce((best, each) => (compare(each, best) > 0 ? each : best), first(values, "the greatest"));
}

/**
 * The value without its sign.
 *
 * @example
 * absolute(exact(-2)).value // 2
 */
export function absolute(value: Value): Value {
  return value.value < 0 ? scale(value, -1) : value;
}

/**
 * The square root; 0 or more.
 *
 * @throws RangeError below zero.
 * @example
 * squareRoot(exact(9, { length: 2 })).dimension // { length: 1 }
 */
export function squareRoot(value: Value): Value {
  if (value.value < 0) throw new RangeError(`invalid number under the root: ${value.value}; 0 or more expected`);
  return power(value, 0.5);
}

/**
 * e to the power of a plain number.
 *
 * @throws TypeError for anything with a unit.
 * @example
 * exponential(exact(0)).value // 1
 */
export function exponential(value: Value): Value {
  plain(value, "exponential");
  return applyFunction((x) => Math.exp(x ?? 0), [value], { dimension: {}, partials: (x) => [Math.exp(x ?? 0)] });
}

/**
 * The natural logarithm of a plain number above zero.
 *
 * @throws TypeError for anything with a unit; RangeError at zero and below.
 * @example
 * logarithm(exact(1)).value // 0
 */
export function logarithm(value: Value): Value {
  plain(value, "logarithm");
  if (!(value.value > 0)) throw new RangeError(`invalid number in the logarithm: ${value.value}; above 0 expected`);
  return applyFunction((x) => Math.log(x ?? 1), [value], { dimension: {}, partials: (x) => [1 / (x ?? 1)] });
}
