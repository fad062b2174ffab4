import { grossHeat, type MarchedFlame, type MarchedTank, marched } from "./flameMarch.ts";
import { type Random, random } from "./random.ts";

/** A setup as its maker tells it. SI. */
export interface InventedSetup {
  readonly tank: {
    readonly length: number;
    readonly width: number;
    readonly depth: number;
    readonly liquidDepth: number;
  };
  readonly burners: {
    readonly count: number;
    readonly jetDiameter: number;
    readonly pressure: number;
    readonly skirted: boolean;
  };
}

/** What the new tank truly does. */
export interface TankTruth {
  readonly boilOff: number;
  /** s; Infinity where it never boils. */
  readonly heatUp: number;
  readonly timeTo10Below: number;
  readonly gas: number;
  readonly boilsSteadily: boolean;
}

export interface InventedTanks {
  readonly from: InventedSetup;
  readonly to: InventedSetup;
  /** What a log of the old tank found: kg/s, and its standard uncertainty. */
  readonly found: { readonly value: number; readonly standardUncertainty: number };
  readonly truth: TankTruth;
  /** Ten minutes of plain water in the new tank, a reading a minute: the told kg and K. */
  readonly plainWater: { readonly water: number; readonly readings: readonly { time: number; temperature: number }[] };
  /** Half an hour of its boil on the same day: kg of water to bring it back to its mark, and of gas by the scale. */
  readonly halfHour: { readonly boiled: number; readonly gas: number };
}

export interface InventOptions {
  /** Length of the new tank over the old one's, and its burners. */
  readonly times?: number;
  readonly burners?: number;
  /** A fire so small for its tank that it hardly boils. */
  readonly weak?: boolean;
  /** An old tank that has its own log: inside, m, the W that truly enter it before losses and the W that it loses. */
  readonly logged?: {
    readonly length: number;
    readonly width: number;
    readonly depth: number;
    readonly fire: number;
    readonly losses: number;
    readonly found: { readonly value: number; readonly standardUncertainty: number };
  };
}

const psi = 6894.76;
const boil = 417.6;
const around = 294;

/** Numbers of this invented world that hold for both tanks. */
interface World {
  readonly flame: MarchedFlame;
  readonly discharge: number;
  readonly gauge: number;
  readonly droop: number;
  /** W/(m² K) of cold wall, and of the surface beside the steam. */
  readonly wall: number;
  readonly top: number;
  /** m of long wall that the smoke of one burner keeps warm. */
  readonly washed: number;
  /** W/m² that a quiet surface takes just below the boil, and K in which that falls e-fold. */
  readonly steams: number;
  readonly fold: number;
}

/** kg/s of propane through one hole: Bernoulli with the gas's expansion below the speed of sound, choked above. */
function throughJet(diameter: number, pressure: number, discharge: number): number {
  const area = (Math.PI * diameter * diameter) / 4;
  const ahead = 101_325 + pressure;
  const density = ahead / (188.55 * 289);
  if (ahead / 101_325 > 1.728) return discharge * area * 0.634 * Math.sqrt(ahead * density);
  const expansion = 1 - (0.78 * pressure) / (1.131 * ahead);
  return discharge * area * expansion * Math.sqrt(2 * density * pressure);
}

function gasOf({ burners }: InventedSetup, world: World, jets: number): number {
  const { count, jetDiameter, pressure } = burners;
  const first = throughJet(jetDiameter, pressure, world.discharge);
  // A regulator sinks with what flows, not with what hangs on it: 1 g/s is a large burner.
  const sinks = Math.min(0.4, world.droop * count * Math.sqrt(first / 1e-3));
  return count * jets * throughJet(jetDiameter, Math.max(500, (pressure + world.gauge) * (1 - sinks)), world.discharge);
}

function lossesOf({ tank, burners }: InventedSetup, world: World, T: number): number {
  const { length, width, depth } = tank;
  const stretch = length / burners.count;
  const cold = 1 - 0.9 * Math.min(1, world.washed / stretch) ** 0.8;
  const wall = (2 * length * cold + 2 * width) * depth * world.wall;
  const hotter = Math.max(0, T - around) ** 1.15 / (boil - around) ** 0.15;
  return (wall + length * width * world.top) * hotter;
}

const marchedTank = ({ tank, burners }: InventedSetup): MarchedTank => ({
  length: tank.length,
  width: tank.width,
  burners: burners.count,
});

