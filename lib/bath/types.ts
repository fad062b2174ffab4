import type { Run } from "../log/types.ts";
import type { Value } from "../measure/types.ts";
import type { Salt } from "../physics/types.ts";

/** A number alone means the default standard uncertainty that the documentation states. */
export type Doubtful = number | { readonly value: number; readonly standardUncertainty: number };

/** What the maker knows of the salts, best first. All three can stand together: what is there adds up. */
export interface SaltsKnown extends Partial<Readonly<Record<Salt, Doubtful>>> {
  /** A ready-mixed salt: kg, and for each kind the share of the weight from its safety data sheet, [low, high] in 0..1. */
  readonly readyMix?: {
    readonly mass: Doubtful;
    readonly shares?: Partial<Readonly<Record<Salt, readonly [number, number]>>>;
  };
  /** Nothing is known but how the bath boils and how deep it stands in its tank: K, m, m, m. `boil` may come from the log. */
  readonly seen?: {
    readonly boil?: Doubtful;
    readonly depth: Doubtful;
    readonly length: Doubtful;
    readonly width: Doubtful;
  };
}

export interface BalanceGivens {
  readonly salts: SaltsKnown;
  /** kg at the first row of the log; absent means not known. */
  readonly water?: Doubtful;
  /** Pa. */
  readonly pressure: Doubtful;
  /** K. */
  readonly target?: number;
  /** K, half-width. */
  readonly band?: number;
  /** K: standard uncertainty of the thermometer's fixed error, and the error itself if it is known (reads high = positive). */
  readonly thermometer?: { readonly offset?: number; readonly standardUncertainty: number };
  /** Standard uncertainty of the cup, all night, as a share (default 0.03), and of each pour (default 0.05). */
  readonly cup?: { readonly allNight?: number; readonly eachPour?: number };
}

/** value, doubt and 95 % interval together, as the outside calls of the library give it. SI. */
export interface Answer {
  readonly value: number;
  readonly standardUncertainty: number;
  readonly interval95: readonly [low: number, high: number];
  /** The same as a value of lib/measure, with what its width comes from. */
  readonly measured: Value;
}

export interface WaterBalance {
  /** kg/s, mean from the first boil to the log's last row. */
  readonly boilOff: Answer;
  /** kg/s of cold water that would have held the ratio: the heat of the log with no warming and no drift. */
  readonly makeUp: Answer;
  /** K/s: how fast the boiling point climbs at the target (at the end, without a target) when nothing is poured. */
  readonly drift: Answer;
  /** kg of salt in the tank at the end, all kinds together. */
  readonly salts: Answer;
  /** kg in the tank at the first boil and at the last row. */
  readonly waterStart: Answer;
  readonly waterEnd: Answer;
  /**
   * kg of salt for each kg of water where the hold begins and ends, if parts went in; else at the first boil and at
   * the last row.
   */
  readonly ratioStart: Answer;
  readonly ratioEnd: Answer;
  /** s of the hold inside target ± band, and the hold's length; absent without target and band. */
  readonly inBand?: Answer;
  /** The hold cut where it crosses the limits of the band: the inside ones add up to `inBand`. */
  readonly stretches?: readonly {
    readonly start: number;
    readonly end: number;
    readonly side: "inside" | "over" | "under";
  }[];
  readonly hold: { readonly start: number; readonly end: number; readonly from: string };
  /** kg written as poured from the first boil to the end, and kg/s. */
  readonly poured: Answer;
  readonly pouredRate: Answer;
  /** kg that the jug says went in but no row does; absent without a jug. */
  readonly unwritten?: Answer;
  /** s from the first row: when the bath first boiled. */
  readonly firstBoil: number;
  /** One row for each reading that is not struck out: what it says about the water. */
  readonly points: readonly {
    readonly id: string;
    readonly time: number;
    /** kg gone since the first boil, with its standard uncertainty from the reading alone. */
    readonly gone: number;
    readonly standardUncertainty: number;
    /** 0..1: how much the line trusted it; below 0.5 it is drawn apart. */
    readonly weight: number;
    readonly because?: string;
  }[];
  /** The bath over time as the balance sees it, at pours and at even steps: for the figures. */
  readonly course: readonly {
    readonly time: number;
    readonly water: number;
    readonly ratio: number;
    readonly boilingPoint: number;
    /** Standard uncertainty of the boiling point as the balance knows it, K. */
    readonly standardUncertainty: number;
  }[];
  /** What a maker should hear: too few readings, no pours, salts unknown … plain sentences. */
  readonly remarks: readonly string[];
  /** Readings that do not belong, by id, with the reason. */
  readonly misread: readonly { readonly id: string; readonly off: number; readonly reason: string }[];
}

export type BalanceCall = (run: Run, givens: BalanceGivens) => WaterBalance;
