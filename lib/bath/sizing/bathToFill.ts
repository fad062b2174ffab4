import { brineDensity } from "../../physics/brineDensity.ts";
import { departedSaltRatio } from "../../physics/departedBoilingPoint.ts";
import { needNumber } from "../../physics/needNumber.ts";
import { saltRatio } from "../../physics/saltRatio.ts";
import { type Brine, salts as kinds, type Salt } from "../../physics/types.ts";
import type { BathToFill, BathToFillGivens } from "./types.ts";

/**
 * Salt and water that fill a volume with a bath which boils at its target: by the present bath's own proportions and
 * boiling curve, or by its own ratio. Counted hot: cold it stands lower. Weigh the salt; it goes into cold water in
 * small lots, as its safety data sheet says, never into a hot bath.
 *
 * @param volume m³ of liquid, hot; 0 to 100
 * @param givens proportions of the salts, target, K, and air pressure, Pa (as for `saltRatio`); how the bath departs from
 * the published boiling curve; its ratio, kg of salt per kg of water, above 0 to 20
 * @returns kg, and their relative standard uncertainty from the density alone; the ratio has its own (`saltCurvePrior`)
 * @throws RangeError as `saltRatio` and `brineDensity`, and for a volume or a ratio out of range
 * Source: `saltRatio`, `brineDensity`.
 * @example
 * const bath = bathToFill(0.0168, { salts: { sodiumHydroxide: 2, sodiumNitrate: 1 }, target: 417.6, pressure: 101325 });
 * bath.salt; // 14.68 kg
 * bath.water; // 10.99 kg
 */
export function bathToFill(volume: number, givens: BathToFillGivens): BathToFill {
  needNumber("volume", volume, 0, 100, "m³");
  const { salts, target, pressure, departure } = givens;
  const curved = () =>
    departure ? departedSaltRatio(target, pressure, salts, departure) : saltRatio(target, pressure, salts);
  // Asked in either case: it refuses salts, targets and pressures that are none.
  const byCurve = curved();
  const ratio = givens.ratio === undefined ? byCurve : needNumber("ratio", givens.ratio, 1e-6, 20, "kg/kg");
  const all = kinds.reduce((sum, kind) => sum + (salts[kind] ?? 0), 0);
  const share = (kind: Salt) => (salts[kind] ?? 0) / all;
  const brine: Brine = Object.fromEntries(kinds.map((kind) => [kind, ratio * share(kind)]));
  const density = brineDensity(brine, target);
  const mass = volume * density;
  const water = mass / (1 + ratio);
  const salt = mass - water;
  const each = (kind: Salt) => salt * share(kind);
  return {
    ratio,
    density,
    mass,
    water,
    salt,
    salts: {
      sodiumHydroxide: each("sodiumHydroxide"),
      sodiumNitrate: each("sodiumNitrate"),
      sodiumNitrite: each("sodiumNitrite"),
      potassiumNitrate: each("potassiumNitrate"),
    },
    standardUncertainty: 0.01,
  };
}
