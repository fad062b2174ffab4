import { needNumber, plain } from "../../physics/needNumber.ts";
import { saturationTemperature } from "../../physics/saturationTemperature.ts";
import type { FitToScale, ScaleOptions, ScaleSetup } from "./types.ts";

/**
 * Refuses what scaling knows nothing of.
 *
 * @throws RangeError, in the maker's words, for a number out of range
 * @example checkSetup("new", { tank: { length: 9, width: 0.2, depth: 0.2 }, burners: { count: 1, jetDiameter: 0.0017, pressure: 34_000 } }) // throws invalid length
 */
export function checkSetup(which: "old" | "new", setup: ScaleSetup): void {
  // What comes from a record may lack them, whatever its type says.
  const { tank, burners }: Partial<ScaleSetup> = setup ?? {};
  if (!tank) throw new RangeError(`missing ${which} tank: its inside length, width and depth, m`);
  if (!burners) throw new RangeError(`missing burners under the ${which} tank: count, jet and pressure`);
  const of = (what: string) => `${what} of the ${which} tank`;
  needNumber(of("length"), tank.length, 0.1, 5, "m");
  needNumber(of("width"), tank.width, 0.05, 2, "m");
  needNumber(of("depth"), tank.depth, 0.05, 1, "m");
  if (tank.liquidDepth !== undefined) needNumber(of("depth of liquid"), tank.liquidDepth, 0.02, tank.depth, "m");
  if (tank.plate !== undefined) needNumber(of("plate"), tank.plate, 0.0005, 0.02, "m");
  const fire = (what: string) => `${what} under the ${which} tank`;
  const count = needNumber(fire("number of burners"), burners.count, 1, 20, "");
  if (!Number.isInteger(count)) {
    throw new RangeError(
      `invalid number of burners under the ${which} tank: ${plain(count)}; a whole number is needed`,
    );
  }
  needNumber(fire("jet of the burners"), burners.jetDiameter, 0.0003, 0.005, "m");
  needNumber(fire("pressure at the burners"), burners.pressure, 200, 350_000, "Pa", "over the air's");
}

/** Refuses a fit without a boil-off. */
export function checkFit(fit: FitToScale | undefined): void {
  if (!fit) return;
  needNumber("boil-off of the fit", fit.boilOff.value, 1e-7, 1, "kg/s");
  needNumber("standard uncertainty of the boil-off of the fit", fit.boilOff.standardUncertainty, 0, 10, "kg/s");
}

/** Refuses options out of range, and says how many draws are wanted. */
export function checkOptions(options: ScaleOptions): { readonly draws: number; readonly seed: number } {
  const { draws = 2000, seed = 1, start, feed, air, cylinder } = options;
  needNumber("air pressure", options.pressure, 65_000, 105_000, "Pa");
  if (options.target !== undefined) {
    const water = saturationTemperature(options.pressure);
    needNumber("target", options.target, water, 473.15, "K", "from where plain water boils");
  }
  if (air !== undefined) needNumber("air temperature", air, 243.15, 323.15, "K");
  if (start !== undefined) needNumber("temperature at the start", start, 273.15, options.target ?? 417.6, "K");
  if (feed !== undefined) needNumber("temperature of the water fed", feed, 273.15, 373.15, "K");
  if (cylinder) {
    needNumber("size of the cylinder", cylinder.size, 4.5, 50, "kg of propane");
    needNumber("contents of the cylinder", cylinder.contents, 0.5, cylinder.size, "kg of propane");
  }
  needNumber("number of draws", draws, 50, 100_000, "");
  needNumber("seed", seed, 0, 4294967295, "");
  return { draws: Math.round(draws), seed: Math.round(seed) };
}
