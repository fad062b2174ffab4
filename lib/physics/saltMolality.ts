import { nitrateMolality } from "./nitrateMolality.ts";
import { smoothTable } from "./smoothTable.ts";

/**
 * Molality of a sodium nitrite solution over that of the sodium nitrate solution with the same water activity.
 * Points: saturated solution boiling at 128 °C with 68.7 wt% (Khimicheskaya Entsiklopediya) at 0.40, 65 % humidity
 * over the saturated solution at 25 °C (Winston and Bates 1960, from memory) at 0.65, Pitzer and Mayorga 1973 at 0.85.
 */
export const nitriteFactor = smoothTable([0.4, 0.65, 0.85, 1], [0.876, 0.8, 0.83, 1]);

/** The same for potassium nitrate. Points set around Gerlach's boiling point rises (from memory): coarse. */
export const potassiumNitrateFactor = smoothTable([0.25, 0.59, 0.85, 0.97, 1], [1.55, 1.75, 1.45, 1.05, 1]);

/** mol of sodium nitrite per kg of water over which the water activity is `aw`, 0.1 to 1. */
export function nitriteMolality(aw: number): number {
  return nitriteFactor(aw) * nitrateMolality(aw);
}

/** mol of potassium nitrate per kg of water over which the water activity is `aw`, 0.1 to 1. */
export function potassiumNitrateMolality(aw: number): number {
  return potassiumNitrateFactor(aw) * nitrateMolality(aw);
}
