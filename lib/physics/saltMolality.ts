import { nitrateMolality } from "./nitrateMolality.ts";
import { smoothTable } from "./smoothTable.ts";

/**
 * Molality of a sodium nitrite solution over that of the sodium nitrate solution with the same water activity.
 * Points: saturated solution boiling at 128 °C with 68.7 wt% (Khimicheskaya Entsiklopediya) at 0.40, 65 % humidity
 * over the saturated solution at 25 °C (Winston and Bates 1960, from memory) at 0.65, Pitzer and Mayorga 1973 at 0.85.
 */
export const nitriteFactor = smoothTable([0.4, 0.65, 0.85, 1], [0.876, 0.8, 0.83, 1]);

/**
 * The same for potassium nitrate. Points from Gerlach's boiling point rises (from memory) down to an activity of 0.6,
 * the saturated solution; below it, where potassium nitrate only exists beside hydroxide, a guess: coarse.
 */
export const potassiumNitrateFactor = smoothTable(
  [0.25, 0.6, 0.71, 0.783, 0.85, 0.93, 0.965, 1],
  [1.55, 1.8, 1.503, 1.37, 1.3, 1.26, 1.2, 1],
);

/** mol of sodium nitrite per kg of water over which the water activity is `aw`, 0.1 to 1. */
export function nitriteMolality(aw: number): number {
  return nitriteFactor(aw) * nitrateMolality(aw);
}

/** mol of potassium nitrate per kg of water over which the water activity is `aw`, 0.1 to 1. */
export function potassiumNitrateMolality(aw: number): number {
  return potassiumNitrateFactor(aw) * nitrateMolality(aw);
}
