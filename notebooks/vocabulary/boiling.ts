import type { FastFunc } from "../../lib/lines/index.ts";
import { measuredValue } from "../../lib/measure/index.ts";
import type { Value } from "../../lib/measure/types.ts";
import { boilingPoint, saltCurvePrior, saltRatio, saturationTemperature } from "../../lib/physics/index.ts";
import { brineOf, sharesSaid, sharesTaken } from "./salts.ts";

/**
 * What is doubted of the published curve: as `saltCurvePrior` at bath strength, and fading to nothing towards plain
 * water, whose boiling point is known. That it fades in proportion to the rise is a judgement.
 */
const { offset, scale, pivot } = saltCurvePrior;
const curveDoubts = [
  measuredValue(offset.value, offset.standardUncertainty, { temperature: 1 }, "height of the published boiling curve"),
  measuredValue(scale.value, scale.standardUncertainty, {}, "slope of the published boiling curve"),
];

/** K that a bath boils over what the curve says, where that is T. */
function departure(T: number, p: number, off: number, slope: number): number {
  const water = saturationTemperature(p);
  const strength = Math.min(1, (T - water) / (pivot - water));
  return strength * (off + (slope - 1) * (T - pivot));
}

/** The curve's temperature under a boiling point: each step leaves a tenth of the miss. */
function onTheCurve(T: number, p: number, off: number, slope: number): number {
  let curve = T;
  for (let i = 0; i < 30; i++) curve = T - departure(curve, p, off, slope);
  return curve;
}

const source =
  "Olsson, Jernqvist and Aly 1997 (hydroxide); Zaveri et al. 2008 (sodium nitrate); Zdanovskii's rule for the mix. Its doubt is a judgement from older charts and one published mix";

/** How a bath boils, for a maker's own lines. */
export const boiling: readonly FastFunc[] = [
  {
    name: "boiling point of bath",
    takes: [
      { name: "salt to water", kind: "salt to water" },
      { name: "air pressure", kind: "pressure" },
      ...sharesTaken,
    ],
    gives: "temperature",
    says: `Where a bath of so much salt to its water boils: from plain water up to 329 °F (165 °C), at 19.2 to 31 inHg. About 6 °F of doubt at bath strength, until your own readings narrow it. ${sharesSaid}`,
    source,
    besides: curveDoubts,
    numbers: (ratio, p, hydroxide, nitrite, potassium, off = 0, slope = 1) => {
      const T = boilingPoint(brineOf(ratio, hydroxide, nitrite, potassium), p);
      return T + departure(T, p, off, slope);
    },
  },
  {
    name: "salt to water at boil",
    takes: [{ name: "boiling point", kind: "temperature" }, { name: "air pressure", kind: "pressure" }, ...sharesTaken],
    gives: "salt to water",
    says: `How much salt there is to the water of a bath that boils at a temperature: "boiling point of bath" the other way round, with the same range. ${sharesSaid}`,
    source,
    besides: curveDoubts,
    numbers: (T, p, hydroxide, nitrite, potassium, off = 0, slope = 1) =>
      saltRatio(onTheCurve(T, p, off, slope), p, brineOf(1, hydroxide, nitrite, potassium)),
  },
  {
    name: "published curve offset",
    takes: [],
    gives: "temperature difference",
    says: "How far a bath boils above the published curve (below, where negative) before its own readings show it: -0.9 ± 6 °F at bath strength.",
    source: "A judgement from older charts and one published mix",
    besides: [curveDoubts[0] as Value],
    numbers: (off = offset.value) => off,
    partials: () => [1],
  },
  {
    name: "published curve scale",
    takes: [],
    gives: "number",
    says: "How steep a bath's boiling curve is beside the published one before its own readings show it: 1 ± 0.14.",
    source: "A judgement: slopes published for hydroxide agree within some 10 %",
    besides: [curveDoubts[1] as Value],
    numbers: (slope = scale.value) => slope,
    partials: () => [1],
  },
  {
    name: "boiling point of water",
    takes: [{ name: "air pressure", kind: "pressure" }],
    gives: "temperature",
    says: "Where plain water boils under an air pressure: what a thermometer should read in a rolling boil at your place.",
    source: "IAPWS R7-97(2012)",
    numbers: saturationTemperature,
  },
];
