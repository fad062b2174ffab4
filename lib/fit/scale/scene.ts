import {
  type Brine,
  boilingPointSlope,
  brineDensity,
  brineHeatCapacity,
  departedSaltRatio,
  evaporationHeat,
  steamEnthalpy,
  waterEnthalpy,
} from "../../physics/index.ts";
import type { FitToScale, ScaleOptions, ScaleSetup, ScaleTank } from "./types.ts";
import { type WarmingPath, warmingPath } from "./warmingPath.ts";

/** All that a scaling works out once, before its draws. SI. */
export interface Scene {
  readonly from: ScaleSetup;
  readonly to: ScaleSetup;
  readonly pressure: number;
  readonly air: number;
  /** W/m² that the old tank's wall and top lose at the target. */
  readonly oldWall: number;
  readonly oldTop: number;
  /** The new tank from cold to the target, and the place of 10 °F below it. */
  readonly path: WarmingPath;
  readonly tenBelow: number;
  /** J/K of the new tank's bath at the depth that was given (or its whole depth), and of its steel. */
  readonly bath: number;
  readonly steel: number;
  /** Whether the depth of liquid is known. */
  readonly depthKnown: boolean;
  /** J/kg of steam from water that is fed, and K/s of drift for each W into a bath that is not fed. */
  readonly fed: number;
  readonly drift: number;
  /** What the fit says of the old tank; absent without one. */
  readonly known?: FitKnown;
}

export interface FitKnown {
  /** W into the bath, losses taken off, and its standard uncertainty as ln. */
  readonly heat: number;
  readonly u: number;
  /** Scale of the boiling curve, its standard uncertainty, and how it goes with the heat. */
  readonly scale: number;
  readonly scaleU: number;
  readonly together: number;
}

const usualSalts: Brine = { sodiumHydroxide: 2, sodiumNitrate: 1 };
/** K at which a bath's heat capacity is taken for the whole way: in between, where every brine of use stays dissolved. */
const middle = 365;
/** J/(m³ K) of steel: 7,850 kg/m³ by 490 J/(kg K). */
const steelHeat = 7850 * 490;
/** K: 10 °F. */
const tenFahrenheit = 10 / 1.8;

/** J/K of a tank's steel: floor and four walls. */
export function steelOf({ length, width, depth, plate = 0.003 }: ScaleTank): number {
  return steelHeat * plate * (length * width + 2 * (length + width) * depth);
}

/**
 * Reads a fit: its heat into the bath, or else its boil-off.
 *
 * @param fit as handed in
 * @param fed J/kg
 * @param prior scale of the boiling curve before any log
 * @example fitKnown({ boilOff: { value: 2e-3, standardUncertainty: 1e-4 } }, 2.7e6).heat // 5400
 */
export function fitKnown(fit: FitToScale, fed: number, prior = { value: 1, u: 0.07 }): FitKnown {
  const named = (name: string) => fit.parameters?.find((one) => one.name === name);
  const heat = named("heat into the bath");
  const scale = named("boiling curve scale");
  const of = heat ?? fit.boilOff;
  const u = Math.min(2, of.standardUncertainty / of.value);
  const names: readonly string[] = fit.covariance?.names ?? [];
  const entry = (a: string, b: string) => fit.covariance?.matrix[names.indexOf(a)]?.[names.indexOf(b)] ?? 0;
  const variances =
    entry("heat into the bath", "heat into the bath") * entry("boiling curve scale", "boiling curve scale");
  const both = entry("heat into the bath", "boiling curve scale");
  return {
    heat: heat ? heat.value : fit.boilOff.value * fed,
    u,
    scale: scale?.value ?? prior.value,
    scaleU: scale?.standardUncertainty ?? prior.u,
    together: variances > 0 ? Math.max(-0.999, Math.min(0.999, both / Math.sqrt(variances))) : 0,
  };
}

/** K from a start to a boil: even steps to 10 °F below, then fine ones, closing up on the boil. */
function temperatures(start: number, boils: number): { readonly T: readonly number[]; readonly tenBelow: number } {
  const below = Math.max(start, boils - tenFahrenheit);
  const coarse = Array.from({ length: 17 }, (_, i) => start + ((below - start) * i) / 16);
  const fine = Array.from({ length: 10 }, (_, i) => boils - (boils - below) * (1 - (i + 1) / 10) ** 1.5);
  return { T: [...coarse, ...fine], tenBelow: 16 };
}

/**
 * Works out what no draw changes.
 *
 * @throws RangeError as the physics it asks
 * @example sceneOf(undefined, setup, setup, { pressure: 101_325 }).fed // 2.70e6
 */
export function sceneOf(fit: FitToScale | undefined, from: ScaleSetup, to: ScaleSetup, options: ScaleOptions): Scene {
  const { pressure, salts = usualSalts, target = 417.6, air = 294, start = air, feed = 288.7 } = options;
  const fed = steamEnthalpy(target, pressure) - waterEnthalpy(feed);
  const known = fit && fitKnown(fit, fed);
  const offset = fit?.parameters?.find(({ name }) => name === "boiling point offset")?.value ?? 0;
  const departure = { offset, scale: known?.scale ?? 1 };
  const ratio = departedSaltRatio(target, pressure, salts, departure);
  const whole = Object.values(salts).reduce((sum, kg) => sum + kg, 0);
  const brine = Object.fromEntries(Object.entries(salts).map(([kind, kg]) => [kind, (kg / whole) * ratio])) as Brine;
  const heat = evaporationHeat(brine, pressure);
  const { T, tenBelow } = temperatures(start, target);
  const given = { air, pressure, boils: target, heat: heat / evaporationHeat({}, pressure) };
  const old = warmingPath([target], { ...given, tank: from.tank });
  const { tank } = to;
  const mass = tank.length * tank.width * (tank.liquidDepth ?? tank.depth) * brineDensity(brine, target);
  const bath = mass * brineHeatCapacity(brine, middle);
  const water = mass / (1 + ratio);
  const slope = boilingPointSlope(brine, pressure);
  const climbing = mass * brineHeatCapacity(brine, target) * slope;
  return {
    from,
    to,
    pressure,
    air,
    oldWall: old.wall[0] as number,
    oldTop: old.top[0] as number,
    path: warmingPath(T, { ...given, tank }),
    tenBelow,
    bath,
    steel: steelOf(tank),
    depthKnown: tank.liquidDepth !== undefined,
    fed,
    drift: slope / (water * heat + climbing),
    ...(known ? { known } : {}),
  };
}
