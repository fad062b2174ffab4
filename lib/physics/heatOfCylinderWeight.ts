import type { Estimate, HeatingBasis } from "./estimate.ts";
import { needNumber } from "./needNumber.ts";
import { propane } from "./propane.ts";

/**
 * Heat of the propane that was burnt, from how much lighter the cylinder became: the surest measure of a fire.
 *
 * @param lost kg that the cylinder lost; 0 to 200
 * @param standardUncertainty kg, of that loss; 0 or more, 0 where absent: then only the heating value's counts
 * @param basis "gross" or "net"; gross where absent
 * @returns J with its standard uncertainty (heating value and weight, in quadrature)
 * @throws RangeError outside these ranges
 * Source: heating values of `propane`.
 * @example
 * heatOfCylinderWeight(0.408).value; // 2.049e7 J: 0.90 lb
 */
export function heatOfCylinderWeight(lost: number, standardUncertainty = 0, basis: HeatingBasis = "gross"): Estimate {
  needNumber("weight lost by the cylinder", lost, 0, 200, "kg");
  needNumber("standard uncertainty of the weight lost", standardUncertainty, 0, 200, "kg");
  const heating = basis === "net" ? propane.netHeatingValue : propane.grossHeatingValue;
  return {
    value: lost * heating.value,
    standardUncertainty: Math.hypot(lost * heating.standardUncertainty, standardUncertainty * heating.value),
  };
}
