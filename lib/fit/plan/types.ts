import type { DoubtfulDeparture } from "../../bath/plan/types.ts";
import type { SimulationCharge, SimulationSetup } from "../../bath/simulationTypes.ts";
import type { FittedRun } from "../run/types.ts";

/**
 * A setup, and how unsure its heat is: standard uncertainty as a share of the heat into the bath; where absent a fitted
 * run's own, else 0.05, as a fit leaves it. A fire known by handbooks alone has 0.3 (`burnerEfficiencyPrior`): say so.
 * A thermometer whose lag and rounding nobody said lags 15 s and is read to whole °F.
 */
export interface PlanSetup extends SimulationSetup {
  readonly heatUncertainty?: number;
}

/** A bath's charge, with its departure and how sure that is. */
export interface PlanCharge extends Omit<SimulationCharge, "temperature"> {
  /** K, when the burner is lit, or boiling; the air's where absent. */
  readonly temperature?: SimulationCharge["temperature"];
  readonly departure?: DoubtfulDeparture;
}

export interface PlannedParts {
  /** kg. */
  readonly mass: number;
  /** Which steel, in words: all carbon and low-alloy steels take up heat alike within 3 %, so that no number hangs on it. */
  readonly steel?: string;
  /** K as they go in; the air's where absent. */
  readonly temperature?: number;
}

/** What is to be planned. The bath is told by its charge, by a fitted run, or by both (the fit, and the salts of the charge). */
export interface PlanGivens {
  readonly setup: PlanSetup;
  readonly bath?: PlanCharge;
  readonly fit?: FittedRun;
  /** K as the thermometer reads it, and half-width of the band, K. */
  readonly target: number;
  readonly band: number;
  /** s. */
  readonly hold: number;
  readonly parts?: PlannedParts;
  /** Pa. */
  readonly pressure: number;
  /** A steady drip, or pours of one measure, kg. */
  readonly pours: "steady" | { readonly measure: number };
  /** K, of the water fed; the air's where absent. */
  readonly feedTemperature?: number;
}

/** How people and instruments err, one standard deviation each. */
export interface HumanErrors {
  /** s late at what is due, half-normal. */
  readonly late: number;
  /** Shares: the cup all night, each pour besides, the steady feed. */
  readonly cupAllNight: number;
  readonly eachPour: number;
  readonly steadyFeed: number;
  /** Share by which the fire's heat comes and goes, and over how long, s. */
  readonly gusts: number;
  readonly gustTime: number;
  /** K: fixed for the night, of each reading, wandering, and over how long it wanders, s. */
  readonly thermometerFixed: number;
  readonly eachReading: number;
  readonly wandering: number;
  readonly wanderTime: number;
}

export interface PlanOptions {
  /** Simulated holds behind each promise of the final plan; 300 where absent, 20 to 20,000. */
  readonly draws?: number;
  readonly seed?: number;
  /** Hears of the plan so far, first after 300 simulated holds. */
  readonly progress?: (soFar: FeedPlan) => void;
  /** Asked between pieces of the search: true ends it with what is found. */
  readonly stop?: () => boolean;
  /** How many times the promises are worked again with as many draws again; 0 where absent. */
  readonly refine?: number;
  /** s between readings; 120 where absent. */
  readonly readEvery?: number;
  readonly errors?: Partial<HumanErrors>;
  /** kg, the most for one pour where that is to be less than `slugLimit`: its safe end, where the fire is unsure. */
  readonly mostAtOnce?: number;
}

/** One addition of a plan: s from parts in, kg, s over which it is put in. */
export interface Addition {
  readonly t: number;
  readonly water: number;
  readonly duration: number;
}

/** The most water for one pour, and why. */
export interface SlugLimit {
  /** kg. */
  readonly mass: number;
  readonly reason: string;
  /** The most that a cold pocket of so much could flash: kg of steam, and m³. */
  readonly couldFlash: { readonly mass: number; readonly volume: number };
  /** What flashes when it mixes in well, kg. */
  readonly flashes: number;
  /** s over which a pour of the limit is let in. */
  readonly over: number;
  readonly caution: string;
}

