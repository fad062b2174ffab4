import type { Salt } from "./types.ts";

/** Molar mass of water, kg/mol (IUPAC standard atomic weights 2021, conventional values). */
export const waterMolarMass = 0.018015;

/**
 * Molar masses of the salts, kg/mol, from IUPAC's conventional atomic weights (2021): Na 22.990, K 39.098, H 1.008,
 * N 14.007, O 15.999.
 */
export const molarMass: Readonly<Record<Salt, number>> = {
  sodiumHydroxide: 0.039997,
  sodiumNitrate: 0.084994,
  sodiumNitrite: 0.068995,
  potassiumNitrate: 0.101102,
};

/** Specific gas constant of water, J/(kg K) (IAPWS R7-97, eq. 1). */
export const waterGasConstant = 461.526;

/** Standard acceleration of gravity, m/s² (3rd CGPM, 1901; ISO 2533:1975). */
export const standardGravity = 9.80665;

/** Specific gas constant of dry air, J/(kg K) (ISO 2533:1975, standard atmosphere). */
export const airGasConstant = 287.05287;

/** One standard atmosphere, Pa (ISO 2533:1975). */
export const atmosphere = 101325;

/** 0 °C in K (BIPM, SI brochure). */
export const zeroCelsius = 273.15;
