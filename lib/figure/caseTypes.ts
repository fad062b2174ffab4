import type { Value } from "../measure/types.ts";

/** One case of a line. Without a value it is said to have no number, with the reason in `says`. */
export interface CaseValue {
  readonly name: string;
  readonly value?: Value;
  /** Why there is no number: "waits for blades". */
  readonly says?: string;
}

export interface LineAcrossCasesData {
  /** Name of the line. */
  readonly line: string;
  /** A unit of what the values measure; "m:ss" for a time; "" for a plain number. */
  readonly unit: string;
  /** In the order of their marks. */
  readonly cases: readonly CaseValue[];
  /** Name of the case that the others are compared with; without it nothing is compared. */
  readonly base?: string;
}

/** The line at one amount of the given: x in SI. Without y there is no number there, for the reason in `says`. */
export interface SweepPoint {
  readonly x: number;
  readonly y?: Value;
  readonly says?: string;
}

export interface SweepCase {
  readonly name: string;
  /** In any order. */
  readonly points: readonly SweepPoint[];
  /** Where the given stands now in this case, SI, and what the line comes to there. */
  readonly present?: { readonly x: number; readonly y?: Value };
}

export interface SweepDrawnData {
  readonly line: string;
  readonly unit: string;
  /** Name of the given that is swept, and a unit of it. */
  readonly by: string;
  readonly byUnit: string;
  /** What x measures; default: what the unit measures by itself (°F: a temperature on the scale). */
  readonly byDimension?: Value["dimension"];
  readonly cases: readonly SweepCase[];
  /** Two limits of y that are wanted: a bright strip on a plate, whatever the lines do. */
  readonly strip?: { readonly low: Value; readonly high: Value };
}

export interface CasePair {
  readonly name: string;
  readonly x?: Value;
  readonly y?: Value;
  /** Why one of the two is no number. */
  readonly says?: string;
}

/** `line` goes up the left side as y, `against` along the foot as x. */
export interface LineAgainstLineData {
  readonly line: string;
  readonly unit: string;
  readonly against: string;
  readonly againstUnit: string;
  readonly cases: readonly CasePair[];
}

/** One case in a row of the grid: the index of its mark, its value, and whether it is the base. */
export interface RowValue {
  readonly mark: number;
  readonly value?: Value;
  readonly base?: boolean;
}

export interface IntervalsRowOptions {
  readonly document: Document;
  /** px, 60 to 10,000. Default 160. */
  readonly width?: number;
  /** px, 12 to 1,000. Default: 11 for each case. */
  readonly height?: number;
}
