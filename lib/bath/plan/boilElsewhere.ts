import { boilingPoint } from "../../physics/boilingPoint.ts";
import { departedSaltRatio } from "../../physics/departedBoilingPoint.ts";
import { saltCurvePrior } from "../../physics/saltCurvePrior.ts";
import type { Brine } from "../../physics/types.ts";
import { scaledSalts } from "../saltMasses.ts";
import { asPublished } from "./standing.ts";
import type { DoubtfulDeparture } from "./types.ts";

/** The same bath under another pressure. */
export interface BoilElsewhere {
  /** K, where it boils there, and by how much that is higher. */
  readonly boilingPoint: number;
  readonly change: number;
  /** Standard uncertainty of the change, K. */
  readonly standardUncertainty: number;
  /** kg of salt for each kg of water: now, and what the old boiling point asks for under the new pressure. */
  readonly ratio: number;
  readonly ratioWanted: number;
  /** kg of water that has to leave (above 0) or go in (below 0) for that, for each kg now in the bath. */
  readonly leaves: number;
}

/** A change of pressure moves the boil by the vapour pressure's slope, known far better than the curve: 3 % of it, a judgement. */
const slopeDoubt = 0.03;

/**
 * What a bath will read on a day with another barometer, or at another altitude (`standardPressure` turns one into Pa):
 * nothing left it and nothing went in.
 *
 * @param givens shares of the salts by weight; where it boils now, K; pressure now and then, Pa; the bath's departure
 * @returns where it boils then, K, and what would bring the old boiling point back
 * @throws RangeError as `saltRatio` and `boilingPoint`; where the old boiling point is out of reach under the new pressure
 * Source: as `boilingPoint`. A departure is carried over in K.
 * @example
 * const there = boilElsewhere({ salts: { sodiumHydroxide: 2, sodiumNitrate: 1 }, boils: 417.594, from: 101_325, to: 84_310 });
 * there.boilingPoint; // 412.0 K: 281.9 °F at 5,000 ft
 * there.ratioWanted; // 1.54
 */
export function boilElsewhere(givens: {
  readonly salts: Brine;
  readonly boils: number;
  readonly from: number;
  readonly to: number;
  readonly departure?: DoubtfulDeparture;
}): BoilElsewhere {
  const { salts, boils, from, to, departure = asPublished } = givens;
  const ratio = departedSaltRatio(boils, from, salts, departure);
  const { offset, scale, pivot = saltCurvePrior.pivot }: DoubtfulDeparture = departure;
  const sum = Object.values(salts).reduce((all: number, one: number | undefined) => all + (one ?? 0), 0);
  const brine = scaledSalts(salts, ratio / sum);
  // The departure was learnt at this strength: it is taken as it was there, not as the new temperature would have it.
  const published = pivot + (boils - offset - pivot) / scale;
  const change = boilingPoint(brine, to) - published;
  const ratioWanted = departedSaltRatio(boils, to, salts, departure);
  return {
    boilingPoint: boils + change,
    change,
    standardUncertainty: slopeDoubt * Math.abs(change),
    ratio,
    ratioWanted,
    leaves: 1 - ratio / ratioWanted,
  };
}
