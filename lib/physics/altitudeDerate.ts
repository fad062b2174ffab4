import { needNumber } from "./needNumber.ts";

/**
 * What part of its sea-level rating a gas burner is given at an altitude: thinner air carries less oxygen.
 *
 * @param altitude m above sea level; -500 to 3,048 (10,000 ft)
 * @returns factor on the rated heat: 1 up to 609.6 m (2,000 ft), above it 4 % less for each 304.8 m above sea level,
 * so that it steps from 1 to 0.92 at 2,000 ft
 * @throws RangeError outside -500 to 3,048 m
 * Source: rule of the National Fuel Gas Code (NFPA 54, annex E; read in a trade journal). A rule for choosing jets, not
 * physics: a jet left as it was loses less than half of that, 9 % at 5,000 ft (the root of the air pressure).
 * @example
 * altitudeDerate(1524); // 0.8 at 5,000 ft
 */
export function altitudeDerate(altitude: number): number {
  needNumber("altitude", altitude, -500, 3048, "m");
  return altitude <= 609.6 ? 1 : 1 - (0.04 * altitude) / 304.8;
}