function drawWorld(r: Random, skirted: boolean): World {
  const spill = skirted ? r.from(0.2, 0.7) : r.from(0.08, 0.28);
  return {
    flame: {
      air: r.from(1.2, 2.2),
      glow: r.from(0.06, 0.16),
      clearance: r.from(0.05, 0.11),
      touch: 30,
      spill,
      draws: skirted ? r.from(0.6, 2) : r.from(0.3, 1),
      grows: r.from(0.15, 0.6),
      choke: r.from(-0.05, 0.2),
    },
    discharge: 0.85 * (1 + 0.1 * r.normal()),
    gauge: r.from(-0.6, 0.6) * psi,
    droop: r.from(0.0, 0.06),
    wall: 16 * Math.exp(r.from(-0.65, 0.65)),
    top: 10 * Math.exp(r.from(-0.5, 0.5)),
    washed: (skirted ? 0.45 : 0.28) * Math.exp(r.from(-0.5, 0.5)),
    steams: 10_700 * (1 + 0.07 * r.normal()),
    fold: r.from(26, 33),
  };
}

/** The touch with which so many W enter the old tank; undefined where none does. */
function fitted(world: World, setup: InventedSetup, gas: number, fire: number): World | undefined {
  const at = (touch: number): World => ({ ...world, flame: { ...world.flame, touch } });
  const enters = (touch: number) => marched(at(touch).flame, marchedTank(setup), gas / setup.burners.count, boil);
  let [low, high] = [2, 200];
  if (enters(low) > fire || enters(high) < fire) return undefined;
  for (let i = 0; i < 30; i++) {
    const middle = Math.sqrt(low * high);
    if (enters(middle) < fire) low = middle;
    else high = middle;
  }
  return at(low);
}

function drawSetups(r: Random, options: InventOptions): { from: InventedSetup; to: InventedSetup } {
  const skirted = r.chance(0.5);
  const { logged } = options;
  const length = logged?.length ?? r.from(0.5, 0.75);
  const width = logged?.width ?? r.from(0.13, 0.2);
  const depth = logged?.depth ?? r.from(0.17, 0.24);
  const liquidDepth = depth * r.from(0.6, 0.75);
  const jetDiameter = (options.weak ? r.from(0.85, 1.2) : r.from(1.2, 1.8)) / 1000;
  const pressure = (options.weak ? r.from(2, 7) : r.from(3, 12)) * psi;
  const burners = { count: 1, jetDiameter, pressure, skirted };
  const times = options.times ?? r.from(1.25, 3);
  const count = options.burners ?? r.pick([1, 2, 3, 4]);
  return {
    from: { tank: { length, width, depth, liquidDepth }, burners },
    to: {
      tank: { length: length * times, width: width * r.from(0.9, 1.25), depth, liquidDepth },
      burners: { ...burners, count, pressure: r.chance(0.3) ? pressure * r.from(0.7, 1.4) : pressure },
    },
  };
}

/** Seconds to warm to `last`, in half kelvins; Infinity where the fire gives out. */
function warms(first: number, last: number, capacity: number, power: (T: number) => number): number {
  let time = 0;
  for (let T = first; T < last; T += 0.5) {
    const into = power(T + 0.25);
    if (!(into > 0)) return Infinity;
    time += (0.5 * capacity) / into;
  }
  return time;
}

const steelOf = ({ length, width, depth }: InventedSetup["tank"], plate: number) =>
  3.85e6 * plate * (length * width + 2 * (length + width) * depth);

/** Ten minutes of plain water, a reading to the whole °F each minute. */
function waterLog(r: Random, kg: number, capacity: number, power: (T: number) => number) {
  const readings: { time: number; temperature: number }[] = [];
  const high = r.normal();
  let T = r.from(285, 297);
  for (let time = 0; time <= 600; time++) {
    if (time % 60 === 0) {
      const shown = Math.round((T + high + 0.4 * r.normal()) * 1.8) / 1.8;
      readings.push({ time, temperature: shown });
    }
    T = Math.min(373, T + power(T) / capacity);
  }
  return { water: kg * (1 + 0.02 * r.normal()), readings };
}

/** Pa over plain water (Magnus). */
const steamPressure = (T: number) => 610.94 * Math.exp((17.625 * (T - 273.15)) / (T - 30.11));

/**
 * An old tank, a longer one and what it truly does, in a world of its own: smoke that is marched along the floor, losses
 * by a power law, a regulator that sinks with the flow.
 */
