import type { ScaleSetup } from "./types.ts";

/**
 * Heat that stays in a bath of its fire, and what a steady feed makes of it.
 *
 * @param fire W that enter the bath
 * @param wall m² of unheated wall and W/m² that it loses
 * @param top m² of surface and W/m² that it loses beside the steam
 * @returns W; below 0 where more is lost than comes in
 * @example netHeat(6155, { area: 0.2077, flux: 1893 }, { area: 0.1961, flux: 1237 }) // 5519
 */
export function netHeat(
  fire: number,
  wall: { readonly area: number; readonly flux: number },
  top: { readonly area: number; readonly flux: number },
): number {
  return fire - wall.area * wall.flux - top.area * top.flux;
}

/** m² of a tank's walls that no flame reaches: two ends, and the long sides but for a reach at each burner. */
export function coldWall({ tank, burners }: ScaleSetup, reach: number): number {
  const heated = burners.count * Math.min(reach, tank.length / burners.count);
  return (2 * (tank.length - heated) + 2 * tank.width) * tank.depth;
}
