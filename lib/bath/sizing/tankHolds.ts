import { needNumber, plain } from "../../physics/needNumber.ts";
import { steelDensity } from "../bathModel.ts";
import type { TankHolds, TankSize } from "./types.ts";

/** Refuses a tank whose measures are no tank's. */
export function needTank(tank: TankSize): void {
  needNumber("tank length", tank.length, 0.01, 100, "m");
  needNumber("tank width", tank.width, 0.01, 100, "m");
  needNumber("working depth", tank.depth, 0.01, 100, "m");
  needNumber("freeboard", tank.freeboard, 0, 10, "m");
}

/**
 * What a tank holds at its working depth, with steel in it.
 *
 * @param tank inside measures and freeboard, m; 0.01 to 100, freeboard 0 to 10
 * @param steel kg under the surface: parts, and the hangers, bars and baskets that they hang on; 0 where absent
 * @returns volumes, m³, how far the level falls when the steel comes out, m, and the surface, m²
 * @throws RangeError for a measure out of range, or steel that takes more than the whole tank up to its brim
 * Source: geometry; steel of 7,850 kg/m³ (EN 1993-1-2:2005, 3.2.2).
 * @example
 * const holds = tankHolds({ length: 0.965, width: 0.203, depth: 0.089, freeboard: 0.1 }, { parts: 4, hangers: 1 });
 * holds.volume; // 0.017435 m³
 * holds.displaced; // 0.000637 m³
 * holds.fall; // 0.00325 m
 */
export function tankHolds(
  tank: TankSize,
  steel: { readonly parts?: number; readonly hangers?: number } = {},
): TankHolds {
  needTank(tank);
  const parts = needNumber("weight of the parts", steel.parts ?? 0, 0, 1e6, "kg");
  const hangers = needNumber("weight of the hangers", steel.hangers ?? 0, 0, 1e6, "kg");
  const surface = tank.length * tank.width;
  const volume = surface * tank.depth;
  const spare = surface * tank.freeboard;
  const displaced = (parts + hangers) / steelDensity;
  if (displaced > volume) {
    const most = plain(volume * steelDensity);
    throw new RangeError(
      `invalid weight of parts and hangers: ${plain(parts + hangers)} kg; at most ${most} kg of steel`,
    );
  }
  return { volume, displaced, liquid: volume - displaced, fall: displaced / surface, spare, surface };
}

/**
 * Freeboard that old shops leave: 4 in, or a third of the working depth where that is more. A habit, no rule: a bath
 * that spatters, foams or is fed too fast wants more.
 *
 * @param depth m, working depth; 0.01 to 100
 * @returns m
 * @throws RangeError outside the range
 * Source: common practice, no source; no published figure was found.
 * @example usualFreeboard(0.13) // 0.1016 m
 */
export function usualFreeboard(depth: number): number {
  return Math.max(0.1016, needNumber("working depth", depth, 0.01, 100, "m") / 3);
}
