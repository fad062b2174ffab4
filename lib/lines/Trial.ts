import type { Value } from "../measure/types.ts";

export interface TrialOptions {
  /** At most so many draws; 200,000 if left out. Fewer are made where the figures settle sooner. */
  readonly draws?: number;
  /** The same seed gives the same draws; 1 if left out. A source is drawn alike for every line and case. */
  readonly seed?: number;
  /**
   * Significant digits of the standard uncertainty, in SI, that are to be right (JCGM 101:2008, 7.9.2). If left out, the
   * digits that the line is shown with count: nobody can see a difference below half of the last of them.
   */
  readonly digits?: 1 | 2;
  /** At most so much time at work, s; 20 if left out. What has not settled by then says so. */
  readonly seconds?: number;
  /** Told now and then, 0 to 1. */
  readonly progress?: (share: number) => void;
  /** An AbortSignal, or anything like it: the trial ends at the next pause once this is true. */
  readonly stop?: { readonly aborted: boolean };
  /** Gives the thread back between slices of some 8 ms; a timer if left out. Where it rejects, so does the trial. */
  readonly rest?: () => Promise<void>;
}

/** What a Monte Carlo trial (JCGM 101:2008) says of a line, beside what slopes alone say. All in SI. */
export interface Trial {
  /** Whether both ends of the linear interval agree with the trial's to the digits that count (JCGM 101:2008, 8.1). */
  readonly goodEnough: boolean;
  readonly linear95: readonly [low: number, high: number];
  /** 2.5 % of the draws lie below, 2.5 % above: the probabilistically symmetric interval (JCGM 101:2008, 3.15). */
  readonly trial95: readonly [low: number, high: number];
  /** The shortest interval that holds 95 % of the draws (JCGM 101:2008, 3.16 and 5.3.4). */
  readonly shortest95: readonly [low: number, high: number];
  readonly mean: number;
  readonly median: number;
  readonly standardUncertainty: number;
  /** Half of the last digit that is to be right: how far ends may differ. */
  readonly tolerance: number;
  readonly draws: number;
  /** Draws in which the line came to no number: they are left out of all the figures. */
  readonly without: number;
  /** Whether mean, uncertainty and ends have settled to within the tolerance or a 20th of the uncertainty (after JCGM 101:2008, 7.9.4). */
  readonly settled: boolean;
  /** The amount to be shown: as it is where the linear answer is good enough, else the trial's. */
  readonly value: Value;
  /** For the maker. */
  readonly says: string;
}

/** The trial, or in words why there is none. */
export type Tried = Trial | { readonly stopped: string };
