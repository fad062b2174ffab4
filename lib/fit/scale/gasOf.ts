import { jetFlowHighPressure, jetFlowLowPressure, propane } from "../../physics/index.ts";
import { doubts } from "./factors.ts";
import type { ScaleBurners } from "./types.ts";

/** What is wrong with a fire's gas: coefficient, gauge and droop in standard numbers, and a factor of these jets. */
export interface GasDoubt {
  readonly discharge: number;
  readonly gauge: number;
  readonly droop: number;
  readonly jets: number;
}

export const noGasDoubt: GasDoubt = { discharge: 0, gauge: 0, droop: 0, jets: 0 };

/** kg/m³ of propane vapour at 60 °F and one atmosphere: 1.52 times air's 1.2250 (ISO 2533). */
const vapourDensity = 1.52 * 1.225;

/**
 * Gas of all burners: flow through their jets at what the regulator holds while they burn.
 *
 * @param burners of a setup
 * @param airPressure Pa
 * @param doubt standard normal numbers
 * @returns kg/s
 * @example gasOf({ count: 1, jetDiameter: 0.0017018, pressure: 34473.8 }, 101_325, noGasDoubt) // 6.516e-4
 */
export function gasOf(burners: ScaleBurners, airPressure: number, doubt: GasDoubt): number {
  const { count, jetDiameter, pressure } = burners;
  const { gauge, droop, discharge, jets } = doubts;
  const one = pressure < 7000 ? gauge.low * pressure : Math.min(gauge.psi, gauge.most * pressure);
  const off = one * doubt.gauge;
  const lost = Math.min(0.5, Math.max(0, (droop.value + droop.u * doubt.droop) * count));
  const held = Math.min(350_000, Math.max(100, (pressure + off) * (1 - lost)));
  const factor = Math.exp(discharge.u * doubt.discharge + (jets / Math.sqrt(count)) * doubt.jets) * count;
  if (held >= 1000) {
    const coefficient = discharge.value;
    return factor * jetFlowHighPressure({ diameter: jetDiameter, pressure: held, airPressure, coefficient });
  }
  return factor * jetFlowLowPressure({ diameter: jetDiameter, pressure: held }) * vapourDensity;
}

/** J/kg, gross. */
export const heatOfGas = propane.grossHeatingValue.value;
