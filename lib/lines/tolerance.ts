import { unitMeasuring } from "../measure/inUnit.ts";
import { roundedHalf } from "../measure/roundedHalf.ts";
import { coverage95 } from "../measure/standardUncertainty.ts";
import type { Dimension } from "../measure/types.ts";

/**
 * Half of the last digit of a standard uncertainty that is written with so many digits (JCGM 101:2008, 7.9.2).
 * @param uncertainty Above 0.
 * @param digits How many of its digits count.
 * @returns In the uncertainty's unit; 0 for none.
 * @example tolerance(0.00035, 2) // 0.000005
 */
export function tolerance(uncertainty: number, digits: number): number {
  if (!(uncertainty > 0)) return 0;
  // Written out first: 0.0996 is 0.10 by then.
  const exponent = Number(uncertainty.toExponential(digits - 1).split("e")[1]);
  return Number(`5e${exponent - digits}`);
}

/**
 * The same for the digits that a line is shown with: half of the last digit of its ± in its own unit, so that an answer
 * is called good enough just where nobody who reads it could tell the difference.
 * @param uncertainty Standard uncertainty, SI, above 0.
 * @param dimension What the line measures.
 * @param unit The unit that it is shown in; SI where it has none.
 * @returns SI; 0 for none.
 * @example shownTolerance(0.05, { length: 1 }, "m") // 0.005
 */
export function shownTolerance(uncertainty: number, dimension: Dimension, unit: string | undefined): number {
  if (!(uncertainty > 0)) return 0;
  const factor = factorOf(dimension, unit);
  return (factor * 10 ** -roundedHalf((coverage95 * uncertainty) / factor).decimals) / 2;
}

function factorOf(dimension: Dimension, unit: string | undefined): number {
  try {
    return unit === undefined ? 1 : unitMeasuring(unit, dimension).factor;
  } catch {
    // A time by the clock: seconds.
    return 1;
  }
}

/**
 * How far ends may differ: by so many digits of the uncertainty where these are asked for, else by those shown.
 * @param uncertainty Standard uncertainty, SI, above 0.
 * @param dimension What the line measures.
 * @param unit The unit that it is shown in.
 * @param digits Digits of the standard uncertainty in SI.
 * @returns SI; 0 for none.
 * @example toleranceOf(0.35, {}, undefined, 2) // 0.005
 */
export function toleranceOf(
  uncertainty: number,
  dimension: Dimension,
  unit: string | undefined,
  digits: number | undefined,
): number {
  return digits === undefined ? shownTolerance(uncertainty, dimension, unit) : tolerance(uncertainty, digits);
}
