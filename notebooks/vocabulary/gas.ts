import { cylinderGives } from "../../lib/fit/scale/cylinderGives.ts";
import { type Factors, factorNames } from "../../lib/fit/scale/factors.ts";
import { shareAtFire } from "../../lib/fit/scale/flameShare.ts";
import type { FastFunc, Func } from "../../lib/lines/index.ts";
import { measuredValue } from "../../lib/measure/index.ts";
import type { Dimension, Value } from "../../lib/measure/types.ts";
import {
  burnerEfficiencyPrior,
  cylinderVaporisation,
  type Estimate,
  jetFlowHighPressure,
  jetFlowLowPressure,
  propane,
} from "../../lib/physics/index.ts";

const perWeight: Dimension = { length: 2, time: -2 };

const known = ({ value, standardUncertainty }: Estimate, dimension: Dimension, source: string): Value =>
  measuredValue(value, standardUncertainty, dimension, source);

/** Gross and net differ by a known factor: they are off together. */
const heatOf = (name: string, basis: string, estimate: Estimate, more: string): FastFunc => ({
  name,
  takes: [{ name: "weight of propane", kind: "mass" }],
  gives: "energy",
  says: `Heat of so much propane, ${basis}. ${more}`,
  source: "Property tables of propane dealers and burner makers; they differ by 1 %",
  besides: [known(estimate, perWeight, "heating value of propane")],
  numbers: (weight, value = 0) => {
    if (!(weight >= 0)) throw new RangeError("invalid weight of propane: below 0; 0 or more");
    return weight * value;
  },
  partials: (weight = 0, value = 0) => [value, weight],
});

/** A jet's coefficient is known to some 5 % at best. */
const coefficient = (value: number, what: string): Value =>
  measuredValue(value, 0.05 * value, {}, `coefficient of a ${what}`);

const jetTaken = [
  { name: "jet's diameter", kind: "length" },
  { name: "pressure at the jet", kind: "pressure" },
] as const;

const flames = ["open", "skirted"] as const;

const undoubted = Object.fromEntries(factorNames.map((name) => [name, 0])) as Factors;

