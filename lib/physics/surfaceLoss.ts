import { coldPlateUp, freeConvection, hotPlateUp } from "./freeConvection.ts";
import { greyRadiation } from "./greyRadiation.ts";
import { needNumber, plain } from "./needNumber.ts";
import { saturationPressure } from "./saturationPressure.ts";
import { steamEnthalpy } from "./steamEnthalpy.ts";
import { waterEnthalpy } from "./waterEnthalpy.ts";

export interface SurfaceLossGivens {
  /** K, 273.15 to 433.15. */
  readonly surface: number;
  /** K, still air and what stands around; 233.15 to 333.15. */
  readonly air: number;
  /** m, of the open surface; each 0.1 to 5. */
  readonly length: number;
  readonly width: number;
  /** Pa, over the bath itself (`brineVapourPressure`), not over water; at most `pressure`. */
  readonly vapourPressure: number;
  /** Pa, of the water in the air; half of what air of 60 °F can hold (884 Pa) where absent, as in the source. */
  readonly airVapourPressure?: number;
  /** Pa, of the air; 50,000 to 110,000. */
  readonly pressure: number;
}

export interface SurfaceLoss {
  /** W/m², free convection. */
  readonly convection: number;
  /** W/m². */
  readonly radiation: number;
  /** W/m², heat that plain water of this temperature takes to evaporate; a brine takes more: see `evaporated`. */
  readonly evaporation: number;
  /** kg/(m² s) of water; below zero where damp air condenses on a cold bath. */
  readonly evaporated: number;
  /** Whether the vapour pressure is one that the published table reaches (11,670 to 97,380 Pa: water of 120 to 210 °F). */
  readonly tabled: boolean;
}

/** W/(m² Pa): 235 BTU/(h ft² psi). */
const evaporationCoefficient = (235 * 3.154591) / 6894.757;
const emissivity = 0.96;

/**
 * What the open surface of a quiet bath below its boil loses to still air. For a bath that boils it says nothing: there
 * the heat sets how much water leaves.
 *
 * @param givens temperatures, size, vapour pressures, air pressure
 * @returns heat by convection, radiation and evaporation, W/m², and water evaporated, kg/(m² s)
 * @throws RangeError for a given out of its range, a vapour pressure above the air pressure (the bath boils), or a
 * Rayleigh number above the law's (1e10 for a bath of some 25 m² in air that is 60 K warmer)
 *
 * Evaporation: heat of 235 BTU/(h ft² psi) times the difference of vapour pressures, within 3 % of a handbook table of
 * open water tanks, 120 to 210 °F in still air of 60 °F, sea level. The table calls itself a rough estimate; other
 * correlations scatter by 20 % and more. Outside it (`tabled` is false) the law is carried on: it then says more than the
 * table, 12 % at 110 °F, 21 % at 100, 68 % at 90 (of little heat). How altitude changes it is not known and left out.
 * Free convection: 0.54 Ra^1/4 and 0.15 Ra^1/3 above a hot plate, 0.27 Ra^1/4 above a cold one, L area/perimeter
 * (Incropera and DeWitt). Radiation: emissivity 0.96, that of water (the same, from memory); a brine's is not published.
 * @example
 * const loss = surfaceLoss({
 *   surface: 355.4, air: 288.7, length: 0.96, width: 0.2, vapourPressure: 51790, pressure: 101325,
 * });
 * loss.evaporation; // 5473 W/m²: 180 °F, of which the table says 5489
 * loss.evaporated; // 0.002377 kg/(m² s)
 */
export function surfaceLoss(givens: SurfaceLossGivens): SurfaceLoss {
  const { vapourPressure, airVapourPressure = 884 } = givens;
  const surface = needNumber("surface temperature", givens.surface, 273.15, 433.15, "K");
  const air = needNumber("air temperature", givens.air, 233.15, 333.15, "K");
  const length = needNumber("length", givens.length, 0.1, 5, "m");
  const width = needNumber("width", givens.width, 0.1, 5, "m");
  const pressure = needNumber("pressure", givens.pressure, 50_000, 110_000, "Pa");
  needNumber("vapour pressure in the air", airVapourPressure, 0, 20_000, "Pa");
  if (!(vapourPressure >= 0 && vapourPressure <= pressure)) {
    throw new RangeError(
      `invalid vapour pressure: ${plain(vapourPressure)} Pa; 0 to the air's ${plain(pressure)} Pa, above which the bath boils`,
    );
  }
  const law = surface >= air ? hotPlateUp : coldPlateUp;
  const evaporation = evaporationCoefficient * (vapourPressure - airVapourPressure);
  const latentHeat = steamEnthalpy(surface, saturationPressure(surface)) - waterEnthalpy(surface);
  return {
    convection: freeConvection(law, surface, air, (length * width) / (2 * (length + width)), pressure),
    radiation: greyRadiation(emissivity, surface, air),
    evaporation,
    evaporated: evaporation / latentHeat,
    tabled: vapourPressure >= 11_670 && vapourPressure <= 97_380,
  };
}
