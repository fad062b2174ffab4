import { findUnit } from "../measure/unit.ts";
import { unitTable } from "../measure/unitTable.ts";
import { isUnit } from "./isUnit.ts";
import { FIT, foldTyped } from "./matching.ts";

/** Offered first, in this order: what a shop weighs, pours, times and reads most. */
const FIRST = ["lb", "gal", "min", "°F", "fl oz", "in", "oz", "h", "kg", "l", "°C", "g"];
/** Below the line of a unit these stand most. */
const FIRST_BELOW = ["min", "h", "gal", "lb", "s"];

const symbols = unitTable.map((unit) => unit.symbol).filter((symbol) => /^[\p{L}°%]/u.test(symbol));

/** A unit that could be written behind a number. */
export interface UnitOffer {
  readonly unit: string;
  readonly fit: number;
}

/**
 * The units that what stands behind a number could become, the likeliest first.
 * @param typed What stands there: "", "fl o", "gal/".
 * @returns Units with how well they fit; none where what stands there can be no unit.
 * @example unitsFor("fl")[0]?.unit // "fl oz"
 */
export function unitsFor(typed: string): readonly UnitOffer[] {
  const [, before = "", last = ""] = /^(.*[*/·×]\s*)?([^*/·×]*)$/su.exec(typed.trimStart()) ?? [];
  const asked = foldTyped(last);
  const above = before.replace(/[*/·×]\s*$/u, "").trim();
  if (before !== "" && !isUnit(above)) return [];
  const first = before === "" ? FIRST : FIRST_BELOW;
  const ordered = [...new Set([...first, ...symbols])];
  const offers = ordered.flatMap((symbol): UnitOffer[] => {
    const unit = joined(before, symbol);
    if (before !== "" && !isUnit(unit)) return [];
    // A unit that is there to its end is not offered again.
    if (asked === symbol.toLowerCase()) return [];
    if (symbol.toLowerCase().startsWith(asked)) return [{ unit, fit: FIT.start }];
    return spelt(asked, symbol) ? [{ unit, fit: FIT.looseStart }] : [];
  });
  // "mi" is on the way to "min": that it could become "millibar" too is no help.
  const direct = offers.filter((offer) => offer.fit === FIT.start);
  return direct.length > 0 ? direct : offers;
}

function joined(before: string, symbol: string): string {
  return before.replace(/\s*([*/·×])\s*/gu, "$1") + symbol;
}

/** "poun" is on the way to "pounds", one spelling of lb. One letter could become anything, a whole spelling is done. */
function spelt(asked: string, symbol: string): boolean {
  if (asked.length < 2 || findUnit(asked.trim())?.symbol === symbol) return false;
  return unitTable.some((unit) => unit.symbol === symbol && unit.names.some((name) => name.startsWith(asked)));
}
