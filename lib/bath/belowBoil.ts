/** How the bath warms below its boil, counted back from the boil. */
export interface WarmUp {
  /** K/s at which the fire would warm the bath just below its boil if nothing evaporated. */
  readonly rate: number;
  /** Share of that heat which evaporates water from the surface just below the boil, 0..1. */
  readonly evaporates: number;
  /** Share by which the bath warms faster 100 K further down, because it loses less there. */
  readonly faster: number;
}

/** K in which the vapour pressure over the brine falls e-fold: R T²/(M λ) near 415 K with λ 2.6 MJ/kg. */
export const fold = 30;

/**
 * How far a warming bath is below its boiling point: the heat of the fire less what evaporates, which falls with the
 * vapour pressure over the brine, and less what the walls lose, which falls with the temperature. Closed form of
 * du/dt = -rate (1 - evaporates e^(-u/30 K)), its time stretched for the walls.
 *
 * @param toBoil s until it boils; below 0 gives 0
 * @param warmUp the bath's
 * @returns K below the boiling point
 * @example belowBoil(600, { rate: 0.1, evaporates: 0, faster: 0 }) // 60
 */
export function belowBoil(toBoil: number, { rate, evaporates, faster }: WarmUp): number {
  if (!(toBoil > 0)) return 0;
  const rise = rate * toBoil;
  const stretched = (rise * (1 + (faster * rise) / 200)) / fold;
  if (stretched > 30) return fold * (stretched + Math.log(1 - evaporates));
  return fold * Math.log(evaporates + (1 - evaporates) * Math.exp(stretched));
}
