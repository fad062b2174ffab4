import type { Brine, CurveDeparture, Salt } from "../../physics/types.ts";

/** How a bath departs from the published boiling curve, and how sure that is: standard uncertainties of offset, K, and scale. */
export interface DoubtfulDeparture extends CurveDeparture {
  readonly offsetUncertainty?: number;
  readonly scaleUncertainty?: number;
}

/** What a bath is made of: kg of water and of each salt. */
export interface StandingBath {
  readonly water: number;
  readonly salts: Brine;
  /** Learnt from its own boil readings; the published curve with its full doubt where absent. */
  readonly departure?: DoubtfulDeparture;
}

/** One step of making a bath up, in the order in which it is done. */
export interface ChargeStep {
  readonly put: "water" | Salt | "ready-mixed salt";
  /** kg in all. */
  readonly mass: number;
  /** In how many equal lots, and kg of each. */
  readonly lots: number;
  readonly lot: number;
  /** K by which one lot warms the bath at the most, none of it lost; below 0 where it cools it. */
  readonly warms: number;
  readonly says: string;
}

/** What a bath will do, and how sure that is. K, kg. */
export interface ExpectedBoil {
  /** Where it will most likely boil, and the standard uncertainty of that. */
  readonly boilingPoint: number;
  readonly standardUncertainty: number;
  readonly interval95: readonly [low: number, high: number];
  /** The same doubt as water: standard uncertainty of what brings the bath to its target, kg. */
  readonly waterUncertainty: number;
  readonly says: string;
}

/** A charge of salt for a cold tank. */
export interface Charge {
  /** kg of each. */
  readonly salt: Brine;
  readonly saltTotal: number;
  /** kg. */
  readonly water: number;
  /** kg of salt for each kg of water. */
  readonly ratio: number;
  /** m³ of the bath at its boil, and kg. */
  readonly liquidVolume: number;
  readonly mass: number;
  readonly expected: ExpectedBoil;
  readonly steps: readonly ChargeStep[];
  readonly cautions: readonly string[];
}
