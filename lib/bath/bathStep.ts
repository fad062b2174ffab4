import { plainWater } from "./bathEnthalpy.ts";
import { quietVapour } from "./bathLosses.ts";
import type { BathModel } from "./bathModel.ts";

/** Where a bath stands. */
export interface BathStand {
  /** kg. */
  water: number;
  /** K. */
  T: number;
  /** kg, the tank's and that of the parts in it. */
  steel: number;
  /** J of all that. */
  energy: number;
  /** J/K and J per kg of water: slopes of the brine's enthalpy as last worked out, close to here: enough to look ahead. */
  byT: number;
  byWater: number;
}

/** What flows in, steadily for the whole step. */
export interface BathFlows {
  /** W into the bath from the burner. */
  fire: number;
  /** kg/s of water and the enthalpy that it brings, W. */
  feed: number;
  feedHeat: number;
  /** kg/s of parts and the enthalpy that they bring, W. */
  steel: number;
  steelHeat: number;
}

/** What one step did; the same object is filled anew each time. */
export interface StepDone {
  boiled: boolean;
  /** kg that evaporated, kg that boiled off, and the enthalpy that both took, J. */
  evaporated: number;
  flashed: number;
  steamEnthalpy: number;
  /** J that plain water would hold which the feed brought, at the bath's temperature, and which left as steam. */
  feedAtBath: number;
  steamAtBath: number;
  /** J lost. */
  walls: number;
  top: number;
  /** Share of the step after which the bath reached its boil; 0 where it boiled from the start. */
  reached: number;
}

/** Of the energy: a Newton step that finds a miss below this leaves one of about its square. */
const nearly = 1e-7;

/** A step that has done nothing. */
export function nothingDone(): StepDone {
  return {
    boiled: false,
    evaporated: 0,
    flashed: 0,
    steamEnthalpy: 0,
    feedAtBath: 0,
    steamAtBath: 0,
    walls: 0,
    top: 0,
    reached: 0,
  };
}

/** J of a bath with its steel. */
export function energyOf(model: BathModel, water: number, T: number, steel: number): number {
  return model.heat.at(water, T) + steel * model.steel.at(T);
}

/**
 * One step: rates at its middle, then down to the boiling line where it ends above it. What the step adds to the energy
 * is what came in less what went out, to rounding: `settle` finds water and temperature that hold just that.
 *
 * @param model of the bath
 * @param stand at the start; moved to the end
 * @param flows in
 * @param dt s
 * @param done filled with what happened
 * @example bathStep(model, stand, flows, 10, nothingDone())
 */
export function bathStep(model: BathModel, stand: BathStand, flows: BathFlows, dt: number, done: StepDone): void {
  const { heat, boiling, losses, steel } = model;
  const { water, T, byWater } = stand;
  const capacity = stand.byT + stand.steel * steel.slope(T);
  const steam = model.steam(T);
  const boilsAt = boiling.at(water);
  const evaporates = quiet(model, T, boilsAt, steam, byWater);
  const gains = flows.fire - losses.walls(T) - losses.top(T) + flows.feedHeat + flows.steelHeat - evaporates * steam;
  const fills = flows.feed - evaporates;
  const warms = (gains - byWater * fills - steel.at(T) * flows.steel) / capacity;
  const half = dt / 2;
  let midT = T + half * warms;
  let midWater = water + half * fills;
  let midBoils = boiling.at(midWater);
  if (midT > midBoils) {
    midWater -= (capacity * (midT - midBoils)) / (steam - byWater - capacity * boiling.slope);
    midBoils = boiling.at(midWater);
    midT = midBoils;
  }

  const midSteam = model.steam(midT);
  if (losses.quiet && midT < midBoils) heat.at(midWater, midT);
  done.walls = dt * losses.walls(midT);
  done.top = dt * losses.top(midT);
  done.evaporated = dt * quiet(model, midT, midBoils, midSteam, heat.byWater);
  done.flashed = 0;
  done.boiled = false;
  done.reached = 0;
  done.steamEnthalpy = done.evaporated * midSteam;
  const plain = plainWater(midT);
  done.feedAtBath = dt * flows.feed * plain;
  done.steamAtBath = done.evaporated * plain;
  stand.energy += dt * (flows.fire + flows.feedHeat + flows.steelHeat) - done.walls - done.top - done.steamEnthalpy;
  stand.water += dt * flows.feed - done.evaporated;
  stand.steel += dt * flows.steel;
  stand.T = 2 * midT - T;
  settle(model, stand, Math.max(0, boilsAt - T), done);
}

