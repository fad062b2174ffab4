import type { Answer, BalanceGivens, Doubtful } from "../../bath/types.ts";
import type { Dimension } from "../../measure/types.ts";

/**
 * A burner at full fire: W of gas, gross heating value, alone or with how the flame is led (`skirted` where a skirt or
 * flue keeps the gas along the tank) or the share that reaches the bath; or the heat that reaches it, W.
 */
export type FitBurner =
  | Doubtful
  | { readonly power: Doubtful; readonly skirted?: boolean; readonly efficiency?: Doubtful }
  | { readonly heat: Doubtful };

/** What the setup tells a fit. All of it may be absent; what is there sharpens the prior. */
export interface FitGivens extends BalanceGivens {
  /** K. */
  readonly target: number;
  /** K, half-width. */
  readonly band: number;
  /** Inside of the tank, m. */
  readonly tank?: { readonly length: Doubtful; readonly width: Doubtful; readonly depth?: Doubtful };
  readonly burner?: FitBurner;
  /** K and Pa of the air around the tank (default 293 K). */
  readonly air?: { readonly temperature?: number };
}

/** How far the log drew a parameter from its prior: 1 - variance / prior variance. */
export interface Told {
  /** 0..1. */
  readonly share: number;
  readonly word: "nothing" | "some" | "much";
}

export interface FittedParameter {
  readonly name: ParameterName;
  readonly value: number;
  readonly standardUncertainty: number;
  readonly interval95: readonly [low: number, high: number];
  readonly dimension: Dimension;
  readonly prior: {
    readonly value: number;
    readonly standardUncertainty: number;
    readonly interval95: readonly [low: number, high: number];
    /** Where the prior comes from, in the maker's words. */
    readonly from: string;
  };
  readonly told: Told;
  readonly answer: Answer;
}

export type ParameterName =
  | "heat into the bath"
  | "water at the start"
  | "boiling point offset"
  | "boiling curve scale"
  | "thermometer lag"
  | "mixing time"
  | "cup"
  | `burner change ${number}`;

/** A pour that was probably made and not written down. */
export interface ProbablyUnwritten {
  /** 0..1. */
  readonly probability: number;
  /** s from the first row: between which rows, and about when. */
  readonly from: number;
  readonly to: number;
  readonly time: number;
  /** kg in all, and how many pours that is. */
  readonly mass: Answer;
  readonly count: number;
  /** Id of the entry after which it would stand. */
  readonly after?: string;
  readonly reason: string;
}

/** A reading that probably does not belong. */
export interface ProbablyMisread {
  readonly id: string;
  readonly line: number;
  readonly time: number;
  /** 0..1. */
  readonly probability: number;
  /** K: how far above (+) or below what the other readings say. */
  readonly off: number;
  readonly reason: string;
}

/** One thing to log next time, and how much narrower it would make the answers. */
export interface LogNext {
  readonly what: string;
  /** Why and how, in one sentence for the maker. */
  readonly how: string;
  /** Half of the 95 % interval over the value, of the boil-off, now and with it. */
  readonly boilOff: { readonly now: number; readonly after: number };
  /** 95 % half-width in kg, of the water that brings the bath back to target. */
  readonly waterToTarget: { readonly now: number; readonly after: number };
  /** Greatest share by which it narrows one of the answers, 0..1: the list is ranked by it. */
  readonly gain: number;
}

export type PatternName = "none" | "too few to tell" | "a drift" | "a bend" | "steps at the pours" | "neighbours agree";

/** One moment of the fitted bath. */
export interface FittedMoment {
  /** s from the first row. */
  readonly time: number;
  /** K: what a thermometer without error and lag would read, with its 95 % spread. */
  readonly T: number;
  readonly low: number;
  readonly high: number;
  /** kg of water in the tank. */
  readonly water: number;
  /** K. */
  readonly boilingPoint: number;
  /** Whether the bath is at its boil. */
  readonly boils: boolean;
}

/** Where the heat went from the first boil to the end of the log, J. */
export interface HeatWent {
  readonly from: number;
  readonly to: number;
  readonly steam: Answer;
  readonly makeUpWater: Answer;
  readonly parts: Answer;
  /** Into warming the bath as its boiling point climbs (below 0 where it fell). */
  readonly bath: Answer;
  /** All that the fire brought into the bath beyond what walls and top lost. */
  readonly intoBath: Answer;
  /** Lost by walls and top, by published correlations; absent where the tank's size is not known. */
  readonly wallsAndTop?: Answer;
  /** Gas burnt over the same time, gross; absent where the burner is not known. */
  readonly gas?: Answer;
}

export interface FittedRun {
  /** kg/s, mean from the first boil to the log's last row. */
  readonly boilOff: Answer;
  /** kg in the tank at the first row of the log. */
  readonly water: Answer;
  /** K by which the bath boils above (+) or below the published curve near its own heat. */
  readonly boilingPointOffset: Answer;
  readonly parameters: readonly FittedParameter[];
  /** Covariance of the parameters in the order of `parameters`, row after row, SI (ln for those that are positive). */
  readonly covariance: { readonly names: readonly ParameterName[]; readonly matrix: readonly (readonly number[])[] };
  /** kg/s of cold water that would have held the ratio. */
  readonly makeUp: Answer;
  /** kg of water that brings the bath back to its target at the end of the log; below 0: too much water is in it. */
  readonly waterToTarget: Answer;
  /** s from the end of the log until the boiling point leaves the band, left alone on the last fire; 0 if it is out. */
  readonly untilOutOfBand: Answer;
  readonly probablyUnwritten: readonly ProbablyUnwritten[];
  readonly probablyMisread: readonly ProbablyMisread[];
  readonly residuals: {
    readonly points: readonly {
      readonly id: string;
      readonly time: number;
      /** K: reading less the fitted bath as the thermometer shows it. */
      readonly residual: number;
      /** The same in its own standard deviations. */
      readonly standardised: number;
    }[];
    readonly pattern: PatternName;
    /** The finding in one line, for the maker. */
    readonly finding: string;
    /** K: how much one reading is off by itself, as this log shows it. */
    readonly noise: number;
  };
  readonly logNext: readonly LogNext[];
  readonly course: readonly FittedMoment[];
  readonly heat: HeatWent;
  /** s from the first row. */
  readonly firstBoil: number;
  /** What a maker should hear, in plain sentences; where the log cannot tell, it says so. */
  readonly remarks: readonly string[];
}
