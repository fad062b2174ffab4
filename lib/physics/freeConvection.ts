import { airProperties } from "./airProperties.ts";
import { standardGravity } from "./constants.ts";

/** A stretch of a free convection law: Nu = factor · Ra^power, and the largest Ra that it holds for. */
export interface ConvectionLaw {
  readonly laws: readonly (readonly [factor: number, power: number])[];
  readonly highestRayleigh: number;
}

/** Vertical plate: laminar 1e4 < Ra < 1e9, turbulent to 1e13 (Incropera and DeWitt, eqs. 9.24 to 9.27). */
export const verticalPlate: ConvectionLaw = {
  laws: [
    [0.59, 1 / 4],
    [0.1, 1 / 3],
  ],
  highestRayleigh: 1e13,
};

/** Hot plate facing up: 1e4 < Ra < 1e7, and to 1e11 (the same, eqs. 9.30 and 9.31). */
export const hotPlateUp: ConvectionLaw = {
  laws: [
    [0.54, 1 / 4],
    [0.15, 1 / 3],
  ],
  highestRayleigh: 1e11,
};

/** Cold plate facing up: 1e5 < Ra < 1e10 (the same, eq. 9.32; from memory). */
export const coldPlateUp: ConvectionLaw = { laws: [[0.27, 1 / 4]], highestRayleigh: 1e10 };

/**
 * Heat flow, W/m², from a surface to still air by free convection; below zero where the surface is the colder. L, m, is
 * the height of a wall or area/perimeter of a level surface. Air taken at the mean of the two temperatures.
 *
 * Where two laws meet they differ by some 5 %: the larger is taken, so that nothing jumps and a hotter surface never
 * loses less. Below the least Ra (a wall 10 cm high within 0.2 K of the air, a bath of 20 by 80 cm within 0.5 K) the law
 * is carried down to zero: it then says too little of next to nothing.
 * @throws RangeError above the law's highest Ra
 */
export function freeConvection(law: ConvectionLaw, surface: number, air: number, L: number, p: number): number {
  if (surface === air) return 0;
  const film = (surface + air) / 2;
  const { kinematicViscosity, thermalDiffusivity, conductivity } = airProperties(film, p);
  const difference = Math.abs(surface - air);
  const rayleigh = (standardGravity * difference * L ** 3) / (film * kinematicViscosity * thermalDiffusivity);
  if (rayleigh > law.highestRayleigh) {
    throw new RangeError(
      `invalid Rayleigh number: ${rayleigh.toExponential(2)}; at most ${law.highestRayleigh.toExponential()}`,
    );
  }
  const nusselt = Math.max(...law.laws.map(([factor, power]) => factor * rayleigh ** power));
  return ((nusselt * conductivity) / L) * (surface - air);
}
