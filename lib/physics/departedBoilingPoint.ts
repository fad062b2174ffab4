import { boilingPoint } from "./boilingPoint.ts";
import { plain } from "./needNumber.ts";
import { saltCurvePrior } from "./saltCurvePrior.ts";
import { saltRatio } from "./saltRatio.ts";
import type { Brine, CurveDeparture } from "./types.ts";

/**
 * Boiling point of a bath whose own readings showed how it departs from the published curve:
 * pivot + offset + scale (T - pivot).
 *
 * @param brine kg of each salt per kg of water
 * @param p air pressure, Pa; as for `boilingPoint`
 * @param departure offset, K, and scale of the slope; `saltCurvePrior` says what to start from
 * @returns temperature, K
 * @throws RangeError as `boilingPoint`, and for a scale not above 0
 * Source: as `boilingPoint`; the departure is the bath's own.
 * @example
 * departedBoilingPoint({ sodiumHydroxide: 1 }, 101325, { offset: -0.5, scale: 1 }); // 419.03 K
 */
export function departedBoilingPoint(brine: Brine, p: number, departure: CurveDeparture): number {
  const { offset, scale, pivot } = need(departure);
  return pivot + offset + scale * (boilingPoint(brine, p) - pivot);
}

/**
 * kg of salt per kg of water in such a bath from its boiling point: the inverse of `departedBoilingPoint`.
 *
 * @param T boiling point, K
 * @param p air pressure, Pa; as for `boilingPoint`
 * @param proportions the salts' shares by weight, on any scale
 * @param departure offset, K, and scale of the slope
 * @returns kg of all salts together per kg of water
 * @throws RangeError as `saltRatio`, and for a scale not above 0
 * Source: as `saltRatio`.
 * @example
 * departedSaltRatio(419.03, 101325, { sodiumHydroxide: 1 }, { offset: -0.5, scale: 1 }); // 1 kg/kg
 */
export function departedSaltRatio(T: number, p: number, proportions: Brine, departure: CurveDeparture): number {
  const { offset, scale, pivot } = need(departure);
  return saltRatio(pivot + (T - offset - pivot) / scale, p, proportions);
}

function need(departure: CurveDeparture): Required<CurveDeparture> {
  const { offset, scale, pivot = saltCurvePrior.pivot } = departure;
  if (!Number.isFinite(offset)) throw new RangeError(`invalid offset: ${plain(offset)} K; a finite number`);
  if (!(scale > 0 && Number.isFinite(scale))) throw new RangeError(`invalid scale: ${plain(scale)}; above 0`);
  if (!Number.isFinite(pivot)) throw new RangeError(`invalid pivot: ${plain(pivot)} K; a finite number`);
  return { offset, scale, pivot };
}
