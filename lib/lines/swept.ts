import type { Value } from "../measure/types.ts";

/** The thread is given back every few ms; a sweep shows the lines as they were when it began. */
export interface SweepOptions {
  /** Texts with units, or amounts in SI. */
  readonly from: string | number;
  readonly to: string | number;
  /** How many amounts, evenly spaced, ends included; 41 if left out. */
  readonly points?: number;
  /** Names of cases; those shown if left out. */
  readonly cases?: readonly string[];
  /** Told after each point, 0 to 1; give true to end it. */
  readonly progress?: (share: number) => boolean | undefined;
}

/** A line over a given's range in one case. */
export interface Swept {
  readonly inCase: string;
  /** `y` is undefined where the line came to no amount; `says` tells why. */
  readonly points: readonly { readonly x: number; readonly y?: Value; readonly says?: string }[];
}
