import type { Answer, WaterBalance } from "../lib/bath/types.ts";
import { exact } from "../lib/measure/index.ts";
import type { Value } from "../lib/measure/types.ts";

const valueOf = ({ measured, interval95 }: Answer): Value => ({ ...measured, interval95 });

/** The results of a water balance under the names that formulas call them by; only what is known is there. */
export function partsOfBalance(balance: WaterBalance): ReadonlyMap<string, unknown> {
  const parts = new Map<string, unknown>([
    ["boil-off", valueOf(balance.boilOff)],
    ["make-up water", valueOf(balance.makeUp)],
    ["hold time", exact(balance.hold.end - balance.hold.start, { time: 1 })],
    ["ratio at the start", valueOf(balance.ratioStart)],
    ["ratio at the end", valueOf(balance.ratioEnd)],
    ["water at the first boil", valueOf(balance.waterStart)],
    ["water at the end", valueOf(balance.waterEnd)],
    ["whole balance", balance],
  ]);
  if (balance.inBand) parts.set("time in band", valueOf(balance.inBand));
  if (balance.poured.value > 0) {
    parts.set("poured", valueOf(balance.poured));
    parts.set("poured a minute", valueOf(balance.pouredRate));
  }
  if (balance.unwritten) parts.set("not written down", valueOf(balance.unwritten));
  return parts;
}