/** One row of a correction table. */
export interface CorrectionRow {
  /** K, what the thermometer reads above (+) or below the target. */
  readonly off: number;
  /** kg of water to add; 0 where the bath reads low. */
  readonly water: number;
  /** s to pause the drip or put off the next pour; 0 where it reads high. */
  readonly pause: number;
  /** s from doing so until a reading tells what it did. */
  readonly wait: number;
  /** K by which the row moves the boiling point in the end. */
  readonly moves: number;
  /** Whether the pour was cut down to the limit. */
  readonly limited: boolean;
}

export interface CorrectionTable {
  /** From the most below to the most above. */
  readonly rows: readonly CorrectionRow[];
  /** Beyond the rows: K, and what to do. */
  readonly above: { readonly from: number; readonly says: string };
  readonly below: { readonly from: number; readonly says: string };
  /** s between readings. */
  readonly readEvery: number;
  /** s from parts in before which readings are not acted on. */
  readonly ignoreUntil: number;
  /** Mean share of the full correction that the rows make. */
  readonly gain: number;
  readonly slugLimit: SlugLimit;
  /**
   * Shares of holds in the band, 0 to 1: nobody correcting, with the table, and making the full correction each time
   * (null before the search).
   */
  readonly inBand: { readonly nobody: number; readonly table: number; readonly full: number | null };
  /** Simulated holds behind it. */
  readonly simulated: number;
  readonly cautions: readonly string[];
}

export interface FeedPlan {
  readonly stage: "first" | "searched" | "refined";
  readonly additions: readonly Addition[];
  /** Share of holds in the band, 0 to 1: nobody correcting, and with the correction table followed. */
  readonly inBand: number;
  readonly inBandCorrected: number;
  /** Standard uncertainties of both from the number of draws. */
  readonly inBandUncertainty: { readonly nobody: number; readonly corrected: number };
  /** The same counted from when the bath is back at its boil and in its band after the parts went in, to the end of the hold. */
  readonly inBandOnceBack: { readonly nobody: number; readonly corrected: number };
  /** s out of the band, mean over the holds that do not count. */
  readonly timeLost: { readonly nobody: number; readonly corrected: number };
  /** kg fed in the hold; kg of it planned and not corrected. */
  readonly waterTotal: number;
  /** kg/s of the steady feed, or of the pours on average. */
  readonly feed: number;
  /**
   * kg of propane from lighting the burner to the end of the hold; by a handbook share, and said so in `remarks`, where
   * the burner is known by its heat alone.
   */
  readonly gasTotal: number;
  /** kg: the largest pour that the plan or its table asks for. */
  readonly largestSlug: number;
  readonly slugLimit: SlugLimit;
  /** Whether the measure asked for was larger than the limit. */
  readonly measureLimited: boolean;
  /** s from lighting to the boil, and from there until it reads `startReading` unfed; null where it never does so. */
  readonly timeToBoil: number | null;
  readonly timeToStart: number | null;
  /** kg to put in before: the charge boils above the reading to start at; 0 as a rule. */
  readonly waterFirst: number;
  /** K on the thermometer at which the parts go in. */
  readonly startReading: number;
  readonly startsAt: string;
  readonly clockFrom: "parts in";
  /** K/s by which the boiling point climbs unfed; s that a whole band lasts then. */
  readonly drift: number;
  readonly bandLasts: number;
  /** K by which parts cool the bath, s until it is back where it was. */
  readonly dip: number;
  readonly recovery: number;
  /** Standard uncertainties, from what is unsure of the fire's heat and of the bath's curve. */
  readonly uncertainty: {
    readonly timeToBoil: number | null;
    readonly feed: number;
    readonly waterTotal: number;
    readonly gasTotal: number;
    readonly drift: number;
  };
  readonly table: CorrectionTable;
  /** Simulated holds in all. */
  readonly simulated: number;
  readonly remarks: readonly string[];
  readonly cautions: readonly string[];
}
