import { toldBar } from "../../lib/figure/index.ts";
import { interval95 } from "../../lib/measure/index.ts";
import type { Value } from "../../lib/measure/types.ts";
import type { Told } from "./told.ts";

const drawn = new WeakMap<Value, SVGSVGElement>();

/** The bar of what the log told: what was believed before it under what is believed after. Drawn once for each number. */
export function toldDrawn({ word, before: [low, high] }: Told, value: Value): SVGSVGElement | string {
  const known = drawn.get(value);
  if (known) return known;
  const [from, to] = interval95(value);
  // A spread without an end has no bar.
  if (![low, high, from, to].every(Number.isFinite)) return word;
  const bar = toldBar(
    { prior: { low, high }, posterior: { low: from, high: to }, told: word },
    { document, width: 150 },
  );
  drawn.set(value, bar);
  return bar;
}
