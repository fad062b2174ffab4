import { standardGravity } from "../../physics/constants.ts";
import { needNumber } from "../../physics/needNumber.ts";
import type { StandLoad, TankHolds } from "./types.ts";

/**
 * What stands on the stand: the tank, its liquid, the steel in it. Parts that hang on the tank weigh on it with their
 * whole weight, though the liquid carries a part of it. The stand must carry the brimful tank with a margin, hot, on
 * ground that does not give: a tipped bath maims.
 *
 * @param holds what `tankHolds` gives
 * @param load kg of tank (`plateOf`), parts and hangers, and of whatever else stands on it; 0 to 1e6 each
 * @param density kg/m³ of the liquid, 500 to 2,500: `brineDensity`, or 998 for water
 * @returns kg in use and brimful, N brimful
 * @throws RangeError outside these ranges
 * Source: standard gravity 9.80665 m/s² (3rd CGPM, 1901).
 * @example
 * const holds = tankHolds({ length: 0.965, width: 0.203, depth: 0.089, freeboard: 0.1 }, { parts: 5 });
 * weightOnStand(holds, { tank: 15.2, parts: 5 }, 1528); // { mass: 45.9, brimful: 75.8, force: 743 }
 */
export function weightOnStand(
  holds: TankHolds,
  load: { readonly tank: number; readonly parts?: number; readonly hangers?: number; readonly other?: number },
  density: number,
): StandLoad {
  needNumber("density", density, 500, 2500, "kg/m³");
  const steel = needNumber("weight of the tank", load.tank, 0, 1e6, "kg");
  const parts = needNumber("weight of the parts", load.parts ?? 0, 0, 1e6, "kg");
  const hangers = needNumber("weight of the hangers", load.hangers ?? 0, 0, 1e6, "kg");
  const other = needNumber("other weight", load.other ?? 0, 0, 1e6, "kg");
  const mass = steel + parts + hangers + other + holds.liquid * density;
  const brimful = mass + holds.spare * density;
  return { mass, brimful, force: brimful * standardGravity };
}
