import type { Answer, WaterBalance } from "../lib/bath/types.ts";
import { exact } from "../lib/measure/index.ts";
import type { Value } from "../lib/measure/types.ts";

const measuredOf = ({ measured, interval95 }: Answer): Value => ({ ...measured, interval95 });

/** The results of a water balance under the names that formulas call them by; only what is known is there. */
export function partsOfBalance(balance: WaterBalance): ReadonlyMap<string, unknown> {
  const parts = new Map<string, unknown>([
    ["boil-off", measuredOf(balance.boilOff)],
    ["make-up water", measuredOf(balance.makeUp)],
    ["hold time", exact(balance.hold.end - balance.hold.start, { time: 1 })],
    ["ratio at the start", measuredOf(balance.ratioStart)],
    ["ratio at the end", measuredOf(balance.ratioEnd)],
    ["water at the first boil", measuredOf(balance.waterStart)],
    ["water at the end", measuredOf(balance.waterEnd)],
    ["salts", measuredOf(balance.salts)],
    ["drift left alone", measuredOf(balance.drift)],
    ["whole balance", balance],
  ]);
  if (balance.inBand) parts.set("time in band", measuredOf(balance.inBand));
  if (balance.poured.value > 0) {
    parts.set("poured", measuredOf(balance.poured));
    parts.set("poured a minute", measuredOf(balance.pouredRate));
  }
  if (balance.unwritten) parts.set("not written down", measuredOf(balance.unwritten));
  return parts;
}
