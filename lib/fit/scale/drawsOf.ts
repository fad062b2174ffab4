import { checkFit, checkOptions, checkSetup } from "./checkScale.ts";
import { factorDraws } from "./factors.ts";
import { type Draw, oneDraw } from "./oneDraw.ts";
import { plainWater } from "./plainWater.ts";
import { type Scene, sceneOf } from "./scene.ts";
import type { FitToScale, ScaleOptions, ScaleSetup } from "./types.ts";

/** Draws with their weights, which sum to 1. */
export interface Drawn {
  readonly scene: Scene;
  readonly draws: readonly Draw[];
  readonly weights: Float64Array;
  /** How many equally likely draws they are worth. */
  readonly worth: number;
  /** Weight of the draw that agrees best with what was measured: near 1, and near 0 where nothing can. */
  readonly best: number;
}

/** Times the draws asked for that are worked at the most where few of them agree with what was measured. */
const mostTimes = 16;

/**
 * Draws worlds until those that agree with what was measured are worth half of what was asked for.
 *
 * @throws RangeError as the checks
 * @example drawsOf(undefined, setup, setup, { pressure: 101_325, draws: 200 }).draws.length // 200
 */
export function drawsOf(fit: FitToScale | undefined, from: ScaleSetup, to: ScaleSetup, options: ScaleOptions): Drawn {
  checkFit(fit);
  checkSetup("old", from);
  checkSetup("new", to);
  const { draws: wanted, seed } = checkOptions(options);
  const scene = sceneOf(fit, from, to, options);
  const logged = options.plainWaterLog ? plainWater(scene, options.plainWaterLog) : () => 1;
  const factors = factorDraws(seed);
  const draws: Draw[] = [];
  const raw: number[] = [];
  let sum = 0;
  let squares = 0;
  let best = 0;
  for (let i = 0; i < wanted * mostTimes; i++) {
    if (i >= wanted && i % wanted === 0 && sum ** 2 / squares >= wanted / 2) break;
    const draw = oneDraw(scene, factors(i));
    const weight = draw.weight * logged(draw);
    draws.push(draw);
    raw.push(weight);
    sum += weight;
    squares += weight ** 2;
    best = Math.max(best, weight);
  }
  return { scene, draws, weights: Float64Array.from(raw, (one) => one / sum), worth: sum ** 2 / squares, best };
}
