import { departedSaltRatio } from "../../physics/departedBoilingPoint.ts";
import { needNumber, plain } from "../../physics/needNumber.ts";
import type { Brine } from "../../physics/types.ts";
import { bathVolume } from "../bathVolume.ts";
import { saltMass, scaledSalts } from "../saltMasses.ts";
import { chargeCautions } from "./chargeCautions.ts";
import { chargeSteps } from "./chargeSteps.ts";
import { asPublished, boilOf, needStanding } from "./standing.ts";
import type { ChargeStep, StandingBath } from "./types.ts";

/** Of wet sludge, the part that is bath clinging to it. A judgement; nothing is published. */
const liquorInSludge = 0.5;

/** What left a bath on parts and with sludge. */
export interface AfterDragOut {
  /** kg of each salt, and of water, that left. */
  readonly saltLost: Brine;
  readonly waterLost: number;
  /** The bath as it stands now, and K where it boils: as before, since salt and water left together. */
  readonly left: StandingBath;
  readonly boilingPoint: number;
  /** kg of each salt and of water that bring back level and target: into the cold bath. */
  readonly restore: { readonly salt: Brine; readonly water: number; readonly steps: readonly ChargeStep[] };
  /** K, where it would boil with its level brought back by water alone. */
  readonly withWaterAlone: number;
  readonly cautions: readonly string[];
}

/**
 * A bath after parts dragged some of it out and sludge was taken: what is left, and the salt and water that bring it
 * back to its level, boiling at the target.
 *
 * @param givens the bath before, kg; kg of bath dragged out; kg of wet sludge (half of it counts as bath; the rest, iron
 * and carbonate, was never counted as salt); target, K; pressure, Pa
 * @returns kg lost, the bath that is left, what restores it
 * @throws RangeError for losses below 0 or above half of the bath, and as `departedSaltRatio`
 * Source: as `boilingPoint`; the liquor in sludge is a judgement. Lye taken up by the air's carbonic acid (some 7 g of
 * carbonate an hour for a long tank) is not in it.
 * @example
 * const bath = { water: 4.5, salts: { sodiumHydroxide: 4, sodiumNitrate: 2 } };
 * const after = afterDragOut({ bath, dragOut: 0.5, target: 417.5, pressure: 101_325 });
 * after.waterLost; // 0.214 kg
 * after.restore.salt.sodiumHydroxide; // 0.19 kg
 */
export function afterDragOut(givens: {
  readonly bath: StandingBath;
  readonly dragOut: number;
  readonly sludge?: number;
  readonly target: number;
  readonly pressure: number;
  readonly readyMixed?: boolean;
}): AfterDragOut {
  const { bath, dragOut, sludge = 0, target, pressure, readyMixed = false } = givens;
  const salt = needStanding(bath);
  const mass = salt + bath.water;
  needNumber("drag-out", dragOut, 0, mass / 2, "kg");
  needNumber("sludge", sludge, 0, mass / 2, "kg");
  const lost = dragOut + liquorInSludge * sludge;
  if (lost > mass / 2) {
    throw new RangeError(`invalid drag-out: ${plain(lost)} kg in all; at most half of the bath's ${plain(mass)} kg`);
  }
  const share = lost / mass;
  const left = { ...bath, water: bath.water * (1 - share), salts: scaledSalts(bath.salts, 1 - share) };
  const boils = boilOf(left, pressure);
  const volume = bathVolume(bath.salts, bath.water, boils, 0);
  // As much as there was, at the strength that the target asks for.
  const ratio = departedSaltRatio(target, pressure, bath.salts, bath.departure ?? asPublished);
  const oneKilogram = scaledSalts(bath.salts, ratio / salt);
  const water = volume / bathVolume(oneKilogram, 1, target, 0);
  const goesIn = Math.max(0, ratio * water - salt * (1 - share));
  const more = scaledSalts(bath.salts, goesIn / salt);
  const moreWater = Math.max(0, water - left.water);
  const thin = { ...left, water: waterForVolume(left, volume, boils) };
  return {
    saltLost: scaledSalts(bath.salts, share),
    waterLost: bath.water * share,
    left,
    boilingPoint: boils,
    restore: {
      salt: more,
      water: moreWater,
      steps: saltMass(more) > 0 ? chargeSteps(left, moreWater, more, readyMixed) : [],
    },
    withWaterAlone: boilOf(thin, pressure),
    cautions: chargeCautions,
  };
}

/** kg of water with which a bath takes up a volume, m³: its own volume is nearly straight in its water. */
function waterForVolume({ water, salts }: StandingBath, volume: number, T: number): number {
  let there = water;
  for (let i = 0; i < 20; i++) {
    const miss = volume - bathVolume(salts, there, T, 0);
    there += 1000 * 0.92 * miss;
    if (Math.abs(miss) < 1e-12) break;
  }
  return there;
}
