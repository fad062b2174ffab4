import { dimensionOf } from "../measure/dimensionOf.ts";
import { exact } from "../measure/measuredValue.ts";
import type { Value } from "../measure/types.ts";
import { isValue } from "./isValue.ts";
import type { FastFunc } from "./types.ts";

/**
 * Calls a function of plain numbers in one draw of a trial: what it is not sure of itself is drawn too, and what it comes
 * to is without doubt.
 * @param func The function.
 * @param args What it is given in this draw, in its order; undefined where left out.
 * @param drawn An amount as this draw has it.
 * @returns The amount.
 * @throws Error of the function's own outside its range; RangeError where it comes to no number.
 * @example callDrawn({ name: "cube", takes: [{ name: "side" }], says: "", numbers: (a) => a ** 3 }, [exact(2)], (v) => v).value // 8
 */
export function callDrawn(func: FastFunc, args: readonly unknown[], drawn: (value: Value) => Value): Value {
  const given = func.takes.map((_, i) => {
    const arg = args[i];
    return isValue(arg) ? drawn(arg).value : undefined;
  });
  const besides = func.besides?.map((each) => drawn(each).value) ?? [];
  const value = func.numbers(...([...given, ...besides] as number[]));
  if (!Number.isFinite(value)) throw new RangeError(`${func.name} comes to no number here`);
  return exact(value, func.gives === undefined ? {} : dimensionOf(func.gives));
}
