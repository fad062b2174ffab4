import type { HoldDraw } from "./holdDraws.ts";
import type { PlanBath } from "./planBath.ts";
import { type Correcting, type HoldSchedule, nothingHeld, simulateHold } from "./simulateHold.ts";

/** A hold counts when the bath is in its band for this share of it. */
export const countsFrom = 0.95;

/** What became of many holds; sums, so that lots of them add up. */
export interface Promised {
  readonly n: number;
  readonly held: number;
  readonly heldOnceBack: number;
  /** s out of the band in holds that do not count, and kg fed, of all. */
  readonly lost: number;
  readonly water: number;
  /** Smooth: what a search looks at. */
  readonly score: number;
}

/**
 * Simulates a hold for each draw.
 *
 * @param bath at its target
 * @param does the schedule
 * @param draws what goes otherwise
 * @param correcting what is done at readings
 * @example promiseOf(bath, schedule, draws, undefined).held / draws.length // 0.65
 */
export function promiseOf(
  bath: PlanBath,
  does: HoldSchedule,
  draws: readonly HoldDraw[],
  correcting: Correcting | undefined,
): Promised {
  const out = nothingHeld();
  const hold = Math.round(does.hold / 10) * 10;
  let held = 0;
  let heldOnceBack = 0;
  let lost = 0;
  let water = 0;
  let score = 0;
  for (const draw of draws) {
    simulateHold(bath, does, draw, correcting, out);
    const share = out.inside / (countsFrom * hold);
    if (share >= 1) held++;
    else lost += hold - out.inside;
    if (out.onceBack > 0 && out.insideOnceBack >= countsFrom * out.onceBack) heldOnceBack++;
    water += out.water;
    // A hold that nearly counts tells the way before the count moves.
    score += (share >= 1 ? 1 : 0) + 0.3 * Math.min(1, share) + 0.05 * share;
  }
  return { n: draws.length, held, heldOnceBack, lost, water, score: score / draws.length };
}

/**
 * Two lots of holds together.
 *
 * @example together(first, second).n // 600
 */
export function together(a: Promised, b: Promised): Promised {
  const n = a.n + b.n;
  return {
    n,
    held: a.held + b.held,
    heldOnceBack: a.heldOnceBack + b.heldOnceBack,
    lost: a.lost + b.lost,
    water: a.water + b.water,
    score: (a.n * a.score + b.n * b.score) / n,
  };
}
