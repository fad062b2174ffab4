import { needNumber, plain } from "../../physics/needNumber.ts";
import { type HoldDraw, holdDraws } from "./holdDraws.ts";
import { humanErrors } from "./humanErrors.ts";
import { type PartsDip, partsDip } from "./partsDip.ts";
import { type PlanBath, planBath } from "./planBath.ts";
import { type Promised, promiseOf, together } from "./promiseOf.ts";
import { type Correcting, type HoldSchedule, holdStep } from "./simulateHold.ts";
import { slugLimit } from "./slugLimit.ts";
import type { HumanErrors, PlanGivens, PlanOptions, SlugLimit } from "./types.ts";

/** Feed begins so many s before the bath is back; readings count from so many s after. Judged by simulation. */
const feedEarly = 24;
const readLate = 60;
/** Draws made at a time: what one lot takes up in memory stays small. */
const lot = 250;

/** What all parts of a plan share. */
export interface Planning {
  readonly bath: PlanBath;
  readonly dip: PartsDip;
  readonly limit: SlugLimit;
  readonly errors: HumanErrors;
  readonly hold: number;
  readonly readEvery: number;
  readonly ignoreUntil: number;
  /** kg of one pour; 0 for a steady feed. */
  readonly slug: number;
  readonly measureLimited: boolean;
  readonly seed: number;
  /** Holds simulated so far. */
  simulated: number;
}

/**
 * Checks what is asked and makes ready for simulated holds.
 *
 * @throws RangeError for a number out of range; as `planBath`
 * @example planning(givens, {}).bath.heat // 5,500 W
 */
export function planning(givens: PlanGivens, options: PlanOptions): Planning {
  const hold = needNumber("hold", givens.hold, 60, 6 * 3600, "s");
  const readEvery = needNumber("time between readings", options.readEvery ?? 120, 30, 1800, "s");
  const { draws = 300, seed = 1, refine = 0 } = options;
  needPours(givens.pours);
  needNumber("number of draws", draws, 20, 20_000, "holds");
  needNumber("rounds of refining", refine, 0, 20, "rounds");
  needNumber("seed", seed, 0, 2 ** 32, "");
  const errors = { ...humanErrors, ...options.errors };
  for (const [name, one] of Object.entries(errors)) needNumber(`error ${name}`, one, 0, 1e5, "");
  const bath = planBath(givens);
  const air = givens.setup.air?.temperature ?? 293.15;
  const dip = partsDip(bath, givens.parts, air);
  const most = needNumber("most at once", options.mostAtOnce ?? 1e5, 1e-6, 1e5, "kg");
  const limit = atMost(slugLimit(bath), most);
  const measure = givens.pours === "steady" ? 0 : givens.pours.measure;
  const fed = bath.heat / (bath.evaporation + bath.warming);
  if (givens.pours !== "steady" && !(measure >= 2 * holdStep * fed)) {
    throw new RangeError(
      `invalid measure: ${plain(measure)} kg; at least ${plain(2 * holdStep * fed)} kg, 20 s of feed: take a steady feed instead`,
    );
  }
  return {
    bath,
    dip,
    limit,
    errors,
    hold,
    readEvery: Math.round(readEvery / holdStep) * holdStep,
    ignoreUntil: givens.parts && givens.parts.mass > 0 ? dip.recovery + readLate : 0,
    slug: Math.min(measure, limit.mass),
    measureLimited: measure > limit.mass,
    seed,
    simulated: 0,
  };
}

/** A smaller limit, let in as slowly as the larger one. */
function atMost(limit: SlugLimit, most: number): SlugLimit {
  if (most >= limit.mass) return limit;
  const part = most / limit.mass;
  const { mass, volume } = limit.couldFlash;
  return {
    ...limit,
    mass: most,
    flashes: part * limit.flashes,
    couldFlash: { mass: part * mass, volume: part * volume },
    over: part * limit.over,
  };
}

/** Kind of pours as told: from a worker or a record it may be anything. */
function needPours(pours: unknown): void {
  if (pours === "steady") return;
  if (typeof pours === "object" && pours !== null && "measure" in pours && typeof pours.measure === "number") return;
  throw new RangeError('invalid pours: neither "steady" nor a measure in kg; one of them');
}

/**
 * The schedule of a feed so many times as much as boils off, begun so many K over the target.
 *
 * @param plan as `planning` made it
 * @param factor on the feed
 * @param start K over the target
 * @example scheduleOf(plan, 1, -0.3).rate // 0.0021 kg/s
 */
export function scheduleOf({ bath, dip, hold, slug }: Planning, factor: number, start: number): HoldSchedule {
  const rate = (factor * bath.heat) / (bath.evaporation + bath.warming);
  return {
    hold,
    start,
    rate,
    from: Math.max(0, dip.recovery - feedEarly),
    slug,
    every: slug > 0 ? slug / rate : 0,
    parts: dip.heat,
    partsCapacity: dip.capacity,
  };
}

/** Draws for a plan: so many, beginning with a given one, of one of its streams. */
export function drawsOf(plan: Planning, n: number, stream: number, from = 0): readonly HoldDraw[] {
  const { bath, hold, readEvery, slug, seed } = plan;
  // The whole fire comes and goes; walls and top lose all the same, so that what is left of it swings more.
  const errors = { ...plan.errors, gusts: plan.errors.gusts * (1 + bath.losses / bath.heat) };
  const fed = bath.heat / (bath.evaporation + bath.warming);
  return holdDraws(
    n,
    (seed + 7919 * stream) >>> 0,
    { heat: bath.heatDoubt, slope: bath.slopeDoubt },
    bath.rounding,
    errors,
    {
      steps: Math.round(hold / holdStep),
      step: holdStep,
      readings: Math.floor(hold / readEvery),
      readEvery,
      slugs: slug > 0 ? Math.ceil((1.4 * hold * fed) / slug) + 4 : 1,
    },
    from,
  );
}

/** Simulates a schedule on draws and counts the holds. */
export function tried(
  plan: Planning,
  does: HoldSchedule,
  draws: readonly HoldDraw[],
  correcting?: Correcting,
): Promised {
  plan.simulated += draws.length;
  return promiseOf(plan.bath, does, draws, correcting);
}

/** What becomes of a schedule: nobody correcting, with a table, and making the full correction each time. */
export interface Promises {
  readonly nobody: Promised;
  readonly corrected: Promised;
  readonly full: Promised;
}

/** All three on the same fresh draws, a lot at a time. */
export function promisesOf(
  plan: Planning,
  does: HoldSchedule,
  tables: { readonly corrected: Correcting; readonly full: Correcting },
  n: number,
  stream: number,
): Promises {
  let all: Promises | undefined;
  for (let done = 0; done < n; done += lot) {
    const draws = drawsOf(plan, Math.min(lot, n - done), stream, done);
    const these = {
      nobody: tried(plan, does, draws),
      corrected: tried(plan, does, draws, tables.corrected),
      full: tried(plan, does, draws, tables.full),
    };
    all = all ? bothOf(all, these) : these;
  }
  return all as Promises;
}

/** Two lots of promises together. */
export function bothOf(a: Promises, b: Promises): Promises {
  return {
    nobody: together(a.nobody, b.nobody),
    corrected: together(a.corrected, b.corrected),
    full: together(a.full, b.full),
  };
}

/** Shares of holds in the band. */
export function sharesOf({ nobody, corrected, full }: Promises) {
  const share = ({ held, n }: Promised) => held / n;
  return { nobody: share(nobody), table: share(corrected), full: share(full) };
}
