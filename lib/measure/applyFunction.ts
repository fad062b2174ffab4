import { carriedInterval } from "./carriedInterval.ts";
import { standardUncertainty } from "./standardUncertainty.ts";
import type { Dimension, Value } from "./types.ts";

export interface ApplyOptions {
  /** What the result measures. */
  readonly dimension: Dimension;
  /** ∂f/∂x for each argument, SI; central differences are taken where it is absent. */
  readonly partials?: (...numbers: number[]) => readonly number[];
}

/** The step that balances cutting and rounding errors of a central difference: the cube root of the machine's ε. */
const relativeStep = Math.cbrt(Number.EPSILON);

function slope(f: (...numbers: number[]) => number, numbers: readonly number[], index: number, size: number): number {
  const at = numbers[index] ?? 0;
  const moved = (to: number) => f(...numbers.map((number, other) => (other === index ? to : number)));
  const low = at - relativeStep * size;
  const high = at + relativeStep * size;
  return (moved(high) - moved(low)) / (high - low);
}

/**
 * The law of propagation of uncertainty, first order (JCGM 100:2008, 5.1.2 and 5.2.2), source by source, so that what
 * the arguments share stays shared: each component of the result is the sum of sensitivity times component.
 * A 95 % interval that an argument carries of its own is carried on in proportion to its part in the result.
 *
 * @param f of plain SI numbers, smooth near `values`
 * @throws RangeError where the result or a slope is not finite.
 * @example
 * applyFunction((side) => side ** 3, [measuredValue(0.5, 0.001, { length: 1 }, "tape")], { dimension: { length: 3 } })
 */
export function applyFunction(
  f: (...numbers: number[]) => number,
  values: readonly Value[],
  options: ApplyOptions,
): Value {
  const numbers = values.map((each) => each.value);
  const value = f(...numbers);
  if (!Number.isFinite(value))
    throw new RangeError(`invalid result: ${value}; a finite number expected from ${numbers.join(", ")}`);
  const given = options.partials?.(...numbers);
  const components = new Map<string, number>();
  const slopes = values.map((each, index) => {
    const uncertainty = standardUncertainty(each);
    if (uncertainty === 0) return 0;
    const sensitivity = given ? given[index] : slope(f, numbers, index, Math.max(Math.abs(each.value), uncertainty));
    if (sensitivity === undefined || !Number.isFinite(sensitivity)) {
      throw new RangeError(
        `invalid slope: ${sensitivity}; a finite number expected for argument ${index + 1} at ${each.value}`,
      );
    }
    for (const [source, component] of each.components) {
      components.set(source, (components.get(source) ?? 0) + sensitivity * component);
    }
    return sensitivity;
  });
  for (const [source, component] of components) if (component === 0) components.delete(source);
  const result = { value, dimension: options.dimension, components };
  const interval95 = carriedInterval(result, values, slopes, f);
  return interval95 ? { ...result, interval95 } : result;
}
