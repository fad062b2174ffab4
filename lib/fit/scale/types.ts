import type { Doubtful } from "../../bath/types.ts";
import type { Brine } from "../../physics/types.ts";
import type { FittedRun } from "../run/types.ts";

/** Inside of a tank, m. */
export interface ScaleTank {
  readonly length: number;
  readonly width: number;
  /** Of the tank itself, up to its rim. */
  readonly depth: number;
  /** How deep the liquid stands; absent: between two thirds of the tank and all of it, and the answers are wider. */
  readonly liquidDepth?: number;
  /** Of its steel; 0.003 where absent. */
  readonly plate?: number;
  /** Of the long and short walls, m and W/(m K); bare where absent. */
  readonly insulation?: { readonly thickness: number; readonly conductivity: number };
}

/** Burners of one kind, spread evenly along the tank's length. */
export interface ScaleBurners {
  readonly count: number;
  /** m, of the hole in each. */
  readonly jetDiameter: number;
  /** Pa over the air's, as the regulator's gauge shows it. */
  readonly pressure: number;
  /** Whether a skirt or flue keeps the gas along the tank; not where absent. */
  readonly skirted?: boolean;
}

export interface ScaleSetup {
  readonly tank: ScaleTank;
  readonly burners: ScaleBurners;
}

/**
 * What a fit of the old setup has to say: a `FittedRun` as it is, or the same few numbers from elsewhere. Its "heat into
 * the bath" counts where it is there, else its boil-off while water is fed.
 */
export interface FitToScale {
  /** kg/s. */
  readonly boilOff: { readonly value: number; readonly standardUncertainty: number };
  readonly parameters?: readonly Pick<FittedRun["parameters"][number], "name" | "value" | "standardUncertainty">[];
  readonly covariance?: FittedRun["covariance"];
}

/** Plain water on the new tank's fire. All but the readings or one of the weights may be absent. */
export interface PlainWaterLog {
  /** kg in the tank at the first reading. */
  readonly water: Doubtful;
  /** s and K, in the order of time; those within 1.5 K of the boil are left aside. */
  readonly readings?: readonly { readonly time: number; readonly temperature: number }[];
  /** kg that the cylinder lost in so many s. */
  readonly cylinder?: { readonly lost: Doubtful; readonly duration: number };
  /** kg that a rolling boil took in so many s, as the water that brought it back to its mark, or by weight. */
  readonly boiledOff?: { readonly mass: Doubtful; readonly duration: number };
}

export interface ScaleOptions {
  /** Pa, of the air. */
  readonly pressure: number;
  /** The bath's salts by weight, on any scale; hydroxide 2 to nitrate 1 where absent. */
  readonly salts?: Brine;
  /** K at which the bath is to boil; 417.6 (292 °F) where absent. */
  readonly target?: number;
  /** K of the air; 294 where absent. */
  readonly air?: number;
  /** K of the bath when the burners are lit; the air's where absent. */
  readonly start?: number;
  /** K of the water that is fed; 288.7 where absent. */
  readonly feed?: number;
  /** kg of propane that the cylinder holds when full, and in it now: 4.5 to 50. */
  readonly cylinder?: { readonly size: number; readonly contents: number };
  readonly plainWaterLog?: PlainWaterLog;
  /** 50 to 100,000; 2,000 where absent. Answers to 200 come at once and differ by some 5 % of their width. */
  readonly draws?: number;
  /** Whole number; 1 where absent. The same seed gives the same answers. */
  readonly seed?: number;
}

/** An answer of the scaling: the median of its draws. `Infinity` where the bath may never get there. */
export interface ScaledAnswer {
  readonly value: number;
  readonly standardUncertainty: number;
  readonly interval95: readonly [low: number, high: number];
}

export interface ScaledSetup {
  /** kg/s of water that leave while the feed holds the bath at its target; 0 where the fire cannot. */
  readonly boilOff: ScaledAnswer;
  /** kg/s of water to feed so that the bath stays at its target: what boils off. */
  readonly feed: ScaledAnswer;
  /** s from lighting the burners to the boil; has no upper end where the fire may never bring it there. */
  readonly heatUp: ScaledAnswer;
  /** s from lighting the burners to 10 °F (5.56 K) below the boil. */
  readonly timeTo10Below: ScaledAnswer;
  /** kg/s of propane. */
  readonly gas: ScaledAnswer;
  /** kg of propane from lighting the burners to the boil. */
  readonly gasToBoil: ScaledAnswer;
  /** W that the cylinder has to give off, gross. */
  readonly cylinderDraw: ScaledAnswer;
  /** W that a cylinder so full gives off without end in that air, gross; absent where no cylinder was given. */
  readonly cylinderGives?: ScaledAnswer & {
    /** False where it is ours by wetted wall: nothing is published for cylinders other than of 100 lb. */
    readonly published: boolean;
  };
  /** K/s at which the boiling point climbs when nothing is fed. */
  readonly driftUnfed: ScaledAnswer;
  /** W into the bath, losses taken off; below 0 where walls and top lose more than the fire brings. */
  readonly heatIntoBath: ScaledAnswer;
  /** Of the gas's gross heat, the share that enters the bath, 0..1. */
  readonly share: ScaledAnswer;
  /** W that walls and top lose at the target, beside the steam. */
  readonly losses: ScaledAnswer;
  /** Probability, 0..1, that the fire keeps the bath at a steady boil. */
  readonly boilsSteadily: number;
  /** Draws that were worked, and how many equally likely ones they are worth. */
  readonly draws: number;
  readonly worth: number;
  /** What a maker should hear, in plain sentences. */
  readonly remarks: readonly string[];
}

/** One measurement, and the half-width of the boil-off (share of its value, 95 %) that it would leave. */
export interface MeasurementWorth {
  readonly what: string;
  /** How to do it, in one sentence for the maker. */
  readonly how: string;
  readonly on: "old tank" | "new tank";
  readonly boilOff: { readonly now: number; readonly after: number };
  /** The same of the gas. */
  readonly gas: { readonly now: number; readonly after: number };
  /** Share by which it narrows the boil-off, 0..1: the list is ranked by it. */
  readonly gain: number;
}

/** What plain proportion would say. */
export interface Proportion {
  /** kg/s. */
  readonly boilOff: number;
  /** Share by which that lies over (+) or under what physics says. */
  readonly over: ScaledAnswer;
}
