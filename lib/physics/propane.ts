import { type Estimate, ofRange } from "./estimate.ts";

/** Exact: BTU (International Table) per lb in J/kg; lb per US gal in kg/m³ and BTU per ft³ in J/m³ from exact factors. */
const btuPerPound = 2326;
const poundPerGallon = 0.45359237 / 0.003785411784;
const btuPerCubicFoot = 1055.05585262 / 0.028316846592;

/** J/kg of the gross heating value that the net one leaves: 4 mol of water at 44.01 kJ for 2,219.2 kJ/mol of propane. */
export const netOverGross = (2219.2 - 4 * 44.01) / 2219.2;

const gross = ofRange(21_548 * btuPerPound, 21_591 * btuPerPound, 21_786 * btuPerPound);

/**
 * Propane as it is sold. The trade's figures disagree by about 1 %: each carries the spread of those read as its
 * standard uncertainty, and a cylinder of the trade's propane may hold some propene and butane besides.
 *
 * - `grossHeatingValue` J/kg: 21,548 to 21,591 BTU/lb, and 21,786 where 91,502 BTU/gal and 4.20 lb/gal stand together
 * - `netHeatingValue` J/kg: the gross one times 0.9207, from heats of combustion (from memory)
 * - `grossVapourHeatingValue` J/m³ of vapour at 60 °F and one atmosphere: 2,488 to 2,498 BTU/ft³
 * - `liquidDensity` kg/m³ at 60 °F: 4.20 to 4.24 lb/gal
 * - `vapourSpecificGravity` over air: 1.50 to 1.53; 1.52 by the molar masses
 * - `molarMass` kg/mol; `heatCapacityRatio` of the vapour
 *
 * Source: property tables of propane dealers and makers of burners (propanewarehouse.com, flameengineering.com,
 * elgas.com.au; read); IUPAC atomic weights; ratio 1.131 from Perry's Chemical Engineers' Handbook, 6th ed. (read in a
 * page that cites it).
 * @example
 * propane.grossHeatingValue.value; // 5.022e7 J/kg
 * propane.liquidDensity.value; // 506.9 kg/m³
 */
export const propane: {
  readonly grossHeatingValue: Estimate;
  readonly netHeatingValue: Estimate;
  readonly grossVapourHeatingValue: Estimate;
  readonly liquidDensity: Estimate;
  readonly vapourSpecificGravity: Estimate;
  readonly molarMass: number;
  readonly heatCapacityRatio: number;
} = {
  grossHeatingValue: gross,
  netHeatingValue: {
    value: gross.value * netOverGross,
    standardUncertainty: gross.standardUncertainty * netOverGross,
  },
  grossVapourHeatingValue: ofRange(2488 * btuPerCubicFoot, 2488 * btuPerCubicFoot, 2498 * btuPerCubicFoot),
  liquidDensity: ofRange(4.2 * poundPerGallon, 4.23 * poundPerGallon, 4.24 * poundPerGallon),
  vapourSpecificGravity: ofRange(1.5, 1.52, 1.53),
  molarMass: 0.044097,
  heatCapacityRatio: 1.131,
};
