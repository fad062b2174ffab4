import type { Dimension, Value, Written } from "./types.ts";

/**
 * A value without doubt.
 *
 * @param value in SI units of `dimension`; finite
 * @throws RangeError where it is not finite.
 * @example
 * exact(4, {}).components.size // 0
 */
export function exact(value: number, dimension: Dimension = {}): Value {
  if (!Number.isFinite(value)) throw new RangeError(`invalid value: ${value}; a finite number expected`);
  return { value, dimension, components: new Map() };
}

/**
 * A value with its doubt from one source of its own.
 *
 * @param value in SI units of `dimension`; finite
 * @param uncertainty standard uncertainty in the same unit; 0 or more
 * @param sourceId values with the same source are off together
 * @param interval95 the 95 % interval, where it is not value ± 1.96 u; it must hold the value
 * @throws RangeError for a number out of these ranges.
 * @example
 * standardUncertainty(measuredValue(10.9, 0.1, { mass: 1 }, "salt weighed")) // 0.1
 */
export function measuredValue(
  value: number,
  uncertainty: number,
  dimension: Dimension,
  sourceId: string,
  interval95?: readonly [low: number, high: number],
): Value {
  if (!(uncertainty >= 0 && uncertainty < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`invalid standard uncertainty: ${uncertainty}; 0 or more expected`);
  }
  const { components: none } = exact(value, dimension);
  const components = uncertainty === 0 ? none : new Map([[sourceId, uncertainty]]);
  if (!interval95) return { value, dimension, components };
  if (!(interval95[0] <= value && value <= interval95[1])) {
    throw new RangeError(
      `invalid interval: ${interval95[0]} to ${interval95[1]}; low, then high, around ${value} expected`,
    );
  }
  if (uncertainty === 0 && interval95[0] < interval95[1]) {
    throw new RangeError(
      `invalid standard uncertainty: 0; more than 0 expected with a 95 % interval that is not a point`,
    );
  }
  return { value, dimension, components, interval95 };
}

/**
 * A quantity as written, as a value whose doubt is its own source.
 *
 * @param sourceId for instance the name of the line that holds it
 * @example
 * writtenValue({ text: "1 kg", si: 1, dimension: { mass: 1 }, unit: "kg", standardUncertainty: 0.01, known: "weighed" }, "salt").value // 1
 */
export function writtenValue(written: Written, sourceId: string): Value {
  return measuredValue(written.si, written.standardUncertainty, written.dimension, sourceId);
}
