import { needNumber } from "../../physics/needNumber.ts";
import { smallestTank } from "./smallestTank.ts";
import { usualFreeboard } from "./tankHolds.ts";
import type { PartSize, WorkTank, WorkTankName } from "./types.ts";

const names: readonly WorkTankName[] = ["clean", "rinse", "boiling rinse", "oil"];

/**
 * The other tanks that work of a length needs, in the order of the work: alkaline clean, overflowing cold rinse, boiling
 * rinse, oil. Each takes the part straight and under the surface with a clearance all round: a part that goes in slantwise
 * traps air and caustic. The cold rinse comes twice, before and after the bath; one tank may serve both only if its water
 * runs fresh. Only the boiling rinse needs fire (`waterHeatUp`). Oil is kept away from every flame.
 *
 * @param part m, each 0 to 100; with its hanger where that goes in too
 * @param options clearance, m, 0 to 10 (0.025, an inch, where absent); freeboard, m, 0 to 10 (`usualFreeboard` where
 * absent); least width and depth, m, 0 to 100 (0.1 where absent): for a hand in a glove
 * @returns inside measures, m, and m³ to fill
 * @throws RangeError outside these ranges
 * Source: geometry; the order is trade practice (handbooks; read), the sizes common practice, no source.
 * @example
 * const [clean] = workTanks({ length: 0.9, width: 0.03, thickness: 0.006 });
 * clean; // { name: "clean", length: 0.95, width: 0.1, depth: 0.1, freeboard: 0.1016, volume: 0.0095 }
 */
export function workTanks(
  part: PartSize,
  options: {
    readonly clearance?: number;
    readonly freeboard?: number;
    readonly leastWidth?: number;
    readonly leastDepth?: number;
  } = {},
): readonly WorkTank[] {
  const { clearance = 0.025, leastWidth = 0.1, leastDepth = 0.1 } = options;
  needNumber("least width", leastWidth, 0, 100, "m");
  needNumber("least depth", leastDepth, 0, 100, "m");
  if (options.freeboard !== undefined) needNumber("freeboard", options.freeboard, 0, 10, "m");
  const bare = smallestTank(part, { clearance }).straight;
  if (!bare)
    throw new RangeError("invalid part: it is wider or thicker than long; give its longest measure as the length");
  const width = Math.max(bare.width, leastWidth);
  const depth = Math.max(bare.depth, leastDepth);
  const freeboard = options.freeboard ?? usualFreeboard(depth);
  const volume = bare.length * width * depth;
  return names.map((name) => ({ name, length: bare.length, width, depth, freeboard, volume }));
}
