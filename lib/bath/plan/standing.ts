import { departedBoilingPoint } from "../../physics/departedBoilingPoint.ts";
import { needNumber } from "../../physics/needNumber.ts";
import { needBrine } from "../../physics/readBrine.ts";
import { type Brine, salts as kinds } from "../../physics/types.ts";
import { saltMass, scaledSalts } from "../saltMasses.ts";
import type { StandingBath } from "./types.ts";

/** No departure from the published curve. */
export const asPublished = { offset: 0, scale: 1 };

/**
 * Checks a standing bath and gives kg of all its salts.
 *
 * @throws RangeError for water or salts out of range, and for plain water
 * @example needStanding({ water: 4.5, salts: { sodiumHydroxide: 4 } }) // 4 kg
 */
export function needStanding({ water, salts }: StandingBath): number {
  needNumber("water", water, 1e-3, 100_000, "kg");
  needBrine(salts);
  for (const kind of kinds) needNumber("salt", salts[kind] ?? 0, 0, 100_000, "kg");
  const mass = saltMass(salts);
  if (mass === 0) throw new RangeError("missing salts: no weight is given; at least one salt above 0");
  return mass;
}

/**
 * Where a bath boils, by its own departure.
 *
 * @returns K
 * @throws RangeError as `departedBoilingPoint`
 * @example boilOf({ water: 4.5, salts: { sodiumHydroxide: 4, sodiumNitrate: 2 } }, 101_325) // 417.5 K
 */
export function boilOf({ water, salts, departure = asPublished }: StandingBath, pressure: number): number {
  return departedBoilingPoint(perWater(salts, water), pressure, departure);
}

/**
 * kg of each salt for each kg of water.
 *
 * @example perWater({ sodiumHydroxide: 4 }, 5).sodiumHydroxide // 0.8
 */
export function perWater(salts: Brine, water: number): Brine {
  return scaledSalts(salts, 1 / water);
}
