import { steelHeat } from "../physics/steelHeat.ts";
import type { Brine, CurveDeparture } from "../physics/types.ts";
import { type BathBoiling, bathBoiling } from "./bathBoiling.ts";
import { BathHeat } from "./bathEnthalpy.ts";
import { type BathLosses, bathLosses, ordinaryAir } from "./bathLosses.ts";
import type { BathTank, SimulationOptions, SimulationSetup } from "./simulationTypes.ts";
import { steamHeat } from "./steamHeat.ts";
import { tabulate, type UniformTable } from "./uniformTable.ts";

/** kg/m³, plain carbon steel (EN 1993-1-2:2005, 3.2.2). */
export const steelDensity = 7850;

/** All that a step asks of one bath in one setup, until salt goes in. */
export interface BathModel {
  readonly heat: BathHeat;
  readonly boiling: BathBoiling;
  readonly losses: BathLosses;
  /** J/kg of steam that leaves at T. */
  readonly steam: (T: number) => number;
  /** J/kg of steel over 0 °C. */
  readonly steel: UniformTable;
  /** Pa. */
  readonly pressure: number;
  /** kg of water at which the bath is dry. */
  readonly least: number;
}

let steel: UniformTable | undefined;

/** Enthalpy of steel, J/kg over 0 °C, straight on below it. */
export function steelTable(): UniformTable {
  steel ??= tabulate((T) => steelHeat(1, 273.15, T), 273.15, 513.15, 2);
  return steel;
}

/** kg of steel that warms with the bath. */
export function tankSteel({ length, width, depth, wall }: BathTank): number {
  if (wall?.steel !== undefined) return wall.steel;
  return (length * width + 2 * (length + width) * depth) * (wall?.thickness ?? 0) * steelDensity;
}

/** kg of water on each m² of bottom below which a bath is called dry: a film of 0.1 mm. */
const film = 0.1;

/**
 * Puts together what the steps of one bath ask for.
 *
 * @param salts kg of each in the tank
 * @throws RangeError as `boilingPoint`, `wallLoss` and `surfaceLoss`
 * @example bathModel(setup, { sodiumHydroxide: 4 }, undefined, {}).least // 1.33 kg
 */
export function bathModel(
  setup: SimulationSetup,
  salts: Brine,
  departure: CurveDeparture | undefined,
  { curve }: SimulationOptions,
): BathModel {
  const pressure = setup.air?.pressure ?? ordinaryAir.pressure;
  const boiling = bathBoiling(salts, pressure, departure, curve);
  return {
    heat: new BathHeat(salts),
    boiling,
    losses: bathLosses(setup),
    steam: steamHeat(pressure),
    steel: steelTable(),
    pressure,
    least: Math.max(boiling.least, film * setup.tank.length * setup.tank.width),
  };
}
