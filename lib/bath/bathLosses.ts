import { saturationPressureUnchecked } from "../physics/saturationPressure.ts";
import { surfaceLoss } from "../physics/surfaceLoss.ts";
import { wallLoss } from "../physics/wallLoss.ts";
import type { BathTank, SimulationSetup, SurroundingAir } from "./simulationTypes.ts";
import { tabulate, type UniformTable } from "./uniformTable.ts";

/** What a bath of temperature T, K, loses. */
export interface BathLosses {
  /** W. */
  walls(T: number): number;
  /** W, convection and radiation of the surface. */
  top(T: number): number;
  /** kg/s that evaporate for each Pa of vapour pressure over the air's. */
  evaporates(T: number): number;
  /** Whether anything evaporates below the boil. */
  readonly quiet: boolean;
  /** Pa, of the water in the air. */
  readonly airVapour: number;
}

export const ordinaryAir = { temperature: 293.15, pressure: 101_325, vapourPressure: 884 };

const coldest = 273.15;
/** K, where `surfaceLoss` ends; a hotter bath's is carried straight on. */
const hottestSurface = 433.15;
const hottestWall = 513.15;

let last: { readonly key: string; readonly losses: BathLosses } | undefined;

/**
 * Losses of a bath, as smooth functions of its temperature: computed ones from tables that are kept for the last tank
 * and air asked for; fitted ones straight. The walls count to the tank's full depth: steam and steel keep them hot.
 *
 * @throws RangeError as `wallLoss` and `surfaceLoss`
 * @example
 * const setup = { tank: { length: 0.965, width: 0.203, depth: 0.2 }, burner: { heat: 6000 } };
 * bathLosses(setup).walls(417.6); // 971 W
 */
export function bathLosses({ tank, losses = "computed", air = {} }: SimulationSetup): BathLosses {
  const around = { ...ordinaryAir, ...air };
  if (losses === "computed") {
    const key = JSON.stringify([tank.length, tank.width, tank.depth, tank.wall, around]);
    if (last?.key !== key) last = { key, losses: computed(tank, around) };
    return last.losses;
  }
  const { wall, top = 0, evaporation = 0 } = losses === "none" ? { wall: 0 } : losses;
  const { temperature, vapourPressure } = around;
  const area = tank.length * tank.width;
  return {
    walls: (T) => wall * (T - temperature),
    top: (T) => top * (T - temperature),
    // Handed over as heat; plain water's latent heat turns it into water.
    evaporates: (T) => (evaporation * area) / latentHeat(T),
    quiet: evaporation > 0,
    airVapour: vapourPressure,
  };
}

/**
 * J/kg of plain water, 273 to 433 K: straight within 1 % between the steam tables' 2,501 kJ/kg at 0 and 2,082 at 160 °C.
 *
 * @example latentHeat(417.6) // 2.1227e6 J/kg
 */
export function latentHeat(T: number): number {
  return 2.501e6 - 2619 * (T - 273.15);
}

function computed(tank: BathTank, air: Required<SurroundingAir>): BathLosses {
  const { length, width, depth, wall = {} } = tank;
  const { temperature, pressure, vapourPressure } = air;
  const side = {
    air: temperature,
    height: depth,
    pressure,
    ...(wall.emissivity === undefined ? {} : { emissivity: wall.emissivity }),
    ...(wall.insulation === undefined ? {} : { insulation: wall.insulation }),
  };
  const sides = 2 * (length + width) * depth;
  const area = length * width;
  const surface = (T: number, vapour: number) =>
    surfaceLoss({
      surface: T,
      air: temperature,
      length,
      width,
      vapourPressure: vapour,
      airVapourPressure: vapourPressure,
      pressure,
    });
  const walls = tabulate((T) => sides * wallLoss({ ...side, wall: T }), coldest, hottestWall, 10);
  const top = tabulate(
    (T) => {
      const { convection, radiation } = surface(T, 0);
      return area * (convection + radiation);
    },
    coldest,
    hottestSurface,
    10,
  );
  // What evaporates is a straight line in the vapour pressure: its slope is what a table needs.
  const span = 10_000;
  const evaporates = tabulate(
    (T) => (area * (surface(T, span).evaporated - surface(T, 0).evaporated)) / span,
    coldest,
    hottestSurface,
    20,
  );
  return {
    walls: (T) => walls.at(T),
    top: (T) => top.at(T),
    evaporates: (T) => evaporates.at(T),
    quiet: true,
    airVapour: vapourPressure,
  };
}

/**
 * Vapour pressure over a quiet bath: the air's where it boils, and falling below that as Clapeyron's equation says, by
 * its own heat of evaporation over plain water's.
 *
 * @param T K, of the bath; at most `boils`
 * @param boils K, its boiling point under `p`
 * @param p Pa, of the air
 * @param heat its heat of evaporation over that of plain water
 * @returns Pa
 * @example quietVapour(373.15, 419.53, 101_325, 1.2) // 17819 Pa: `brineVapourPressure` says 17684
 */
export function quietVapour(T: number, boils: number, p: number, heat: number): number {
  if (T >= boils) return p;
  lnPressure ??= tabulate((one) => Math.log(saturationPressureUnchecked(one)), 233.15, 513.15, 2);
  return p * Math.exp(heat * (lnPressure.at(T) - lnPressure.at(boils)));
}

/** ln Pa of plain water, once for all. */
let lnPressure: UniformTable | undefined;
