import { doubtful } from "../../bath/doubtful.ts";
import { evaporationHeat, saturationTemperature, waterEnthalpy } from "../../physics/index.ts";
import { needNumber } from "../../physics/needNumber.ts";
import { windOf } from "./flameShare.ts";
import type { Draw } from "./oneDraw.ts";
import type { Scene } from "./scene.ts";
import type { PlainWaterLog } from "./types.ts";
import { powerAt, timeAlong, type WarmingPath, warmingPath } from "./warmingPath.ts";

/** What a log of plain water found, as numbers that a draw can be held to: ln, and its standard uncertainty. */
interface Finding {
  readonly ln: number;
  readonly u: number;
  readonly predict: (draw: Draw) => number;
}

/** ln: gusts over ten minutes and heat that the burners and stand take. */
const gusts = 0.03;
/** K of a reading by itself; what the thermometer is off throughout falls out of a rise. */
const reading = 0.7;
/** Degrees of freedom of the tails: a log that disagrees widens the answer and does not break it. */
const tails = 6;

/** The new tank full of plain water on its new fire, on the day of the log. */
export function wateredHeating(scene: Scene, draw: Draw) {
  const calm = draw.heating.fire * (draw.calmShare / draw.share);
  return { ...draw.heating, fire: calm * Math.exp(windOf(scene.to, draw.factors.windOfLog)) };
}

/** Losses of the new tank at temperatures of plain water. */
export function waterPath(scene: Scene, temperatures: readonly number[]): WarmingPath {
  const boils = saturationTemperature(scene.pressure);
  return warmingPath(temperatures, { tank: scene.to.tank, air: scene.air, pressure: scene.pressure, boils, heat: 1 });
}

/** Mean of a few readings at one end of a log. */
function meanOf(list: NonNullable<PlainWaterLog["readings"]>) {
  const sum = (of: (one: (typeof list)[number]) => number) => list.reduce((all, one) => all + of(one), 0);
  return { time: sum(({ time }) => time) / list.length, T: sum(({ temperature }) => temperature) / list.length };
}

function warming(scene: Scene, { readings = [], water }: PlainWaterLog): Finding[] {
  const boils = saturationTemperature(scene.pressure);
  const rows = readings.filter(({ temperature }) => temperature < boils - 1.5);
  for (const { time, temperature } of readings) {
    needNumber("time in the log of plain water", time, -1e7, 1e7, "s");
    needNumber("temperature in the log of plain water", temperature, 273.15, 390, "K");
  }
  if (rows.length < 2) return [];
  const some = Math.max(1, Math.min(3, Math.floor(rows.length / 3)));
  const first = meanOf(rows.slice(0, some));
  const last = meanOf(rows.slice(-some));
  const rise = last.T - first.T;
  if (!(rise > 1 && last.time > first.time)) return [];
  const kg = doubtful("water in the log of plain water", water, 0.02);
  needNumber("water in the log of plain water", kg.value, 0.1, 2000, "kg");
  const path = waterPath(
    scene,
    [0, 1, 2, 3, 4, 5, 6, 7, 8].map((i) => first.T + (rise * i) / 8),
  );
  const capacity = (kg.value * (waterEnthalpy(last.T) - waterEnthalpy(first.T))) / rise;
  const u = Math.hypot(gusts, (reading * Math.sqrt(2 / some)) / rise, kg.u / kg.value);
  const predict = (draw: Draw) => Math.log(timeAlong(path, 8, wateredHeating(scene, draw), capacity + draw.steel));
  return [{ ln: Math.log(last.time - first.time), u, predict }];
}

/** W into plain water at its boil. */
export function boilingWater(scene: Scene): (draw: Draw) => number {
  const boils = saturationTemperature(scene.pressure);
  const path = waterPath(scene, [boils]);
  return (draw) => powerAt(path, 0, { ...wateredHeating(scene, draw), evaporation: 0 });
}

function weighed(scene: Scene, { cylinder, boiledOff }: PlainWaterLog): Finding[] {
  const found: Finding[] = [];
  const rate = (what: string, { mass, duration }: NonNullable<PlainWaterLog["boiledOff"]>) => {
    const kg = doubtful(what, mass, 0.02);
    needNumber(what, kg.value, 0.001, 200, "kg");
    needNumber(`time of ${what}`, duration, 60, 1e6, "s");
    return { ln: Math.log(kg.value / duration), u: kg.u / kg.value };
  };
  if (cylinder) {
    const { ln, u } = rate("weight lost by the cylinder", { mass: cylinder.lost, duration: cylinder.duration });
    found.push({ ln, u: Math.hypot(u, 0.02), predict: ({ gas }) => Math.log(gas) });
  }
  if (boiledOff) {
    const { ln, u } = rate("plain water boiled off", boiledOff);
    const latent = evaporationHeat({}, scene.pressure);
    const into = boilingWater(scene);
    const predict = (draw: Draw) => Math.log(Math.max(1e-9, into(draw) / latent));
    found.push({ ln, u: Math.hypot(u, gusts), predict });
  }
  return found;
}

/**
 * How likely a log of plain water in the new tank is in a draw's world, as a factor of its weight.
 *
 * @param scene of the scaling
 * @param log of plain water
 * @returns the weight, and how many findings there are
 * @throws RangeError for readings and weights out of range; Error where the log tells nothing
 * @example plainWater(scene, { water: 15, readings: [] }) // throws
 */
export function plainWater(scene: Scene, log: PlainWaterLog): (draw: Draw) => number {
  const found = [...warming(scene, log), ...weighed(scene, log)];
  if (found.length === 0) {
    throw new Error(
      "invalid log of plain water: it tells nothing; two readings of warming water, the cylinder's weight or the water boiled off",
    );
  }
  return (draw) => {
    let weight = 1;
    for (const { ln, u, predict } of found) {
      const away = (predict(draw) - ln) / u;
      // Infinitely long: the bath stands still in this world, and did not in the log.
      weight *= Number.isFinite(away) ? (1 + away ** 2 / tails) ** (-(tails + 1) / 2) : 1e-9;
    }
    return weight;
  };
}
