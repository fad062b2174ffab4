import { departedSaltRatio } from "../../physics/departedBoilingPoint.ts";
import { needNumber, plain } from "../../physics/needNumber.ts";
import { needBrine } from "../../physics/readBrine.ts";
import type { Brine } from "../../physics/types.ts";
import { bathVolume } from "../bathVolume.ts";
import { addedSalts, saltMass, scaledSalts } from "../saltMasses.ts";
import { chargeCautions } from "./chargeCautions.ts";
import { chargeSteps } from "./chargeSteps.ts";
import { expectedBoil } from "./expectedBoil.ts";
import { asPublished, boilOf, needStanding, perWater } from "./standing.ts";
import type { Charge, StandingBath } from "./types.ts";

/** What a standing bath is to become. */
export interface StrengthenGivens {
  readonly bath: StandingBath;
  /** K. */
  readonly target: number;
  /** Pa. */
  readonly pressure: number;
  /** Shares by weight of what goes in; the bath's own mix where absent. Never without hydroxide. */
  readonly salts?: Brine;
  /** kg of water that goes in with it, for the level; none where absent. */
  readonly water?: number;
  readonly readyMixed?: boolean;
}

/**
 * Salt that strengthens a standing bath so that it boils at a target: a charge to a cold bath, never to a warm one. A
 * bath that only lost salt's strength to water needs none: let it boil, and the water leaves.
 *
 * @param givens the bath, kg; target, K; pressure, Pa; shares of what goes in; kg of water that goes in with it
 * @returns as `chargeFor`; `salt` and `water` are what goes in, the rest is of the whole bath
 * @throws RangeError where the bath boils at the target or above already, for a charge without hydroxide (how much
 * nitrate or nitrite alone raises the boil is known to a factor of six only: no advice), and as `departedSaltRatio`
 * Source: as `boilingPoint`.
 * @example
 * const bath = { water: 5, salts: { sodiumHydroxide: 4, sodiumNitrate: 2 } };
 * strengthen({ bath, target: 417.6, pressure: 101_325 }).saltTotal; // 0.676 kg
 */
export function strengthen(givens: StrengthenGivens): Charge {
  const { bath, target, pressure, water = 0, readyMixed = false } = givens;
  needStanding(bath);
  const { departure = asPublished } = bath;
  const shares = givens.salts ?? bath.salts;
  needBrine(shares);
  for (const [kind, share] of Object.entries(shares)) needNumber(`share of ${kind}`, share, 0, 100_000, "");
  const whole = saltMass(shares);
  if (!((shares.sodiumHydroxide ?? 0) > 0)) {
    throw new RangeError(
      "invalid salts: none of them sodium hydroxide; how much nitrate or nitrite alone raises the boil is not known well enough to advise",
    );
  }
  needNumber("water", water, 0, 100_000, "kg");
  const wet = { ...bath, water: bath.water + water };
  const boils = boilOf(wet, pressure);
  if (boils >= target) {
    throw new RangeError(
      `invalid target: ${plain(target)} K; above ${plain(boils)} K, where this bath boils already: weaken it with water`,
    );
  }
  const unit = scaledSalts(shares, 1 / whole);
  const strong = (mass: number): number => {
    const salts = addedSalts(bath.salts, scaledSalts(unit, mass));
    return saltMass(salts) / wet.water / departedSaltRatio(target, pressure, salts, departure);
  };
  // What is needed rises with what is put in: bracket by doubling, then halve.
  let high = 0.1 * saltMass(bath.salts);
  while (strong(high) < 1 && high < 1000 * wet.water) high *= 2;
  let low = 0;
  for (let i = 0; i < 80 && high - low > 1e-12 * high; i++) {
    const middle = (low + high) / 2;
    if (strong(middle) < 1) low = middle;
    else high = middle;
  }
  const mass = (low + high) / 2;
  const salt = scaledSalts(unit, mass);
  const salts = addedSalts(bath.salts, salt);
  const total = saltMass(salts);
  return {
    salt,
    saltTotal: mass,
    water,
    ratio: saltMass(perWater(salts, wet.water)),
    liquidVolume: bathVolume(salts, wet.water, target, 0),
    mass: wet.water + total,
    expected: expectedBoil(target, wet.water, salts, pressure, bath.departure),
    steps: chargeSteps({ water: bath.water, salts: bath.salts }, water, salt, readyMixed),
    cautions: ["Only into this bath when it is cold, fire off: break the crust first.", ...chargeCautions],
  };
}
