import { applyFunction } from "../measure/applyFunction.ts";
import { sameExponents } from "../measure/dimension.ts";
import { dimensionName } from "../measure/dimensionName.ts";
import { absolute, exponential, greatest, least, logarithm, squareRoot } from "../measure/functions.ts";
import type { Value } from "../measure/types.ts";
import { isValue } from "./isValue.ts";
import type { Func } from "./types.ts";

/** Arguments are never copied by hand beyond this many. */
const MANY = 12;

function amounts(name: string, args: readonly unknown[]): readonly Value[] {
  return args
    .filter((arg) => arg !== undefined)
    .map((arg) => {
      if (isValue(arg)) return arg;
      throw new Error(`${name} takes amounts`);
    });
}

function ofOne(name: string, takes: string, says: string, work: (amount: Value) => Value): Func {
  return {
    name,
    takes: [{ name: takes }],
    says,
    work: (...args) => {
      const [amount] = amounts(name, args);
      if (amount === undefined) throw new Error(`${name} takes ${takes}`);
      return work(amount);
    },
  };
}

function ofMany(name: string, says: string, work: (all: readonly Value[]) => Value): Func {
  const takes = Array.from({ length: MANY }, (_, i) => ({ name: `amount ${i + 1}`, optional: i > 0 }));
  return { name, takes, says, alike: true, work: (...args) => work(amounts(name, args)) };
}

/** A function of plain numbers with its derivative; angles are plain numbers, in radians. */
function plain(
  name: string,
  takes: string,
  says: string,
  f: (x: number) => number,
  slope: (x: number) => number,
): Func {
  return ofOne(name, takes, says, (amount) => {
    if (!sameExponents(amount.dimension, {}))
      throw new Error(`${name} takes a plain number, not ${dimensionName(amount.dimension)}`);
    return applyFunction((x) => f(x ?? 0), [amount], { dimension: {}, partials: (x) => [slope(x ?? 0)] });
  });
}

/**
 * The functions that every notebook has: sqrt, exp, ln, log10, sin, cos, tan, abs, min, max. Doubt is carried by the
 * exact derivatives (JCGM 100:2008, 5.1.3); min and max give the least and the greatest with its own doubt.
 * @example functions.map((func) => func.name) // ["sqrt", "exp", "ln", …]
 */
export const functions: readonly Func[] = [
  ofOne("sqrt", "an amount", "The square root.", squareRoot),
  ofOne("exp", "a number", "e to the power of a plain number.", exponential),
  ofOne("ln", "a number", "The natural logarithm of a plain number.", logarithm),
  plain("log10", "a number", "The logarithm to base 10 of a plain number.", Math.log10, (x) => 1 / (x * Math.LN10)),
  plain("sin", "an angle", "The sine of an angle in radians.", Math.sin, Math.cos),
  plain("cos", "an angle", "The cosine of an angle in radians.", Math.cos, (x) => -Math.sin(x)),
  plain("tan", "an angle", "The tangent of an angle in radians.", Math.tan, (x) => 1 / Math.cos(x) ** 2),
  ofOne("abs", "an amount", "An amount without its sign.", absolute),
  ofMany("min", "The least of some amounts.", least),
  ofMany("max", "The greatest of some amounts.", greatest),
];
