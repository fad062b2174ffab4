import { solubility } from "../physics/solubility.ts";
import type { Brine, Salt } from "../physics/types.ts";
import { salts as kinds } from "../physics/types.ts";
import { at } from "./at.ts";

const from = 273.15;
const step = 5;
const known = new Map<Salt, readonly number[]>();

/** kg per kg of water at each step from 0 °C, NaN where nobody published it. The published points lie on the steps. */
function rowsOf(salt: Salt): readonly number[] {
  const kept = known.get(salt);
  if (kept) return kept;
  const rows = Array.from({ length: 41 }, (_, i) => {
    const found = solubility({ [salt]: 1 }, from + i * step);
    return found.state === "published" ? found.ratio : Number.NaN;
  });
  known.set(salt, rows);
  return rows;
}

/**
 * kg of salt more than dissolves, where that is published: one salt alone. 0 elsewhere, since for a mix nobody knows.
 *
 * @param salts kg of each in the tank
 * @returns a function of kg of water and K that gives kg
 * @example saltOut({ sodiumNitrate: 2 })(1, 373.15) // 0.24 kg: 1.76 dissolve
 */
export function saltOut(salts: Brine): (water: number, T: number) => number {
  const [only, another] = kinds.filter((kind) => (salts[kind] ?? 0) > 0);
  if (only === undefined || another !== undefined) return () => 0;
  const rows = rowsOf(only);
  const mass = salts[only] ?? 0;
  return (water, T) => {
    const place = Math.max(0, (T - from) / step);
    const i = Math.floor(place);
    if (i >= rows.length - 1) return 0;
    // On a row itself the next one, which may be unknown, does not count.
    const part = place - i;
    const ratio = part < 1e-9 ? at(rows, i) : at(rows, i) + part * (at(rows, i + 1) - at(rows, i));
    return Number.isNaN(ratio) ? 0 : Math.max(0, mass - ratio * water);
  };
}
