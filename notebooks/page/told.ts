import type { Value } from "../../lib/measure/types.ts";

/** How far a log drew a number from what was believed before it. */
export interface Told {
  readonly word: "nothing" | "some" | "much";
  /** What was believed before the log: 95 % interval, SI, and where it comes from in the maker's words. */
  readonly before: readonly [low: number, high: number];
  readonly from: string;
}

/** A number that was read out of a log, with what the log told of it. */
export interface FittedValue extends Value {
  readonly told: Told;
}

/** What the log told of a number, if it was read out of one. */
export function toldIn(value: unknown): Told | undefined {
  return typeof value === "object" && value !== null && "told" in value ? (value as FittedValue).told : undefined;
}
