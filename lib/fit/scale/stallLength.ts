import { answerOfDraws } from "./answerOfDraws.ts";
import { drawsOf } from "./drawsOf.ts";
import { type Draw, oneDraw } from "./oneDraw.ts";
import type { Scene } from "./scene.ts";
import type { FitToScale, ScaledAnswer, ScaleOptions, ScaleSetup } from "./types.ts";
import { powerAt } from "./warmingPath.ts";

/** m: no tank that is asked about is longer, and none that boils is shorter. */
const longest = 5;
const shortest = 0.1;

/** W over what a quiet surface takes at the boil, in a tank of another length and else as in the draw's world. */
function spare(scene: Scene, draw: Draw, length: number): number {
  const to = { ...scene.to, tank: { ...scene.to.tank, length } };
  const longer = oneDraw({ ...scene, to }, draw.factors);
  return powerAt(scene.path, scene.path.T.length - 1, longer.heating);
}

/**
 * The length at which a fire no longer keeps a bath of some width and depth at a steady boil: what it brings in falls
 * short of what walls and a quiet surface lose just below the boil.
 *
 * @param fit of the old setup, or undefined
 * @param from the old setup
 * @param to width, depth and burners of the new one; for the present fire those of `from`. Its length says nothing
 * @param options as for `scaleSetup`; without its log of plain water, which belongs to one length
 * @returns m; 5 at the most, where `Infinity` stands for longer
 * @throws RangeError as `scaleSetup`
 * Source: as `scaleSetup`; evaporation of a quiet surface by `surfaceLoss`.
 * @example
 * const burners = { count: 1, jetDiameter: 0.0017018, pressure: 34_474 };
 * const old = { tank: { length: 0.61, width: 0.152, depth: 0.2, liquidDepth: 0.127 }, burners };
 * const fit = { boilOff: { value: 3.3e-3, standardUncertainty: 1.7e-4 } };
 * const { value, interval95 } = stallLength(fit, old, old, { pressure: 101_325, draws: 200 });
 * interval95[0] < value && value < interval95[1] // true
 */
export function stallLength(
  fit: FitToScale | undefined,
  from: ScaleSetup,
  to: ScaleSetup,
  options: Omit<ScaleOptions, "plainWaterLog">,
): ScaledAnswer {
  const { draws: wanted = 500 } = options;
  const { pressure, salts, target, air, start, feed, seed } = options;
  const given = { salts, target, air, start, feed, seed };
  const kept = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));
  const { scene, draws, weights } = drawsOf(fit, from, to, { ...kept, pressure, draws: wanted });
  const lengths = draws.map((draw, i) => {
    if ((weights[i] as number) < 1e-9) return 1;
    if (spare(scene, draw, longest) > 0) return Infinity;
    let low = shortest;
    let high = longest;
    for (let step = 0; step < 14; step++) {
      const middle = Math.sqrt(low * high);
      if (spare(scene, draw, middle) > 0) low = middle;
      else high = middle;
    }
    return Math.sqrt(low * high);
  });
  return answerOfDraws(lengths, weights);
}
