import { boils, type Departure } from "./boilingTable.ts";

/** What an invented tank and its brine are made of. SI units; temperatures in °C. */
export interface RoughTank {
  readonly hydroxide: number;
  readonly nitrate: number;
  /** kg when the burner is lit. */
  readonly water: number;
  readonly pressure: number;
  readonly departure: Departure;
  /** J/K of the tank's steel. */
  readonly steel: number;
  readonly air: number;
  readonly tap: number;
  /** W that walls and top lose at `hot`; below 0 where flue gas warms the wall more than the air cools it. */
  readonly losses: number;
  readonly hot: number;
  /** J that a kilogram of water frees when it thins the brine as it was at the start. */
  readonly dilution: number;
  /** kg/s that leave a surface just below its boil. */
  readonly topEvaporation: number;
}

/** All that changes in a bath. Mutable: `stepBath` moves it on by a second. */
export interface BathState {
  water: number;
  /** kg poured that have not mixed in. */
  waiting: number;
  hydroxide: number;
  nitrate: number;
  /** Share of the hydroxide that counts (carbonate does not). */
  active: number;
  /** J above 20 °C of brine and steel, heat of dilution included; what waits is not in it. */
  enthalpy: number;
  T: number;
}

/** J/(kg K). */
const heatOf = { water: 4180, salt: 1950 };
const zero = 20;

/** J/kg of steam above water of 20 °C. */
export function steamHeat(T: number): number {
  return 2.417e6 + 1860 * T;
}

/** J/kg of cold water above water of 20 °C. */
export function coldHeat(tap: number): number {
  return heatOf.water * (tap - zero);
}

/** Pa, from Antoine's equation; only ratios of it are used. */
function saturation(T: number): number {
  return 133.322 * 10 ** (8.07131 - 1730.63 / (233.426 + T));
}

/** J above 20 °C of a brine: a state function of water, salt and temperature, so that the balance closes. */
export function brineEnthalpy(tank: RoughTank, water: number, salt: number, T: number): number {
  const strength = (tank.hydroxide + tank.nitrate) / tank.water;
  const mixing = (2 * tank.dilution * (salt / strength) ** 1.5) / Math.sqrt(water);
  return (heatOf.water * water + heatOf.salt * salt) * (T - zero) + mixing;
}

function capacity(tank: RoughTank, water: number, salt: number): number {
  return heatOf.water * water + heatOf.salt * salt + tank.steel;
}

/** °C at which the bath boils with so much water in it. */
export function boilsAt(tank: RoughTank, state: BathState, water: number): number {
  return boils((state.hydroxide * state.active) / water, state.nitrate / water, tank.pressure, tank.departure);
}

export function startBath(tank: RoughTank, T: number): BathState {
  const { water, hydroxide, nitrate } = tank;
  const enthalpy = brineEnthalpy(tank, water, hydroxide + nitrate, T) + tank.steel * (T - zero);
  return { water, waiting: 0, hydroxide, nitrate, active: 1, enthalpy, T };
}

/** W that walls and top lose to the air at a bath temperature: free convection and radiation. */
export function lossesAt(tank: RoughTank, T: number): number {
  const warmer = Math.max(0, T - tank.air) / (tank.hot - tank.air);
  const fourth = (t: number) => (t + 273.15) ** 4;
  const glow = (fourth(T) - fourth(tank.air)) / (fourth(tank.hot) - fourth(tank.air));
  return tank.losses * (0.55 * warmer ** 1.25 + 0.45 * glow);
}

/** What one second did. */
export interface Second {
  readonly vapour: number;
  /** J that left with the vapour, and J lost by walls and top. */
  readonly withVapour: number;
  readonly lost: number;
  readonly boils: boolean;
}

/**
 * One second of the bath: heat comes in, some of what waits mixes in, vapour leaves a surface below its boil, and what
 * stands above the boiling line flashes down onto it.
 *
 * @param fire W of the fire into the bath, losses not taken off
 * @param cool W that cold parts take
 * @param mixing s
 */
export function stepBath(tank: RoughTank, state: BathState, fire: number, cool: number, mixing: number): Second {
  const lost = lossesAt(tank, state.T);
  const mixed = state.waiting / mixing;
  state.waiting -= mixed;
  state.water += mixed;
  state.enthalpy += fire - lost - cool + mixed * coldHeat(tank.tap);
  const salt = state.hydroxide + state.nitrate;
  const line = boilsAt(tank, state, state.water);
  let vapour = 0;
  if (state.T < line) vapour = tank.topEvaporation * Math.max(0, saturation(state.T) / saturation(line) - 0.02);
  let withVapour = vapour * steamHeat(state.T);
  state.water -= vapour;
  state.enthalpy -= withVapour;
  const mixingHeat = brineEnthalpy(tank, state.water, salt, zero);
  state.T = zero + (state.enthalpy - mixingHeat) / capacity(tank, state.water, salt);
  const surface = boilsAt(tank, state, state.water);
  const boiling = state.T >= surface;
  if (boiling) {
    const flashed = flash(tank, state, surface);
    vapour += flashed;
    const taken = flashed * steamHeat(surface);
    withVapour += taken;
    state.water -= flashed;
    state.enthalpy -= taken;
    const left = brineEnthalpy(tank, state.water, salt, zero);
    state.T = zero + (state.enthalpy - left) / capacity(tank, state.water, salt);
  }
  return { vapour, withVapour, lost, boils: boiling };
}

/** kg that have to leave as steam for the bath to stand on its boiling line. */
function flash(tank: RoughTank, state: BathState, surface: number): number {
  const salt = state.hydroxide + state.nitrate;
  const steam = steamHeat(surface);
  const over = (gone: number) => {
    const water = state.water - gone;
    const T = boilsAt(tank, state, water);
    return state.enthalpy - gone * steam - brineEnthalpy(tank, water, salt, T) - tank.steel * (T - zero);
  };
  let low = 0;
  let atLow = over(0);
  let gone = atLow / 4e6;
  // Nearly straight over a second's steam: the secant is there in two or three steps.
  for (let i = 0; i < 4 && Math.abs(atLow) > 1e-6; i++) {
    const here = over(gone);
    const next = gone - (here * (gone - low)) / (here - atLow);
    low = gone;
    atLow = here;
    if (!Number.isFinite(next)) break;
    gone = next;
  }
  return gone;
}

/** Takes brine out of the tank, a share of it all, and says what went: kg of water, kg of salt, J. */
export function takeBrine(tank: RoughTank, state: BathState, share: number) {
  const salt = state.hydroxide + state.nitrate;
  const heat = share * brineEnthalpy(tank, state.water, salt, state.T);
  const gone = { water: share * state.water, salt: share * salt, heat };
  state.water *= 1 - share;
  state.hydroxide *= 1 - share;
  state.nitrate *= 1 - share;
  state.enthalpy -= heat;
  return gone;
}
