import { needNumber } from "./needNumber.ts";

export interface LowPressureJet {
  /** m, of the hole; 0.0003 to 0.005. */
  readonly diameter: number;
  /** Pa over the air's; 100 to 7,000 (0.4 to 28 inches of water). */
  readonly pressure: number;
  /** Of the orifice, 0.5 to 1; 0.90 where absent, as in the source. */
  readonly coefficient?: number;
  /** Of the gas over air, 0.5 to 2.1; 1.50 where absent, as in the source. */
  readonly specificGravity?: number;
}

/** 1658.5 ft³/(h in²) and the root of an inch of water (249.0889 Pa, NIST SP 811) in SI. */
const factor = (1658.5 * 0.028316846592) / 3600 / 0.0254 ** 2 / Math.sqrt(249.0889);

/**
 * Gas that flows through the jet of a burner behind a low-pressure regulator.
 *
 * @param jet diameter of the hole, pressure over the air's, coefficient, specific gravity
 * @returns m³/s of vapour at 60 °F and one atmosphere; `burnerPower({ volume })` gives its heat
 * @throws RangeError outside the ranges. Above 7,000 Pa (1 psi) the gas is compressible: `jetFlowHighPressure`. The
 * formula reads 1 % high at 11 inches of water and 1.6 % at 1 psi. It is for sea level: thinner air lets the flow fall with
 * the root of its pressure, 9 % at 5,000 ft.
 * Source: ft³/h = 1658.5 K A √(P/S), A in in², P in inches of water; it gives the orifice table of a plumbing textbook
 * (BCcampus, Plumbing 3E, appendix 2) to the last digit printed. The National Fuel Gas Code's table (NFPA 54, annex E;
 * from memory) is 2.9 % higher. A jet's coefficient is known to some 5 % at best.
 * @example
 * jetFlowLowPressure({ diameter: 0.0009652, pressure: 2739.98 }); // 3.606e-5 m³/s: No. 62 drill, 4.584 ft³/h
 */
export function jetFlowLowPressure(jet: LowPressureJet): number {
  const { coefficient = 0.9, specificGravity = 1.5 } = jet;
  const diameter = needNumber("diameter of the jet", jet.diameter, 0.0003, 0.005, "m");
  const pressure = needNumber("pressure at the jet", jet.pressure, 100, 7000, "Pa", "over the air's");
  needNumber("coefficient of the jet", coefficient, 0.5, 1, "");
  needNumber("specific gravity", specificGravity, 0.5, 2.1, "");
  return factor * coefficient * (Math.PI / 4) * diameter ** 2 * Math.sqrt(pressure / specificGravity);
}
