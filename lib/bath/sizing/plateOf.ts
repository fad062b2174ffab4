import { needNumber } from "../../physics/needNumber.ts";
import { steelDensity } from "../bathModel.ts";
import { needTank } from "./tankHolds.ts";
import type { Plate, TankSize } from "./types.ts";

/**
 * Plate of an open tank: a bottom under the walls, two sides over its whole length, two ends between them. Without waste,
 * rim, welds or skirt.
 *
 * @param tank inside measures and freeboard, m; 0.01 to 100, freeboard 0 to 10
 * @param thickness m; 0.0005 to 0.1. How thick is enough no source here says: thin plate buckles, and rusts through
 * @returns area, m², and weight, kg; area times thickness is exactly the steel between outside and inside
 * @throws RangeError outside these ranges
 * Source: geometry; steel of 7,850 kg/m³ (EN 1993-1-2:2005, 3.2.2).
 * @example
 * const plate = plateOf({ length: 0.965, width: 0.203, depth: 0.089, freeboard: 0.1 }, 0.003);
 * plate.area; // 0.6467 m²
 * plate.mass; // 15.2 kg
 */
export function plateOf(tank: TankSize, thickness: number): Plate {
  needTank(tank);
  needNumber("thickness of the plate", thickness, 0.0005, 0.1, "m");
  const { length, width } = tank;
  const wall = tank.depth + tank.freeboard;
  const area = (length + 2 * thickness) * (width + 2 * thickness) + 2 * (length + 2 * thickness + width) * wall;
  return { area, mass: area * thickness * steelDensity };
}