export function inventTanks(seed: number, options: InventOptions = {}): InventedTanks {
  for (let again = 0; again < 200; again++) {
    const made = tryTanks(random((seed ^ Math.imul(again + 1, 0x9e3779b9)) >>> 0), options);
    if (made) return made;
  }
  throw new Error(`no tanks for seed ${seed}`);
}

function tryTanks(r: Random, options: InventOptions): InventedTanks | undefined {
  const { from, to } = drawSetups(r, options);
  const { skirted } = from.burners;
  const drawn = drawWorld(r, skirted);
  const enters = skirted ? 0.5 + 0.11 * r.normal() : 0.35 + 0.09 * r.normal();
  if (enters < 0.12 || enters > 0.75) return undefined;
  const { logged } = options;
  // Where the old tank has its own log, its fire is what it is, and the jet is that of such a fire.
  const old = logged ? withJet(from, drawn, logged.fire / enters) : from;
  const next = { ...to, burners: { ...to.burners, jetDiameter: old.burners.jetDiameter } };
  if (old.burners.jetDiameter < 0.0006 || old.burners.jetDiameter > 0.004) return undefined;
  const jets = (n: number) => 1 + (0.03 / Math.sqrt(n)) * r.normal();
  const oldGas = gasOf(old, drawn, logged ? 1 : jets(1));
  const fire = logged?.fire ?? enters * grossHeat(oldGas);
  const found = fitted(drawn, old, oldGas, fire);
  if (!found) return undefined;
  const world = logged ? { ...found, ...lossesLike(found, old, logged.losses) } : found;
  const net = fire - lossesOf(old, world, boil);
  if (!(net > 600)) return undefined;
  const breeze = () => Math.exp(0.02 - Math.abs(0.035 * r.normal()));
  const told = (net * breeze() * (1 + 0.05 * r.normal())) / 2.7e6;
  const gas = gasOf(next, world, jets(next.burners.count));
  const built = 1 + (skirted ? 0.12 : 0.16) * r.from(-1, 1);
  const day = breeze() * built;
  const into = (T: number, part: number) =>
    part * marched(world.flame, marchedTank(next), gas / next.burners.count, T) - lossesOf(next, world, T);
  const { length, width, liquidDepth } = next.tank;
  const area = length * width;
  const steel = steelOf(next.tank, 0.003 * Math.exp(r.from(-0.3, 0.4)));
  const capacity = area * liquidDepth * 1530 * (1 + 0.02 * r.normal()) * 2900 * (1 + 0.02 * r.normal()) + steel;
  const power = (T: number) => into(T, day) - area * world.steams * Math.exp((T - boil) / world.fold);
  const atBoil = into(boil, day);
  const water = area * liquidDepth * 998;
  const logDay = breeze() * built;
  const wet = (T: number) => into(T, logDay) - 0.1075 * area * Math.max(0, steamPressure(T) - 900);
  return {
    from: old,
    to: next,
    found: logged?.found ?? { value: told, standardUncertainty: 0.05 * told },
    truth: {
      boilOff: Math.max(0, atBoil) / (2.7e6 * (1 + 0.01 * r.normal())),
      heatUp: warms(around, boil, capacity, power),
      timeTo10Below: warms(around, boil - 10 / 1.8, capacity, power),
      gas,
      boilsSteadily: power(boil) > 0,
    },
    halfHour: {
      boiled: (1800 * Math.max(0, into(373, logDay)) * (1 + 0.02 * r.normal())) / 2.256e6,
      gas: 1800 * gas + 0.015 * r.normal(),
    },
    plainWater: waterLog(r, water, water * 4186 + steel, wet),
  };
}

/** The jet through which gas of so many W flows. */
function withJet(setup: InventedSetup, world: World, heat: number): InventedSetup {
  const gas = gasOf(setup, world, 1);
  const jetDiameter = setup.burners.jetDiameter * Math.sqrt(heat / grossHeat(gas));
  return { ...setup, burners: { ...setup.burners, jetDiameter } };
}

/** Walls and top that lose so many W, if a world can: never less than a third of what it drew. */
function lossesLike(world: World, setup: InventedSetup, losses: number): Pick<World, "wall" | "top"> {
  const factor = Math.max(0.33, losses / lossesOf(setup, world, boil));
  return { wall: world.wall * factor, top: world.top * factor };
}
