import { quietVapour } from "../../bath/bathLosses.ts";
import { surfaceLoss } from "../../physics/surfaceLoss.ts";
import { wallLoss } from "../../physics/wallLoss.ts";
import type { ScaleTank } from "./types.ts";

/** What a square metre loses at some temperatures of the bath: W/m². */
export interface WarmingPath {
  /** K, rising. */
  readonly T: readonly number[];
  readonly wall: readonly number[];
  readonly top: readonly number[];
  readonly evaporation: readonly number[];
  /** Nearness to a cold bath: 0 at a bath's usual boil, 1 at 294 K. */
  readonly cold: readonly number[];
}

export interface PathGivens {
  readonly tank: ScaleTank;
  /** K and Pa of the air. */
  readonly air: number;
  readonly pressure: number;
  /** K at which the bath boils, and its heat of evaporation over that of plain water. */
  readonly boils: number;
  readonly heat: number;
}

const usual = { boil: 417.6, cold: 294 };

/**
 * Losses of a tank at the temperatures that its bath passes.
 *
 * @param temperatures K, rising, none above the boil
 * @throws RangeError as `wallLoss` and `surfaceLoss`
 * @example warmingPath([417.6], { tank: { length: 1, width: 0.2, depth: 0.13 }, air: 294, pressure: 101_325, boils: 417.6, heat: 1.17 }).wall[0] // 2168.6
 */
export function warmingPath(temperatures: readonly number[], givens: PathGivens): WarmingPath {
  const { tank, air, pressure, boils, heat } = givens;
  const height = Math.max(0.05, tank.depth);
  const insulated = tank.insulation === undefined ? {} : { insulation: tank.insulation };
  const surfaces = temperatures.map((T) =>
    surfaceLoss({
      surface: Math.min(433, T),
      air,
      length: tank.length,
      width: Math.max(0.1, tank.width),
      vapourPressure: quietVapour(T, boils, pressure, heat),
      pressure,
    }),
  );
  return {
    T: temperatures,
    wall: temperatures.map((T) => wallLoss({ wall: T, air, height, pressure, ...insulated })),
    top: surfaces.map(({ convection, radiation }) => convection + radiation),
    evaporation: surfaces.map(({ evaporation }) => Math.max(0, evaporation)),
    cold: temperatures.map((T) => Math.max(0, (usual.boil - T) / (usual.boil - usual.cold))),
  };
}

/** How a draw heats the path: W of fire at the usual boil, share by which cold takes more, m² and factors of losses. */
export interface Heating {
  readonly fire: number;
  readonly coldShare: number;
  readonly wall: number;
  readonly top: number;
  readonly evaporation: number;
}

/** W that warm the bath at a place of the path. */
export function powerAt(path: WarmingPath, i: number, heating: Heating): number {
  return (
    heating.fire * (1 + heating.coldShare * (path.cold[i] as number)) -
    heating.wall * (path.wall[i] as number) -
    heating.top * (path.top[i] as number) -
    heating.evaporation * (path.evaporation[i] as number)
  );
}

/**
 * Time to warm along a path up to a place of it: the power is taken as straight between places, which makes each stretch
 * a closed form that stays right where the power falls towards nothing.
 *
 * @param path of the bath
 * @param last place to reach
 * @param heating of the draw
 * @param capacity J/K
 * @returns s; Infinity where the power gives out before
 * @example timeAlong(path, path.T.length - 1, heating, 80_000)
 */
export function timeAlong(path: WarmingPath, last: number, heating: Heating, capacity: number): number {
  let time = 0;
  let before = powerAt(path, 0, heating);
  for (let i = 1; i <= last; i++) {
    const here = powerAt(path, i, heating);
    if (!(before > 0 && here > 0)) return Infinity;
    const rise = (path.T[i] as number) - (path.T[i - 1] as number);
    const steep = before / here - 1;
    time += ((capacity * rise) / here) * (Math.abs(steep) < 1e-6 ? 1 : Math.log1p(steep) / steep);
    before = here;
  }
  return time;
}
