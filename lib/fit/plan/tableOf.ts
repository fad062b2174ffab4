import type { Planning } from "./planning.ts";
import { type FoundTable, waterPerKelvin } from "./searchTable.ts";
import type { HoldSchedule } from "./simulateHold.ts";
import type { CorrectionRow, CorrectionTable } from "./types.ts";

/** A reading tells what was done once this part of it has shown. */
const shownBy = 0.9;
/** Waits are given in whole quarters of a minute: nobody times closer in gloves. */
const quarter = 15;

/**
 * s after a pour until the thermometer shows nine tenths of what it does: simulated second by second, through mixing
 * and lag.
 *
 * @param mixing s
 * @param lag s
 * @example waitAfter(20, 15) // 75 s
 */
export function waitAfter(mixing: number, lag: number): number {
  let unmixed = 1;
  let shown = 0;
  let time = 0;
  while (shown < shownBy && time < 3600) {
    time += 1;
    const mixes = mixing > 0 ? 1 - Math.exp(-1 / mixing) : 1;
    unmixed *= 1 - mixes;
    const follows = lag > 0 ? 1 - Math.exp(-1 / lag) : 1;
    shown += follows * (1 - unmixed - shown);
  }
  return Math.ceil(time / quarter) * quarter;
}

/**
 * The table of a search in the maker's terms.
 *
 * @param plan what is planned
 * @param does its schedule
 * @param found by the search
 * @param inBand what it does against doing nothing and against making the full correction each time
 * @example tableOf(plan, schedule, found, inBand).rows[0].pause // 95 s
 */
export function tableOf(
  plan: Planning,
  does: HoldSchedule,
  found: FoundTable,
  inBand: CorrectionTable["inBand"],
): CorrectionTable {
  const { bath, limit, readEvery, ignoreUntil } = plan;
  const { correcting } = found;
  const perKelvin = waterPerKelvin(plan);
  const wait = waitAfter(bath.mixing, bath.lag);
  const rows: CorrectionRow[] = [];
  for (let j = correcting.above.length - 1; j > 0; j--) {
    const mass = correcting.below[j] ?? 0;
    const pause = mass / does.rate;
    rows.push({
      off: -j * correcting.step,
      water: 0,
      pause,
      wait: Math.ceil((pause + wait) / quarter) * quarter,
      moves: mass / perKelvin,
      limited: false,
    });
  }
  rows.push({ off: 0, water: 0, pause: 0, wait: readEvery, moves: 0, limited: false });
  for (let j = 1; j < correcting.above.length; j++) {
    const water = correcting.above[j] ?? 0;
    const limited = water >= limit.mass;
    rows.push({ off: j * correcting.step, water, pause: 0, wait, moves: -water / perKelvin, limited });
  }
  const end = correcting.step * (correcting.above.length - 1);
  return {
    rows,
    above: {
      from: end,
      says: "Stop: no more water than the last row at once. Turn the fire down, keep the drip, stand back and read again after the wait; take the parts out if it does not come down.",
    },
    below: {
      from: end,
      says: "Stop the drip and let water leave until it reads in the band again. If it does not climb, the fire is too small or has failed: stop, take the parts out and look. Never put salt into a hot bath.",
    },
    readEvery,
    ignoreUntil,
    gain: meanGain(found, perKelvin),
    slugLimit: limit,
    inBand,
    simulated: plan.simulated,
    cautions: [
      limit.caution,
      "Act on every reading, once, and then wait: a second pour before the first has shown overshoots.",
      "The table never asks for salt. The salt's safety data sheet and your local rules come first.",
    ],
  };
}

/** Over the rows that are not cut down to the limit. */
function meanGain({ correcting: { above, below, step } }: FoundTable, perKelvin: number): number {
  const last = above.length - 1;
  const rows = Array.from({ length: last }, (_, i) => i + 1);
  const sum = rows.reduce((all, j) => all + (below[j] ?? 0) / (j * step * perKelvin), 0);
  return sum / last;
}
