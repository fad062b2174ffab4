import { brineDensity } from "../physics/brineDensity.ts";
import type { Brine } from "../physics/types.ts";
import { salts as kinds } from "../physics/types.ts";
import { steelDensity } from "./bathModel.ts";
import { saltMass } from "./saltMasses.ts";

/** wt% of hydroxide in hydroxide and water, and K from which its density is published so far. */
const published = [
  [20, 273.15],
  [30, 283.15],
  [50, 293.15],
  [60, 333.15],
  [70, 343.15],
  [80, 423.15],
] as const;

/**
 * Volume of a bath with the parts in it. A brine too strong for its cold, where no density is published, counts at the
 * lowest temperature that is: up to 2 % too large.
 *
 * @param salts kg of each in the tank
 * @param water kg
 * @param T K
 * @param parts kg of steel
 * @returns m³
 * @throws RangeError above 80 wt% hydroxide
 * @example bathVolume({ sodiumHydroxide: 4, sodiumNitrate: 2 }, 4.5, 417.6, 0) // 0.00687 m³
 */
export function bathVolume(salts: Brine, water: number, T: number, parts: number): number {
  const brine = Object.fromEntries(kinds.map((kind) => [kind, (salts[kind] ?? 0) / water])) as Brine;
  const hydroxide = salts.sodiumHydroxide ?? 0;
  const strength = (100 * hydroxide) / (water + hydroxide) - 1e-9;
  const [, lowest] = published.find(([most]) => strength <= most) ?? [80, 423.15];
  // A hair above, where the range begins.
  const counted = Math.min(473.15, Math.max(T, lowest + 1e-9));
  return (water + saltMass(salts)) / brineDensity(brine, counted) + parts / steelDensity;
}

/** Whether a bath overflows its tank, asked at every step: the density is worked out anew only where it may matter. */
export class Brim {
  readonly #capacity: number;
  #perKilogram = 0;
  #water = Number.NaN;
  #T = Number.NaN;

  /** @param capacity m³ of the tank */
  constructor(capacity: number) {
    this.#capacity = capacity;
  }

  /** As `bathVolume` takes them. */
  over(salts: Brine, mass: number, water: number, T: number, parts: number): boolean {
    // No bath is thinner than water at 165 °C, of 902 kg/m³ (IAPWS): most are far from the brim.
    if (mass / 900 + parts / steelDensity < this.#capacity) return false;
    const moved = Math.abs(T - this.#T) < 20 && Math.abs(water / this.#water - 1) < 0.02;
    // 20 K and 2 % of the water change the density by less than 3 % together.
    if (moved && mass * this.#perKilogram * 1.03 + parts / steelDensity < this.#capacity) return false;
    const volume = bathVolume(salts, water, T, parts);
    this.#perKilogram = (volume - parts / steelDensity) / mass;
    this.#water = water;
    this.#T = T;
    return volume > this.#capacity;
  }
}
