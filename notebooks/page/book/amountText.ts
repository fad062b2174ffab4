import type { Line } from "../../../lib/lines/index.ts";
import { inUnit, standardUncertainty } from "../../../lib/measure/index.ts";
import type { Value } from "../../../lib/measure/types.ts";
import { unitOfAmount } from "../writtenAs.ts";

/**
 * An amount as a text that a given can keep: "42.31 ± 0.42 in". Its spread is the 95 % half-width; where it came from
 * is lost.
 */
export function amountText(line: Line, value: Value, system: "US" | "metric"): string {
  const unit = unitOfAmount(line, value, system);
  const at = (si: number) => inUnit(si, value.dimension, unit);
  const half = Math.abs(at(value.value + 1.959964 * standardUncertainty(value)) - at(value.value));
  const number = String(Number(at(value.value).toPrecision(6)));
  const spread = half > 0 ? ` ± ${Number(half.toPrecision(2))}` : "";
  return `${number}${spread} ${unit}`.trim();
}
