import type { Pour } from "./logFacts.ts";

/** s of a pour to mix in, and of the thermometer to show it: each. */
const shows = 18;

/**
 * K by which pours have pulled a reading down by its time, as far as steam has not made up for it.
 *
 * @param pours in time order
 * @param perKilogram K by which a kilogram poured lowers the boiling point
 * @example pulledBy(pours, 4)(600)
 */
export function pulledBy(pours: readonly Pour[], perKilogram: number): (time: number) => number {
  return (time) => {
    let kg = 0;
    for (const pour of pours) {
      const after = time - pour.time;
      if (!(after > 0)) break;
      const x = after / shows;
      kg += pour.mass * (pour.duration > 0 ? Math.min(1, after / pour.duration) : 1 - (1 + x) * Math.exp(-x));
    }
    return perKilogram * kg;
  };
}
