import { brineEnthalpyTotal } from "../physics/brineEnthalpy.ts";
import { molarMass } from "../physics/constants.ts";
import type { Brine, Salt } from "../physics/types.ts";
import { salts } from "../physics/types.ts";
import { waterEnthalpy } from "../physics/waterEnthalpy.ts";

const room = 298.15;

/**
 * kJ/mol taken up as the dry salt dissolves at 25 °C, in mol of water for each mol of salt, and J/(kg K) of the dry salt.
 * Hydroxide into ten of water: Felder and Rousseau, Elementary Principles of Chemical Processes, table B.11. The others
 * into much water: CRC Handbook, enthalpy of solution of electrolytes. Heat capacities: NBS tables. All from memory.
 */
const dry: Readonly<Record<Salt, { readonly heat: number; readonly water: number; readonly capacity: number }>> = {
  sodiumHydroxide: { heat: -42.51, water: 10, capacity: 1490 },
  sodiumNitrate: { heat: 20.5, water: 100, capacity: 1094 },
  sodiumNitrite: { heat: 13.89, water: 100, capacity: 1000 },
  potassiumNitrate: { heat: 34.89, water: 100, capacity: 953 },
};

const waterMole = 0.01801528;

/**
 * Enthalpy of dry salt on the bath's own zero: what putting it in brings, so that dissolving hydroxide warms the bath
 * and dissolving nitrate cools it.
 *
 * @param brine kg of each salt
 * @param T K, of the dry salt
 * @returns J
 * Source: heats of solution at 25 °C as in the table above, `brineEnthalpy` for the solution that they make.
 * @example
 * drySaltEnthalpy({ sodiumHydroxide: 1 }, 298.15); // 1.056e6 J
 */
export function drySaltEnthalpy(brine: Brine, T: number): number {
  let sum = 0;
  for (const salt of salts) {
    const mass = brine[salt] ?? 0;
    if (mass === 0) continue;
    const { heat, water, capacity } = dry[salt];
    const mole = molarMass[salt];
    const solution =
      brineEnthalpyTotal({ [salt]: mole }, water * waterMole, room) - water * waterMole * waterEnthalpy(room);
    sum += mass * ((solution - 1000 * heat) / mole + capacity * (T - room));
  }
  return sum;
}
