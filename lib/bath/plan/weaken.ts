import { departedSaltRatio } from "../../physics/departedBoilingPoint.ts";
import { plain } from "../../physics/needNumber.ts";
import { bathVolume } from "../bathVolume.ts";
import { expectedBoil } from "./expectedBoil.ts";
import { asPublished, boilOf, needStanding } from "./standing.ts";
import type { ExpectedBoil, StandingBath } from "./types.ts";

/** Water that weakens a bath. */
export interface Weakening {
  /** kg to put in. */
  readonly water: number;
  /** m³ of the bath at its boil with it. */
  readonly liquidVolume: number;
  readonly expected: ExpectedBoil;
  readonly cautions: readonly string[];
}

/**
 * Water that brings a bath down to a target: cold before lighting, or as a thin steady feed while it boils.
 *
 * @param givens the bath, kg; target, K; pressure, Pa
 * @returns kg of water, and what the bath is then
 * @throws RangeError where the bath boils at the target or below already, and as `departedSaltRatio`
 * Source: as `boilingPoint`.
 * @example
 * const bath = { water: 4.2, salts: { sodiumHydroxide: 4, sodiumNitrate: 2 } };
 * weaken({ bath, target: 417.6, pressure: 101_325 }).water; // 0.294 kg
 */
export function weaken(givens: {
  readonly bath: StandingBath;
  readonly target: number;
  readonly pressure: number;
}): Weakening {
  const { bath, target, pressure } = givens;
  const mass = needStanding(bath);
  const boils = boilOf(bath, pressure);
  if (boils <= target) {
    throw new RangeError(
      `invalid target: ${plain(target)} K; below ${plain(boils)} K, where this bath boils: let it boil, water leaves by itself`,
    );
  }
  const water = mass / departedSaltRatio(target, pressure, bath.salts, bath.departure ?? asPublished);
  return {
    water: water - bath.water,
    liquidVolume: bathVolume(bath.salts, water, target, 0),
    expected: expectedBoil(target, water, bath.salts, pressure, bath.departure),
    cautions: [
      "Into a hot bath as a thin steady feed at the far end, never as a dump: cold water in a bath far above water's own boil can flash and throw caustic.",
      "Read again after it has mixed in; the salt's safety data sheet and your local rules come first.",
    ],
  };
}
