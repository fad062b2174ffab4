import type { HeatingBasis } from "./estimate.ts";
import { needNumber } from "./needNumber.ts";
import { netOverGross, propane } from "./propane.ts";

/** Propane that a burner takes, by weight or by volume of vapour at 60 °F and one atmosphere. */
export type GasFlow =
  | {
      /** kg/s. */
      readonly mass: number;
    }
  | {
      /** m³/s. */
      readonly volume: number;
    };

/**
 * Heat of a flow of propane: what the fire gives off, of which the bath gets a part (`burnerEfficiencyPrior`).
 *
 * @param flow kg/s (to 0.1) or m³/s of vapour (to 0.05); 0 or more
 * @param basis "gross" (as burners and tables are rated) or "net"; gross where absent
 * @returns W
 * @throws RangeError for a flow outside the range
 * Source: heating values of `propane`. By weight and by volume they differ by 0.6 %, as the published ones do.
 * @example
 * burnerPower({ mass: 6.592e-4 }); // 33105 W
 * burnerPower({ volume: 3.606e-5 }); // 3343 W: 11,405 BTU/h
 */
export function burnerPower(flow: GasFlow, basis: HeatingBasis = "gross"): number {
  const part = basis === "net" ? netOverGross : 1;
  if ("mass" in flow) {
    return needNumber("flow of gas", flow.mass, 0, 0.1, "kg/s") * propane.grossHeatingValue.value * part;
  }
  return needNumber("flow of gas", flow.volume, 0, 0.05, "m³/s") * propane.grossVapourHeatingValue.value * part;
}
