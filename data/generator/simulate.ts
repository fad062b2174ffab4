import { boils, type Departure } from "./boilingTable.ts";
import type { Random } from "./random.ts";

/** An invented bath on an invented fire. SI units; temperatures in °C. */
export interface Scenario {
  readonly hydroxide: number;
  readonly nitrate: number;
  readonly water: number;
  readonly pressure: number;
  readonly departure: Departure;
  /** °C at the start. */
  readonly starts: number;
  /** W into the brine at full fire, losses taken off. */
  readonly heat: number;
  /** Share of the heat by which the fire sags or grows over an hour. */
  readonly sag: number;
  /** Shares: short gusts, long gusts, and now and then wind. */
  readonly gusts: readonly [short: number, long: number];
  readonly wind: boolean;
  /** Heat to warm a kilogram of cold water in the brine, J, what dilution frees taken off. */
  readonly cold: number;
  readonly mixing: number;
  readonly lag: number;
  /** s, share of full fire. */
  readonly burner: readonly (readonly [time: number, share: number])[];
  /** s, kg, °C of what goes in. */
  readonly parts: readonly (readonly [time: number, mass: number])[];
  /** s at the boil before the run ends. */
  readonly holds: number;
  /** °C: when the maker pours, and how: true kg. */
  readonly pours: (time: number, shown: number, sinceBoil: number) => number;
}

/** What happened, second by second, and in total: the truth that no log knows. */
export interface Truth {
  readonly firstBoil: number;
  readonly end: number;
  /** kg of steam from the first boil to the end. */
  readonly steam: number;
  readonly waterAtBoil: number;
  readonly waterAtEnd: number;
  readonly bath: readonly number[];
  readonly shown: readonly number[];
  readonly poured: readonly { readonly time: number; readonly mass: number }[];
}

/**
 * Runs the bath second by second: warm-up, boil, cold slugs that mix in and may stop the boil, gusts, wind, a burner
 * that is changed, parts that go in cold, a thermometer that lags.
 */
export function simulate(s: Scenario, random: Random): Truth {
  const salt = s.hydroxide + s.nitrate;
  let water = s.water;
  let waiting = 0;
  let T = s.starts;
  let shown = s.starts;
  let short = random.normal();
  let long = random.normal();
  let wind = 0;
  let firstBoil = -1;
  let waterAtBoil = 0;
  let steam = 0;
  let partsCold = 0;
  const bath: number[] = [];
  const read: number[] = [];
  const poured: { time: number; mass: number }[] = [];
  for (let time = 0; time < 6 * 3600; time++) {
    if (firstBoil >= 0 && time >= firstBoil + s.holds) break;
    short += -short / 180 + Math.sqrt(2 / 180) * random.normal();
    long += -long / 1600 + Math.sqrt(2 / 1600) * random.normal();
    if (s.wind && random.chance(1 / 900)) wind = random.from(0.1, 0.35);
    wind *= 1 - 1 / 120;
    let share = 1;
    for (const [at, to] of s.burner) if (time >= at) share = to;
    const since = firstBoil < 0 ? 0 : time - firstBoil;
    const fire =
      s.heat * share * Math.max(0, 1 + s.gusts[0] * short + s.gusts[1] * long - wind + (s.sag * since) / 3600);
    const mass = s.pours(time, shown, firstBoil < 0 ? -1 : since);
    if (mass > 0) {
      waiting += mass;
      poured.push({ time, mass });
    }
    for (const [at, kg] of s.parts) if (time === at) partsCold += kg * 490 * (T - 20);
    const mixed = waiting / s.mixing;
    waiting -= mixed;
    const capacity = 4180 * water + 1950 * salt;
    const fromParts = partsCold / 40;
    partsCold -= fromParts;
    T += (fire - fromParts - mixed * s.cold) / capacity;
    water += mixed;
    const line = boils(s.hydroxide / water, s.nitrate / water, s.pressure, s.departure);
    if (T >= line) {
      if (firstBoil < 0) {
        firstBoil = time;
        waterAtBoil = water;
      }
      // Boiling off dm kilograms takes dm λ and lets the line rise by its slope: solve for the two at once.
      const up = boils(s.hydroxide / (water * 0.999), s.nitrate / (water * 0.999), s.pressure, s.departure) - line;
      const perKilogram = up / (0.001 * water);
      const lost = ((T - line) * capacity) / (2.56e6 + perKilogram * capacity);
      water -= lost;
      steam += lost;
      T = boils(s.hydroxide / water, s.nitrate / water, s.pressure, s.departure);
    } else if (firstBoil < 0 && T > 80) {
      // A hot surface gives off a little before it boils.
      water -= 0.00002;
    }
    shown += (T - shown) / s.lag;
    bath.push(T);
    read.push(shown);
  }
  return {
    firstBoil,
    end: bath.length - 1,
    steam,
    waterAtBoil,
    waterAtEnd: water + waiting,
    bath,
    shown: read,
    poured,
  };
}
