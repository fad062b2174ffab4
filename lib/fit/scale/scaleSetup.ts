import { drawsOf } from "./drawsOf.ts";
import { scaledOf } from "./scaledOf.ts";
import type { FitToScale, ScaledSetup, ScaleOptions, ScaleSetup } from "./types.ts";

/**
 * What a new tank on a new fire will do, from a fitted run on the old ones: by physics, not by proportion.
 *
 * The old tank's net heat, its reckoned losses and the gas of its jets give the share of the fire that enters it. That
 * share is carried over to the new tank as flames that saturate with the floor that each finds; walls lose only where no
 * flame reaches; the jets give the new gas. Everything that is not known is drawn, with the fit's own doubt, and worlds
 * that agree with what flames are known to give, and with a log of plain water in the new tank, count for more. The
 * intervals widen as the new tank departs from the old one.
 *
 * @param fit a `FittedRun` on the setup `from`, or the same few numbers; undefined where nothing was logged: the handbook
 * then speaks, and is honestly wider
 * @param from the old setup, m and Pa over the air's
 * @param to the new one: 0.1 to 5 m long, 1 to 20 burners
 * @param options air pressure, Pa, 65,000 to 105,000; salts, target, air, `plainWaterLog`, `draws`, `seed`
 * @returns SI, each answer a median with its 95 % interval; where the fire may never bring the bath to its boil the heat-up
 * has no upper end (`Infinity`), and `boilsSteadily` says how likely it does
 * @throws RangeError for a number out of range; Error where a log of plain water tells nothing
 * Source: jets, losses, evaporation and heats by lib/physics; how the share carries over is a judgement (`doubts`), held to
 * invented tanks of another structure, which is no proof. A real burner, its air and the wind can do worse. Gas lines and
 * cylinders are for local codes and licensed people.
 * @example
 * const burners = { count: 1, jetDiameter: 0.0017018, pressure: 34_474 };
 * const old = { tank: { length: 0.61, width: 0.152, depth: 0.2, liquidDepth: 0.127 }, burners };
 * const long = { tank: { ...old.tank, length: 1.22 }, burners: { ...burners, count: 2 } };
 * const fit = { boilOff: { value: 3.3e-3, standardUncertainty: 1.7e-4 } };
 * const { boilOff, boilsSteadily } = scaleSetup(fit, old, long, { pressure: 101_325, draws: 500 });
 * (3600 * boilOff.value).toFixed(0) // "25"
 * boilOff.interval95.map((end) => (3600 * end).toFixed(0)) // ["20", "31"]
 * boilsSteadily > 0.99 // true
 */
export function scaleSetup(
  fit: FitToScale | undefined,
  from: ScaleSetup,
  to: ScaleSetup,
  options: ScaleOptions,
): ScaledSetup {
  return scaledOf(drawsOf(fit, from, to, options), options);
}
