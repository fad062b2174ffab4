import { difference } from "../measure/difference.ts";
import { sameDimension } from "../measure/dimension.ts";
import type { Value } from "../measure/types.ts";
import { isValue } from "./isValue.ts";
import type { Result } from "./types.ts";

/**
 * A case less the base: what both owe to the same source cancels.
 * @param mine What the line came to in the case.
 * @param base What it came to in the base.
 * @returns The difference with its own width; undefined where either has no amount, or they are of two kinds.
 * @example lessBase({ state: "settled", value: exact(3) }, { state: "settled", value: exact(1) })?.value // 2
 */
export function lessBase(mine: Result, base: Result): Value | undefined {
  if (mine.state !== "settled" || base.state !== "settled") return undefined;
  const [a, b] = [mine.value, base.value];
  if (!isValue(a) || !isValue(b) || !sameDimension(a.dimension, b.dimension)) return undefined;
  return difference(a, b);
}
