import { latentHeat, ordinaryAir } from "../../bath/bathLosses.ts";
import { saltMass } from "../../bath/saltMasses.ts";
import { simulateBath } from "../../bath/simulateBath.ts";
import type { SimulatedBath } from "../../bath/simulationTypes.ts";
import { departedSaltRatio } from "../../physics/departedBoilingPoint.ts";
import type { Planning } from "./planning.ts";
import { driftOf } from "./searchFeed.ts";
import type { PlanCharge, PlanGivens } from "./types.ts";

/** From lighting the burner to the reading at which the hold starts. s; null where it never comes to that. */
export interface TimesToStart {
  readonly toBoil: number | null;
  readonly toStart: number | null;
  /** kg to put in first, where the charge boils above that reading. */
  readonly waterFirst: number;
  readonly why?: string;
}

/** s, how long a heat-up is looked at: most are over in the first of these. */
const spans = [2400, 7200, 12 * 3600];
/** K over the start that a heat-up is followed to: another start near it is read off the same course. */
const beyond = 2;

/**
 * When the bath boils, and when it reads what the hold starts at, unfed: by the full simulation of its charge; by the
 * log of a fitted run alone, as that day went.
 *
 * @param givens of the plan
 * @param plan as `planning` made it
 * @returns a function of the K over the target at which the hold starts
 * @throws RangeError as `simulateBath`
 * @example timesToStart(givens, plan)(-0.3).toBoil // 2,400 s
 */
export function timesToStart(givens: PlanGivens, plan: Planning): (start: number) => TimesToStart {
  const { bath, fit, pressure } = givens;
  const { target, departure } = plan.bath;
  let kept: { readonly water: number; readonly upTo: number; readonly run: SimulatedBath } | undefined;
  return (start) => {
    const startsAt = target + start;
    if (!bath) return ofFit(fit, plan, startsAt);
    const wanted = saltMass(bath.salts) / departedSaltRatio(startsAt, pressure, bath.salts, departure);
    const waterFirst = Math.max(0, wanted - bath.water);
    const water = bath.water + waterFirst;
    if (kept?.water !== water || kept.upTo < startsAt) {
      kept = { water, upTo: startsAt + beyond, run: heatUp(givens, plan, bath, water, startsAt + beyond) };
    }
    return { ...readOff(kept.run, startsAt), waterFirst };
  };
}

/** The bath from lighting until it is so hot, or for as long as is looked at. */
function heatUp(
  { fit, setup, pressure }: PlanGivens,
  { bath: { departure, heat, losses, quiet, target } }: Planning,
  bath: PlanCharge,
  water: number,
  upTo: number,
): SimulatedBath {
  const air = { ...ordinaryAir, ...setup.air, pressure };
  // A fitted bath loses what the plan takes it to lose: its log showed that the fire brings it to the boil.
  const fitted = {
    burner: { heat: heat + losses },
    losses: {
      wall: losses / (target - air.temperature),
      evaporation:
        (quiet * latentHeat(target)) / (setup.tank.length * setup.tank.width * (pressure - air.vapourPressure)),
    },
  };
  const around = { ...setup, air, ...(fit ? fitted : {}) };
  let run: SimulatedBath | undefined;
  for (const end of spans) {
    run = simulateBath(around, { temperature: air.temperature, ...bath, water, departure }, { end }, { step: 20 });
    if (run.stops || run.end.T >= upTo) break;
  }
  return run as SimulatedBath;
}

function readOff({ course, stops }: SimulatedBath, startsAt: number): Omit<TimesToStart, "waterFirst"> {
  const boils = course.findIndex(({ state, T, boilingPoint }) => state === "boiling" || T >= boilingPoint - 1e-6);
  if (boils < 0) return { toBoil: null, toStart: null, why: stops?.reason ?? "the fire does not bring it to the boil" };
  const toBoil = course[boils]?.time ?? 0;
  const later = course.findIndex(({ T }, i) => i >= boils && T >= startsAt - 1e-3);
  const [before, after] = [course[Math.max(boils, later - 1)], course[later]];
  if (!before || !after) return { toBoil, toStart: null, why: stops?.reason ?? "it never climbs to the target" };
  const part = after.T > before.T ? (startsAt - before.T) / (after.T - before.T) : 0;
  const time = before.time + Math.min(1, Math.max(0, part)) * (after.time - before.time);
  return { toBoil, toStart: time - toBoil };
}

function ofFit(fit: PlanGivens["fit"], plan: Planning, startsAt: number): TimesToStart {
  if (!fit) return { toBoil: null, toStart: null, waterFirst: 0 };
  const moment = fit.course.find(({ time }) => time >= fit.firstBoil) ?? fit.course.at(-1);
  const away = moment ? startsAt - moment.boilingPoint : 0;
  if (away >= 0) return { toBoil: fit.firstBoil, toStart: away / driftOf(plan), waterFirst: 0 };
  const { water, k } = plan.bath;
  return { toBoil: fit.firstBoil, toStart: 0, waterFirst: water * (1 - Math.exp(away / k)) };
}
