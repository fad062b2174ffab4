import { brineEnthalpyTotal } from "../physics/brineEnthalpy.ts";
import { zeroCelsius } from "../physics/constants.ts";
import { needNumber } from "../physics/needNumber.ts";
import { needBrine } from "../physics/readBrine.ts";
import { sodaEnthalpy } from "../physics/sodaEnthalpy.ts";
import type { Brine } from "../physics/types.ts";
import { waterEnthalpy } from "../physics/waterEnthalpy.ts";
import { tabulate, type UniformTable } from "./uniformTable.ts";

// Of this file, not of at.ts: only so do all engines work it in, and a simulation asks for it half a million times a second.
const at = (list: ArrayLike<number>, i: number): number => list[i] as number;

const lowest = 0.16;
const nodes = 336;
const spacing = (1 - lowest) / nodes;

/** Once for all baths: the hydroxide equation's cubic in °C, its coefficients against the water fraction, and plain water's enthalpy. */
interface Tables {
  readonly cubics: Float64Array;
  readonly water: UniformTable;
}
let made: Tables | undefined;

/** Coefficients in t of hydroxide solution's enthalpy, J/kg, less water's share: the equation is a cubic for each x. */
function cubicAt(x: number): number[] {
  const h = 60;
  const y = [0, 1, 2, 3].map((i) => {
    const T = zeroCelsius + h * i;
    return sodaEnthalpy(x, T) - waterEnthalpy(T) * x ** 8;
  });
  const [a, b, c, d] = [at(y, 0), at(y, 1), at(y, 2), at(y, 3)];
  const first = (b - a) / h;
  const second = (c - 2 * b + a) / (2 * h * h);
  const third = (d - 3 * c + 3 * b - a) / (6 * h * h * h);
  return [a, first - h * second + 2 * h * h * third, second - 3 * h * third, third];
}

function make(): Tables {
  // Two points beyond each end, so that every slope is a quartic's.
  const rows = Array.from({ length: nodes + 5 }, (_, i) => cubicAt(lowest + (i - 2) * spacing));
  const cubics = new Float64Array(16 * nodes);
  for (let k = 0; k < 4; k++) {
    const y = (i: number) => at(rows[i + 2] as number[], k);
    const rise = (i: number) => (y(i - 2) - 8 * y(i - 1) + 8 * y(i + 1) - y(i + 2)) / 12;
    for (let i = 0; i < nodes; i++) {
      const [low, high, a, b] = [y(i), y(i + 1), rise(i), rise(i + 1)];
      cubics.set([low, a, 3 * (high - low) - 2 * a - b, 2 * (low - high) + a + b], 16 * i + 4 * k);
    }
  }
  return { cubics, water: tabulate(waterEnthalpy, zeroCelsius, zeroCelsius + 240, 1) };
}

/** Enthalpy of plain water, J/kg, at T, K: `waterEnthalpy` from a table, carried straight on below 0 °C. */
export function plainWater(T: number): number {
  made ??= make();
  return made.water.at(T);
}

/** Enthalpy of one bath with its slopes, many thousand times a run: `bathEnthalpy` without its checks. */
export class BathHeat {
  readonly #hydroxide: number;
  readonly #others: number;
  readonly #tables: Tables;
  /** J, J/K and J per kg of water, as the last `at` left them. */
  total = 0;
  byT = 0;
  byWater = 0;

  /** @param salts kg in the tank */
  constructor(salts: Brine) {
    made ??= make();
    this.#tables = made;
    this.#hydroxide = salts.sodiumHydroxide ?? 0;
    // The other salts add a constant heat capacity: what they add from 0 to 1 °C.
    const { sodiumHydroxide: _, ...others } = salts;
    this.#others = brineEnthalpyTotal(others, 1, zeroCelsius + 1) - brineEnthalpyTotal({}, 1, zeroCelsius + 1);
  }

  /** Works `total`, `byT` and `byWater` out. */
  at(water: number, T: number): number {
    const { cubics, water: plain } = this.#tables;
    const t = T - zeroCelsius;
    const h = plain.at(T);
    const cp = plain.slope(T);
    if (this.#hydroxide === 0) {
      this.byWater = h;
      this.byT = water * cp + this.#others;
      this.total = water * h + this.#others * t;
      return this.total;
    }
    const solution = water + this.#hydroxide;
    const x = water / solution;
    const place = (x - lowest) / spacing;
    const i = Math.min(nodes - 1, Math.max(0, Math.floor(place)));
    const u = place - i;
    const k = 16 * i;
    const a = at(cubics, k) + u * (at(cubics, k + 1) + u * (at(cubics, k + 2) + u * at(cubics, k + 3)));
    const b = at(cubics, k + 4) + u * (at(cubics, k + 5) + u * (at(cubics, k + 6) + u * at(cubics, k + 7)));
    const c = at(cubics, k + 8) + u * (at(cubics, k + 9) + u * (at(cubics, k + 10) + u * at(cubics, k + 11)));
    const d = at(cubics, k + 12) + u * (at(cubics, k + 13) + u * (at(cubics, k + 14) + u * at(cubics, k + 15)));
    const da = at(cubics, k + 1) + u * (2 * at(cubics, k + 2) + 3 * u * at(cubics, k + 3));
    const db = at(cubics, k + 5) + u * (2 * at(cubics, k + 6) + 3 * u * at(cubics, k + 7));
    const dc = at(cubics, k + 9) + u * (2 * at(cubics, k + 10) + 3 * u * at(cubics, k + 11));
    const dd = at(cubics, k + 13) + u * (2 * at(cubics, k + 14) + 3 * u * at(cubics, k + 15));
    const x2 = x * x;
    const x4 = x2 * x2;
    const x7 = x4 * x2 * x;
    const share = x7 * x;
    const here = a + t * (b + t * (c + t * d)) + h * share;
    const byX = (da + t * (db + t * (dc + t * dd))) / spacing + 8 * h * x7;
    this.total = solution * here + this.#others * t;
    this.byT = solution * (b + t * (2 * c + 3 * t * d) + cp * share) + this.#others;
    this.byWater = here + (1 - x) * byX;
    return this.total;
  }
}

/**
 * Enthalpy of a bath as the simulation counts it: that of `brineEnthalpy` for the whole bath, from tables that keep it
 * to 0.1 J per kg. Where `brineEnthalpy` refuses a brine as too strong for its cold, the equation, a cubic in °C, is
 * carried on: its heat capacity stays level there (50 wt% hydroxide: 3.24 kJ/(kg K) at 10 °C, 3.20 at 90 °C), and the
 * heat of salt that comes out is not in it.
 *
 * @param salts kg of each salt in the tank
 * @param water kg, above 0; hydroxide at most 84 wt% of hydroxide and water
 * @param T K, 243.15 to 513.15
 * @returns J, counted as `brineEnthalpy` counts
 * @throws RangeError outside these ranges
 * Source: as `brineEnthalpy`.
 * @example
 * bathEnthalpy({ sodiumHydroxide: 4, sodiumNitrate: 2 }, 4.5, 417.6); // 5.9257e6 J
 */
export function bathEnthalpy(salts: Brine, water: number, T: number): number {
  needBrine(salts);
  needNumber("water", water, 1e-9, 1e6, "kg");
  needNumber("temperature", T, 243.15, 513.15, "K");
  const hydroxide = salts.sodiumHydroxide ?? 0;
  needNumber("hydroxide", (100 * hydroxide) / (water + hydroxide), 0, 100 * (1 - lowest), "wt%");
  return new BathHeat(salts).at(water, T);
}
