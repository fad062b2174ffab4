import type { FastFunc } from "../../lib/lines/index.ts";
import { measuredValue } from "../../lib/measure/index.ts";
import { brineDensity, evaporationHeat } from "../../lib/physics/index.ts";
import { brineOf, sharesSaid, sharesTaken } from "./salts.ts";

/** 2 % (95 %) for a mix at bath heat, a judgement: see `brineDensity`. */
const densityDoubt = measuredValue(1, 0.01, {}, "published density of the mix");
/** 2 %, a judgement: the other salts' heat of mixing is not published. */
const heatDoubt = measuredValue(1, 0.02, {}, "published heat of the brine");

const densitySource = "Olsson, Jernqvist and Aly 1997 (hydroxide); Laliberté 2009 (the other salts)";

/** How much a bath is, and what boiling it down takes, for a maker's own lines. */
export const amounts: readonly FastFunc[] = [
  {
    name: "density of bath",
    takes: [
      { name: "salt to water", kind: "salt to water" },
      { name: "temperature", kind: "temperature" },
      ...sharesTaken,
    ],
    gives: "density",
    says: `Of the liquid with all its salt dissolved, 32 to 392 °F; a cold bath may not hold that much salt. ${sharesSaid}`,
    source: densitySource,
    besides: [densityDoubt],
    numbers: (ratio, T, hydroxide, nitrite, potassium, off = 1) =>
      off * brineDensity(brineOf(ratio, hydroxide, nitrite, potassium), T),
  },
  {
    name: "volume of bath",
    takes: [
      { name: "salt", kind: "mass" },
      { name: "water", kind: "water" },
      { name: "temperature", kind: "temperature" },
      ...sharesTaken,
    ],
    gives: "volume",
    says: `The room that salt and water take together once dissolved, as still liquid. A boiling bath swells and spits, and parts raise it: leave room above. ${sharesSaid}`,
    source: densitySource,
    besides: [densityDoubt],
    numbers: (salt, water, T, hydroxide, nitrite, potassium, off = 1) => {
      if (!(water > 0)) throw new RangeError("invalid water: none; more than 0");
      return (salt + water) / (off * brineDensity(brineOf(salt / water, hydroxide, nitrite, potassium), T));
    },
  },
  {
    name: "heat to boil off water",
    takes: [
      { name: "water", kind: "water" },
      { name: "salt to water", kind: "salt to water" },
      { name: "air pressure", kind: "pressure" },
      ...sharesTaken,
    ],
    gives: "energy",
    says: `Heat that boils so much water out of a bath at its boiling point: more than out of plain water, because the salt holds on to it. The ratio is taken to stay. ${sharesSaid}`,
    source: "Derived from the brine's and the steam's enthalpy; within 3 % of what its boiling curve says",
    besides: [heatDoubt],
    numbers: (water, ratio, p, hydroxide, nitrite, potassium, off = 1) =>
      off * water * evaporationHeat(brineOf(ratio, hydroxide, nitrite, potassium), p),
  },
];
