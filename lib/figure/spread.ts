import { formatWithSpread } from "../measure/formatWithSpread.ts";
import type { Dimension } from "../measure/types.ts";

/**
 * A value with its 95 % spread as the page writes it: "4.6 ±0.3 fl oz/min". Value and ends in SI, low <= value <= high.
 * @example spreadText({ value: 0.0023, low: 0.0022, high: 0.0024 }, { mass: 1, time: -1 }, "ml/min", "metric") // "138 ±6 ml/min"
 */
export function spreadText(
  { value, low, high }: { readonly value: number; readonly low: number; readonly high: number },
  dimension: Dimension,
  unit: string,
  system: "US" | "metric",
): string {
  // A quarter of the interval stands for the standard uncertainty; what is shown comes from the interval itself.
  const components = new Map([["spread", (high - low) / 4]]);
  return formatWithSpread({ value, dimension, components, interval95: [low, high] }, unit, { system }).text.replaceAll(
    "\u00a0",
    " ",
  );
}
