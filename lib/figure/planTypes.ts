import type { AdditionDrawn, CoursePoint, Target } from "./types.ts";

/** A planned hold: s from parts in, K, kg. */
export interface PlannedHoldData {
  readonly target: Target;
  /** s. */
  readonly hold: number;
  /** The bath's true temperature over simulated holds, middle and 95 % spread: with the correction table, and nobody correcting. */
  readonly corrected: readonly CoursePoint[];
  readonly nobody: readonly CoursePoint[];
  /** True temperature that the hold starts at, K, and what this thermometer then reads. */
  readonly start: number;
  readonly startReads: number;
  readonly additions: readonly AdditionDrawn[];
  /** Words beside the water strip: "56 fl oz, 1.9 fl oz/min". */
  readonly poured: string;
  /** Of a hundred holds, so many stay in the band. */
  readonly holds: { readonly nobody: number; readonly corrected: number };
}

/** One fire of a range: share of full fire. */
export interface FireTried {
  readonly share: number;
  /** kg/s to feed. */
  readonly feed: number;
  /** Of a hundred holds, so many stay in the band; absent where it does not boil. */
  readonly nobody?: number;
  readonly corrected?: number;
  /** Whether it boils at 95 % of moments. */
  readonly steady: boolean;
}

export interface FireTradeOffData {
  readonly fires: readonly FireTried[];
  /** Share of full fire that needs the least feeding and still boils steadily. */
  readonly best?: number;
}
