import { brineDensity } from "../../physics/brineDensity.ts";
import { departedSaltRatio } from "../../physics/departedBoilingPoint.ts";
import { needNumber, plain } from "../../physics/needNumber.ts";
import { needBrine } from "../../physics/readBrine.ts";
import { saltRatio } from "../../physics/saltRatio.ts";
import type { Brine } from "../../physics/types.ts";
import { saltMass, scaledSalts } from "../saltMasses.ts";
import { chargeCautions } from "./chargeCautions.ts";
import { chargeSteps } from "./chargeSteps.ts";
import { expectedBoil } from "./expectedBoil.ts";
import type { Charge, DoubtfulDeparture } from "./types.ts";

/** What a new bath is to be. Just one of `liquid`, `water` and `salt` says how much of it. */
export interface ChargeGivens {
  /** The salts' shares by weight, on any scale. */
  readonly salts: Brine;
  /** K, true boiling point wanted. */
  readonly target: number;
  /** Pa, of the air where it will boil. */
  readonly pressure: number;
  /** m³ of bath at its boil. */
  readonly liquid?: number;
  /** kg. */
  readonly water?: number;
  /** kg of all salts together. */
  readonly salt?: number;
  /** What other baths of this salt taught; the published curve where absent. */
  readonly departure?: DoubtfulDeparture;
  /** Whether the salts come mixed in one bag. */
  readonly readyMixed?: boolean;
}

/**
 * Salt and water for a new bath that boils at a target, in the order and lots in which it is made up cold, with how
 * unsure the salts' own boiling curve is.
 *
 * @param givens shares of the salts; target, K; pressure, Pa (65,000 to 105,000 with salts besides hydroxide); one of
 * liquid, m³ at the boil, water, kg, and salt, kg
 * @returns kg of each salt and of water, m³, steps, what it will likely read
 * @throws RangeError where not just one amount is given, for an amount not above 0, for a charge without hydroxide (what
 * nitrate alone does is not known well enough), and as `saltRatio` (no salts, a target below water's boil or above the range)
 * Source: `saltRatio`, `brineDensity` (2 % for a mix, 95 %), `saltCurvePrior` for the doubt.
 * @example
 * const charge = chargeFor({ salts: { sodiumHydroxide: 2, sodiumNitrate: 1 }, target: 417.6, pressure: 101_325, water: 4.5 });
 * charge.salt.sodiumHydroxide; // 4.005 kg
 * charge.saltTotal; // 6.008 kg
 * charge.liquidVolume; // 0.00688 m³
 * charge.expected.standardUncertainty; // 1.7 K: its own first boil decides
 */
export function chargeFor(givens: ChargeGivens): Charge {
  const { salts, target, pressure, departure, readyMixed = false } = givens;
  const said = (["liquid", "water", "salt"] as const).filter((one) => givens[one] !== undefined);
  const [only] = said;
  if (only === undefined || said.length > 1) {
    throw new RangeError(`invalid amount: ${said.join(" and ") || "none"}; just one of liquid, water and salt`);
  }
  needBrine(salts);
  if (saltMass(salts) > 0 && !((salts.sodiumHydroxide ?? 0) > 0)) {
    throw new RangeError(
      "invalid salts: none of them sodium hydroxide; how much nitrate or nitrite alone raises the boil is not known well enough to advise",
    );
  }
  const ratio = departure ? departedSaltRatio(target, pressure, salts, departure) : saltRatio(target, pressure, salts);
  if (!(ratio > 0)) {
    throw new RangeError(`invalid temperature: ${plain(target)} K; above the boiling point of plain water`);
  }
  const unit = scaledSalts(salts, 1 / saltMass(salts));
  const perWater = scaledSalts(unit, ratio);
  const volume = (1 + ratio) / brineDensity(perWater, target);
  let water: number;
  if (only === "liquid") water = needNumber("liquid", givens.liquid ?? 0, 1e-5, 100, "m³") / volume;
  else if (only === "water") water = needNumber("water", givens.water ?? 0, 0.01, 100_000, "kg");
  else water = needNumber("salt", givens.salt ?? 0, 0.01, 100_000, "kg") / ratio;
  const salt = scaledSalts(perWater, water);
  return {
    salt,
    saltTotal: ratio * water,
    water,
    ratio,
    liquidVolume: volume * water,
    mass: (1 + ratio) * water,
    expected: expectedBoil(target, water, salt, pressure, departure),
    steps: chargeSteps({ water: 0, salts: {} }, water, salt, readyMixed),
    cautions: chargeCautions,
  };
}
