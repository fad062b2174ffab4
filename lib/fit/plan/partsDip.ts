import { needNumber } from "../../physics/needNumber.ts";
import { steelHeat } from "../../physics/steelHeat.ts";
import type { PlanBath } from "./planBath.ts";
import { partsTime } from "./simulateHold.ts";
import type { PlannedParts } from "./types.ts";

/** What parts do to a bath as they go in. */
export interface PartsDip {
  /** J that they take up; J/K that they then add to the bath. */
  readonly heat: number;
  readonly capacity: number;
  /** K by which the bath falls at the most, and s until it is back at its boil. */
  readonly dip: number;
  readonly recovery: number;
}

const step = 1;
const longest = 7200;

/**
 * How far parts cool a boiling bath and how long it takes to come back, unfed and worked out second by second: the parts
 * take 63 % of their heat in 12 s, the fire gives its own, less what evaporates below the boil.
 *
 * @param bath at its target
 * @param parts kg and K; none
 * @param air K, of parts whose temperature nobody said
 * @throws RangeError for a mass or temperature out of range
 * Source: `steelHeat`; 12 s is a judgement.
 * @example partsDip(bath, { mass: 5 }, 293.15).recovery // 60 s
 */
export function partsDip(bath: PlanBath, parts: PlannedParts | undefined, air: number): PartsDip {
  if (!parts || parts.mass === 0) return { heat: 0, capacity: 0, dip: 0, recovery: 0 };
  const { target, evaporation, quiet } = bath;
  needNumber("parts", parts.mass, 0, 10_000, "kg");
  const heat = steelHeat(parts.mass, needNumber("temperature", parts.temperature ?? air, 273.15, 513.15, "K"), target);
  const capacity = steelHeat(parts.mass, target - 0.5, target + 0.5);
  const whole = bath.capacity + capacity;
  let short = 0;
  let dip = 0;
  let recovery = 0;
  for (let time = step; time <= longest; time += step) {
    const takes = (heat / partsTime) * Math.exp(-(time - step / 2) / partsTime);
    // Short of its boil it evaporates quietly; at its boil what boils off takes what heat there is.
    const evaporates = short > 0 ? quiet * evaporation : 0;
    short = Math.max(0, short + step * (takes + evaporates - bath.heat));
    dip = Math.max(dip, short / whole);
    if (short > 0) recovery = time;
    else if (time > 3 * partsTime) break;
  }
  return { heat, capacity, dip, recovery };
}