/** Propane, from the cylinder to the tank, for a maker's own lines. */
export const gas: readonly Func[] = [
  heatOf(
    "heat of propane",
    "gross, as burners are rated",
    propane.grossHeatingValue,
    "By how much lighter the cylinder became is the surest measure of a fire.",
  ),
  heatOf(
    "net heat of propane",
    "net: without what the steam in the flue gas could still give",
    propane.netHeatingValue,
    "An open flame gives no more than this.",
  ),
  {
    name: "propane through jet",
    takes: [
      ...jetTaken,
      { name: "gas temperature", kind: "temperature", optional: true },
      { name: "air pressure", kind: "pressure", optional: true },
    ],
    gives: "mass flow",
    says: "Propane that a burner's jet (orifice) passes behind a regulator in psi: 0.15 to 51 psi over the air's. Gas of 60 °F at sea level where not said. Times a running time it is the weight burnt. For sizing a guess only: keep to the burner's own rating and the gas code.",
    source: "Isentropic flow of an ideal gas through an orifice, coefficient 0.85 ± 10 % (a judgement)",
    besides: [coefficient(0.85, "high-pressure jet")],
    numbers: (diameter, pressure, temperature?: number, airPressure?: number, factor = 0.85) =>
      jetFlowHighPressure({
        diameter,
        pressure,
        coefficient: factor,
        ...(temperature === undefined ? {} : { temperature }),
        ...(airPressure === undefined ? {} : { airPressure }),
      }),
  },
  {
    name: "propane through low pressure jet",
    takes: jetTaken,
    gives: "mass flow",
    says: "Propane that a burner's jet (orifice) passes behind a low-pressure regulator: 0.4 to 28 inches of water, at sea level; 9 % less at 5,000 ft. For sizing a guess only: keep to the burner's own rating and the gas code.",
    source: "Orifice table of a plumbing textbook (BCcampus, Plumbing 3E), coefficient 0.90 ± 10 % (a judgement)",
    besides: [coefficient(0.9, "low-pressure jet")],
    // The volume is turned into weight so that its heat is the table's.
    numbers: (diameter, pressure, factor = 0.9) =>
      (jetFlowLowPressure({ diameter, pressure, coefficient: factor }) * propane.grossVapourHeatingValue.value) /
      propane.grossHeatingValue.value,
  },
  {
    name: "cylinder vaporisation",
    takes: [
      { name: "cylinder's size", kind: "mass" },
      { name: "propane left", kind: "mass" },
      { name: "propane temperature", kind: "temperature" },
    ],
    gives: "power",
    says: "Heat, gross, of the gas that an upright cylinder gives off without end; beyond it the liquid chills and the flame sinks. Published for the 100 lb cylinder only, 10 to 100 lb of propane left, 0 to 70 °F. Never warm a cylinder with a flame.",
    source: "Vaporization table of a burner maker, to 10 % (a judgement)",
    besides: [measuredValue(1, 0.05, {}, "published vaporisation of a cylinder")],
    numbers: (size, contents, temperature, off = 1) => off * cylinderVaporisation({ size, contents, temperature }),
  },
  {
    name: "cylinder gives",
    takes: [
      { name: "cylinder's size", kind: "mass" },
      { name: "propane left", kind: "mass" },
      { name: "propane temperature", kind: "temperature" },
    ],
    gives: "power",
    says: "Heat, gross, of the gas that any upright cylinder gives off without end. For the 100 lb cylinder by its published table; for others nothing is published: there it is that table's heat for each square foot of wetted wall, half of it more or less, derived. Never warm a cylinder with a flame.",
    source: "Vaporization table of a burner maker for 100 lb, to 10 %; derived for others, to 50 % (judgements)",
    besides: [
      measuredValue(0, 1, {}, "published vaporisation of a cylinder"),
      measuredValue(0, 1, {}, "what an unpublished cylinder gives"),
    ],
    numbers: (size, left, temperature, published = 0, derived = 0) => {
      const gives = cylinderGives({ size, contents: Math.min(left, size) }, temperature);
      const doubt = gives.standardUncertainty / gives.value;
      return gives.value * (1 + doubt * (gives.published ? published : derived));
    },
  },
  {
    name: "share at another fire",
    takes: [{ name: "fire of one burner against before", kind: "number" }],
    gives: "number",
    says: "How much less of its heat a burner gives the same tank when it burns more: 1 at the fire it was, 0.88 ± 0.11 half as big again, more than 1 turned down. Flames that are short of tank to heat lose more past it.",
    source: "Saturating transfer of one flame, a judgement held to invented tanks",
    besides: [
      measuredValue(0, 1, {}, "how near the flame is to having given all"),
      measuredValue(0, 1, {}, "how a flame's share falls with its gas"),
    ],
    numbers: (fire, near = 0, falls = 0) => {
      if (!(fire > 0 && fire < 20)) throw new RangeError("invalid fire: above 0 and below 20 times that before");
      return shareAtFire(fire, { ...undoubted, saturation: near, gasPower: falls });
    },
  },
  {
    name: "burner efficiency",
    takes: [{ name: "flame" }],
    says: 'What part of the gross heat reaches a long open tank before a log has shown it: 0.35 ± 0.20 for an "open" flame, 0.55 ± 0.20 for a "skirted" one. The greatest doubt of all: a fitted run knows it better.',
    source: "A judgement from published figures of gas rings, stoves and brine pans",
    work: (flame) => {
      const led = flames.find((one) => one === flame);
      if (!led) throw new Error(`unknown flame: ${String(flame)}; "${flames.join('" or "')}"`);
      const estimate = burnerEfficiencyPrior({ skirted: led === "skirted", basis: "gross" });
      return known(estimate, {}, `burner efficiency, ${led} flame`);
    },
  },
];
