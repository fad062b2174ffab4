import { inventLogForFit } from "../../../../data/generator/inventLogForFit.ts";
import { type InventedTanks, inventTanks } from "../../../../data/generator/inventTanks.ts";
import { fitRun } from "../../../../lib/fit/index.ts";
import { type FitToScale, type ScaledAnswer, type ScaledSetup, scaleSetup } from "../../../../lib/fit/scale/index.ts";
import { readLog } from "../../../../lib/log/index.ts";
import { givesForFit } from "../judgeGivens.ts";

export const options = { pressure: 101_325, draws: 300 };

export interface Judged {
  readonly tanks: InventedTanks;
  readonly fit: FitToScale;
  readonly said: ScaledSetup;
  /** Length that each burner serves, and of the tank, new over old. */
  readonly served: number;
  readonly times: number;
}

/** A pair of invented tanks, and what scaling says of the new one from a stand-in for the old one's fit. */
export function judged(seed: number): Judged {
  const tanks = inventTanks(seed);
  return judge(tanks, { boilOff: tanks.found });
}

function judge(tanks: InventedTanks, fit: FitToScale): Judged {
  const { from, to } = tanks;
  const times = to.tank.length / from.tank.length;
  const served = times / (to.burners.count / from.burners.count);
  return { tanks, fit, said: scaleSetup(fit, from, to, options), served, times };
}

/** The same from a whole log of the old tank that was read and fitted. */
export function judgedByLog(seed: number): Judged {
  const log = inventLogForFit(seed);
  const fit = fitRun(readLog(log.text).run, givesForFit(log));
  const { fire, tank } = log.scenario;
  const { value, standardUncertainty } = fit.boilOff;
  const found = { value, standardUncertainty };
  const { length, width, depth } = log.told.tank;
  return judge(inventTanks(seed, { logged: { length, width, depth, fire, losses: tank.losses, found } }), fit);
}

export const holds = ({ interval95: [low, high] }: ScaledAnswer, truth: number): boolean =>
  truth >= low && truth <= high;

/** Half of the 95 % interval over the value. */
export const half = ({ value, interval95: [low, high] }: ScaledAnswer): number => (high - low) / 2 / value;

export const shareOf = <T>(list: readonly T[], is: (one: T) => boolean): number => list.filter(is).length / list.length;

export function median(list: readonly number[]): number {
  const sorted = [...list].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

export const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
