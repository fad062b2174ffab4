import { atmosphere } from "./constants.ts";
import { findZero } from "./findZero.ts";
import { freeConvection, verticalPlate } from "./freeConvection.ts";
import { greyRadiation } from "./greyRadiation.ts";
import { needNumber } from "./needNumber.ts";

export interface WallLossGivens {
  /** K, the wall itself, under any insulation; 233.15 to 573.15. */
  readonly wall: number;
  /** K, still air and what stands around; 233.15 to 333.15. */
  readonly air: number;
  /** m, height of the wall; 0.05 to 3. */
  readonly height: number;
  /** Of the outer face, 0 to 1; 0.9 where absent: oxidised or painted steel. */
  readonly emissivity?: number;
  readonly insulation?: {
    /** m, 0.001 to 0.3. */
    readonly thickness: number;
    /** W/(m K), 0.01 to 5. */
    readonly conductivity: number;
  };
  /** Pa, 50,000 to 110,000; one atmosphere where absent. */
  readonly pressure?: number;
}

/**
 * Heat that an upright wall of a tank loses to still air, by free convection and radiation, through insulation if any.
 * Below zero where the air is the warmer. Wind, and flue gas that washes the wall, are not in it: the first loses more,
 * the second can turn the loss into a gain.
 *
 * @param givens temperatures, height, emissivity, insulation, air pressure
 * @returns W per m² of wall
 * @throws RangeError for a given out of its range (the ranges keep the Rayleigh number below the law's 1e13)
 * Source: Nu = 0.59 Ra^1/4 below Ra of 1e9 and 0.10 Ra^1/3 above (Incropera and DeWitt, Fundamentals of Heat and Mass
 * Transfer); Stefan and Boltzmann's law. Within 6 % of a handbook table for a bare wall 1 ft high.
 * @example
 * wallLoss({ wall: 417.6, air: 294.3, height: 0.13 }); // 2164 W/m²: a bare wall at 292 °F in air of 70 °F
 */
export function wallLoss(givens: WallLossGivens): number {
  const { emissivity = 0.9, insulation, pressure = atmosphere } = givens;
  const wall = needNumber("wall temperature", givens.wall, 233.15, 573.15, "K");
  const air = needNumber("air temperature", givens.air, 233.15, 333.15, "K");
  const height = needNumber("height of the wall", givens.height, 0.05, 3, "m");
  needNumber("emissivity", emissivity, 0, 1, "");
  needNumber("pressure", pressure, 50_000, 110_000, "Pa");
  const given = (face: number) =>
    freeConvection(verticalPlate, face, air, height, pressure) + greyRadiation(emissivity, face, air);
  if (insulation === undefined) return given(wall);
  needNumber("insulation thickness", insulation.thickness, 0.001, 0.3, "m");
  needNumber("insulation conductivity", insulation.conductivity, 0.01, 5, "W/(m K)");
  const conductance = insulation.conductivity / insulation.thickness;
  if (wall === air) return 0;
  // Outer face: where what comes through the insulation is what the air takes. In K over the air, scaled to fall at 1.
  const scale = conductance + 10;
  const left = (face: number) => (conductance * (wall - face) - given(face)) / scale;
  const face = findZero(left, Math.min(wall, air), Math.max(wall, air), air);
  return given(face);
}