/** kg/s that evaporate from a bath of temperature T; taking up damp from the air is left out. */
function quiet(model: BathModel, T: number, boils: number, steam: number, byWater: number): number {
  const { losses, pressure } = model;
  if (!losses.quiet) return 0;
  // Heat of evaporation over plain water's sets how the vapour pressure falls below the boil.
  const vapour = T < boils ? quietVapour(T, boils, pressure, (steam - byWater) / (steam - plainWater(T))) : pressure;
  return losses.evaporates(T) * Math.max(0, vapour - losses.airVapour);
}

/**
 * Finds the temperature of a bath whose water, steel and energy are known; where that is above its boil, lets water
 * flash until the rest is at its boil.
 *
 * @param stand its `T` is the first guess
 * @param short K that it was short of its boil before
 * @param done what flashed is added to it
 * @example settle(model, stand, 0, nothingDone())
 */
export function settle(model: BathModel, stand: BathStand, short: number, done: StepDone): void {
  const boils = model.boiling.at(stand.water);
  // Well below the boil there is no need to ask what the bath would hold at it.
  if (stand.T < boils - 2 && cool(model, stand, boils)) return;
  const excess = stand.energy - energyOf(model, stand.water, boils, stand.steel);
  if (excess > 0) {
    const capacity = model.heat.byT + stand.steel * model.steel.slope(boils);
    done.reached = short / (short + excess / capacity);
    flash(model, stand, boils, excess, capacity, done);
  } else cool(model, stand, boils);
}

/** Newton on the temperature, in which the energy is nearly straight; false where that is above the boil. */
function cool(model: BathModel, stand: BathStand, boils: number): boolean {
  const { heat, steel } = model;
  const close = nearly * (Math.abs(stand.energy) + 1e5 * stand.water);
  let T = Math.min(stand.T, boils);
  for (let i = 0; i < 12; i++) {
    const miss = stand.energy - energyOf(model, stand.water, T, stand.steel);
    T += miss / (heat.byT + stand.steel * steel.slope(T));
    if (Math.abs(miss) < close) break;
  }
  stand.T = T;
  stand.byT = heat.byT;
  stand.byWater = heat.byWater;
  return T <= boils;
}

/** Newton on the water left: the steam leaves at the mean of the boiling points before and after. */
function flash(
  model: BathModel,
  stand: BathStand,
  boils: number,
  excess: number,
  capacity: number,
  done: StepDone,
): void {
  const { heat, boiling } = model;
  const before = stand.water;
  const close = nearly * (Math.abs(stand.energy) + 1e5 * before);
  let perKilogram = model.steam(boils) - heat.byWater - capacity * boiling.slope;
  let water = before - excess / perKilogram;
  let T = boils;
  let steam = 0;
  let mean = boils;
  for (let i = 0; i < 12; i++) {
    // A wild step never leaves the bath without water: Newton comes back from there.
    water = Math.max(water, 0.01 * before);
    T = boiling.at(water);
    mean = (boils + T) / 2;
    steam = model.steam(mean);
    const miss = stand.energy - energyOf(model, water, T, stand.steel) - (before - water) * steam;
    perKilogram = steam - heat.byWater - (heat.byT + stand.steel * model.steel.slope(T)) * boiling.slope;
    water -= miss / perKilogram;
    if (Math.abs(miss) > close) continue;
    T = boiling.at(water);
    mean = (boils + T) / 2;
    steam = model.steam(mean);
    break;
  }
  done.boiled = true;
  done.flashed += before - water;
  done.steamEnthalpy += (before - water) * steam;
  done.steamAtBath += (before - water) * plainWater(mean);
  // What the steam took is what the bath no longer has; the miss left is far below rounding of a step's heat.
  stand.energy -= (before - water) * steam;
  stand.water = water;
  stand.T = T;
  stand.byT = heat.byT;
  stand.byWater = heat.byWater;
}
