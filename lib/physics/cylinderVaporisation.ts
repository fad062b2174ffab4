import { needNumber, plain } from "./needNumber.ts";

export interface GasCylinder {
  /** kg of propane that it holds when full: 45.359 (the 100 lb cylinder), no other. */
  readonly size: number;
  /** kg of propane in it now; 4.53 to 45.36 (10 to 100 lb). */
  readonly contents: number;
  /** K of the liquid, 255.37 to 294.27 (0 to 70 °F): the air's at the start, less while gas is drawn. */
  readonly temperature: number;
}

const pound = 0.45359237;

/**
 * Heat of the gas that an upright 100 lb propane cylinder gives off without end: above it the liquid chills and the
 * flame sinks. For a short firing it may give more.
 *
 * @param cylinder size, contents and temperature of the liquid
 * @returns W, gross
 * @throws RangeError for any other size (no published table was found for cylinders of 20 to 40 lb, and nothing is
 * scaled), for contents and a temperature outside the table
 * Source: Q = 1000 (0.3679 + 0.02205 lb)(°F + 44) BTU/h, our fit to the "vaporization rate" table of a burner maker
 * (flameengineering.com, propane information; read; approximate, it says): 1.7 % rms, 8 % low at 10 lb and 0 °F. The
 * table's first heading was lost in what was read and is taken to be 0 °F.
 * @example
 * cylinderVaporisation({ size: 45.359, contents: 22.68, temperature: 288.706 }); // 44818 W: half full at 60 °F
 */
export function cylinderVaporisation(cylinder: GasCylinder): number {
  const { size } = cylinder;
  if (!(Math.abs(size / (100 * pound) - 1) <= 0.01)) {
    throw new RangeError(
      `invalid cylinder: ${plain(size)} kg; 45.359 kg (100 lb): no published table was found for cylinders of 20 to 40 lb`,
    );
  }
  const contents = needNumber("contents of the cylinder", cylinder.contents, 4.53, 45.36, "kg of propane");
  const temperature = needNumber("temperature of the propane", cylinder.temperature, 255.37, 294.27, "K");
  const btuPerHour = 1000 * (0.3679 + (0.02205 * contents) / pound) * (temperature * 1.8 - 459.67 + 44);
  return (btuPerHour * 1055.05585262) / 3600;
}
