import { atmosphere } from "./constants.ts";
import { needNumber, plain } from "./needNumber.ts";
import { propane } from "./propane.ts";
import { propaneVapourPressure } from "./propaneVapourPressure.ts";

export interface HighPressureJet {
  /** m, of the hole; 0.0003 to 0.005. */
  readonly diameter: number;
  /** Pa over the air's; 1,000 to 350,000 (0.15 to 51 psi), and no more than propane has at `temperature`. */
  readonly pressure: number;
  /** Of discharge, 0.5 to 1; 0.85 where absent, a judgement. */
  readonly coefficient?: number;
  /** K of the gas ahead of the jet, 231 to 320; 288.706 (60 °F) where absent. */
  readonly temperature?: number;
  /** Pa, 50,000 to 110,000; one atmosphere where absent. */
  readonly airPressure?: number;
}

/** J/(mol K), exact (SI, 2019). */
const gasConstant = 8.314462618;

/**
 * Propane that flows through the jet of a burner behind a regulator in psi: compressible, and choked (sound in the
 * hole, no longer held back by the air) above 0.73 times the air's pressure, 10.7 psi at sea level.
 *
 * @param jet diameter of the hole, pressure over the air's, coefficient, temperature, air pressure
 * @returns kg/s; `burnerPower({ mass })` gives its heat
 * @throws RangeError outside the ranges, and for a pressure that propane does not have at that temperature
 * Source: isentropic flow of an ideal gas through an orifice (any text of gas dynamics; Perry's Chemical Engineers'
 * Handbook), ratio of specific heats 1.131. An ideal gas: the true flow is some 3 % more at 30 psi, 4 % at 50. No
 * published table of such jets was found to hold it to; where the low-pressure table ends the two agree.
 * @example
 * jetFlowHighPressure({ diameter: 0.0017018, pressure: 34473.8 }); // 6.592e-4 kg/s: 0.067 in at 5 psi
 */
export function jetFlowHighPressure(jet: HighPressureJet): number {
  const { coefficient = 0.85, temperature = 288.706, airPressure = atmosphere } = jet;
  const diameter = needNumber("diameter of the jet", jet.diameter, 0.0003, 0.005, "m");
  needNumber("pressure at the jet", jet.pressure, 1000, 350_000, "Pa", "over the air's");
  needNumber("coefficient of the jet", coefficient, 0.5, 1, "");
  needNumber("air pressure", airPressure, 50_000, 110_000, "Pa");
  const ahead = airPressure + jet.pressure;
  const most = propaneVapourPressure(temperature);
  if (ahead > most) {
    throw new RangeError(
      `invalid pressure at the jet: ${plain(jet.pressure)} Pa over the air's; at most ${plain(most - airPressure)} Pa, what propane has at ${plain(temperature)} K`,
    );
  }
  const k = propane.heatCapacityRatio;
  const r = Math.max(airPressure / ahead, (2 / (k + 1)) ** (k / (k - 1)));
  const speed = ((2 * k) / (k - 1)) * (r ** (2 / k) - r ** ((k + 1) / k));
  const perPascal = Math.sqrt((speed * propane.molarMass) / (gasConstant * temperature));
  return coefficient * (Math.PI / 4) * diameter ** 2 * ahead * perPascal;
}
