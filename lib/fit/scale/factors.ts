import { remembered } from "../../bath/remembered.ts";
import { normalOf, quasiRandom } from "./quasiRandom.ts";

/**
 * What scaling is not sure of, each as a standard normal number. The order is that of the quasi-random points, whose
 * first coordinates are the most even: what matters most comes first.
 */
export const factorNames = [
  "fit",
  "build",
  "reach",
  "saturation",
  "gasPower",
  "wall",
  "wind",
  "widthPower",
  "crowding",
  "discharge",
  "coldShare",
  "top",
  "evaporation",
  "mass",
  "gauge",
  "droop",
  "oldJets",
  "newJets",
  "steel",
  "windOfLog",
  "skirt",
  "curveScale",
  "fill",
] as const;

export type FactorName = (typeof factorNames)[number];
export type Factors = Readonly<Record<FactorName, number>>;

/** Draws kept for each of the last seeds: scaling after scaling asks for the same ones. */
const kept = 5000;
const lists = remembered<(index: number) => Factors>(2);

/**
 * Draws of all factors, independent of each other before anything was measured.
 *
 * @param seed whole number
 * @returns the factors of draw 0, 1, ...
 * @example factorDraws(1)(0).wall === factorDraws(1)(0).wall // true
 */
export function factorDraws(seed: number): (index: number) => Factors {
  return lists(String(seed), () => {
    const point = quasiRandom(factorNames.length, seed);
    const known: Factors[] = [];
    const draw = (index: number): Factors => {
      const at = point(index);
      const one = {} as Record<FactorName, number>;
      for (const [i, name] of factorNames.entries()) one[name] = normalOf(at[i] as number);
      return one;
    };
    return (index) => {
      if (index >= kept) return draw(index);
      known[index] ??= draw(index);
      return known[index] as Factors;
    };
  });
}

/** A factor above 0 with a median and a spread as a share of it. */
export const spread = (median: number, share: number, z: number): number => median * Math.exp(share * z);

/**
 * Middles and standard uncertainties of the scaling, all judgements but where a source is named: they held on invented
 * tanks of three kinds, which is no proof of the physics.
 */
export const doubts = {
  /** Share of the gas's gross heat that enters, before anything was measured (see `burnerEfficiencyPrior`). */
  share: { bare: { value: 0.35, u: 0.1 }, skirted: { value: 0.5, u: 0.12 } },
  /** m along the tank over which one flame gives off its heat. */
  reach: { bare: 0.3, skirted: 0.45, u: 0.4 },
  /** Transfer units of the old flame: how near it is to having given all that it can. */
  saturation: { value: 0.8, u: 0.4 },
  widthPower: { value: 1.1, u: 0.5 },
  gasPower: { value: 0.45, u: 0.2 },
  /** How much flames that stand close take from each other, and m within which they do. */
  crowding: { value: 0.1, u: 0.15, within: 0.25 },
  /** ln: what a new build gets right or wrong by itself, and the wind of one day. */
  build: { bare: { value: 0.04, u: 0.09 }, skirted: { value: 0, u: 0.068 } },
  wind: { bare: 0.03, skirted: 0.02 },
  wall: 0.42,
  top: 0.35,
  discharge: { value: 0.85, u: 0.1 },
  /** Pa (0.35 psi) by which a gauge in psi is off, at most a fifth; a share of the pressure below 1 psi. */
  gauge: { psi: 2413, most: 0.2, low: 0.03 },
  /** Share of its pressure that a regulator loses for each burner. */
  droop: { value: 0.025, u: 0.02 },
  jets: 0.03,
  /** Share by which a cold bath takes more of the fire than one at its boil. */
  coldShare: { value: 0.15, u: 0.06 },
  evaporation: 0.08,
  /** Of the bath's weight at a known depth; and of how full a tank is whose depth of liquid nobody gave. */
  mass: 0.02,
  fill: { value: 0.83, u: 0.1 },
  steel: 0.3,
} as const;
