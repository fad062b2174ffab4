import { saltMass } from "../../bath/saltMasses.ts";
import { simulateBath } from "../../bath/simulateBath.ts";
import { departedSaltRatio } from "../../physics/departedBoilingPoint.ts";
import type { Planning } from "./planning.ts";
import { driftOf } from "./searchFeed.ts";
import type { PlanGivens } from "./types.ts";

/** From lighting the burner to the reading at which the hold starts. s; null where it never comes to that. */
export interface TimesToStart {
  readonly toBoil: number | null;
  readonly toStart: number | null;
  /** kg to put in first, where the charge boils above that reading. */
  readonly waterFirst: number;
  readonly why?: string;
}

/** s, the longest heat-up looked at. */
const longest = 12 * 3600;

/**
 * When the bath boils, and when it reads what the hold starts at, unfed: by the full simulation of its charge; by the
 * log of a fitted run alone, as that day went.
 *
 * @param givens of the plan
 * @param plan as `planning` made it
 * @param start K over the target at which the hold starts
 * @throws RangeError as `simulateBath`
 * @example timesToStart(givens, plan, -0.3).toBoil // 2,400 s
 */
export function timesToStart(givens: PlanGivens, plan: Planning, start: number): TimesToStart {
  const { bath, fit, setup, pressure } = givens;
  const { target, departure, losses, heat } = plan.bath;
  const startsAt = target + start;
  if (!bath) return ofFit(fit, plan, startsAt);
  const wanted = saltMass(bath.salts) / departedSaltRatio(startsAt, pressure, bath.salts, departure);
  const waterFirst = Math.max(0, wanted - bath.water);
  const burner = fit ? { heat: heat + losses } : setup.burner;
  const charge = { ...bath, water: bath.water + waterFirst, departure };
  const end = longest;
  const at = { ...setup, burner, air: { ...setup.air, pressure } };
  const { course, stops } = simulateBath(at, charge, { end }, { step: 20 });
  const boils = course.findIndex(({ state, T, boilingPoint }) => state === "boiling" || T >= boilingPoint - 1e-6);
  if (boils < 0) {
    return { toBoil: null, toStart: null, waterFirst, why: stops?.reason ?? "the fire does not bring it to the boil" };
  }
  const first = course[boils];
  const toBoil = first?.time ?? 0;
  const later = course.findIndex(({ T }, i) => i >= boils && T >= startsAt - 1e-3);
  if (later < 0) return { toBoil, toStart: null, waterFirst, why: stops?.reason ?? "it never climbs to the target" };
  const [before, after] = [course[Math.max(boils, later - 1)], course[later]];
  if (!before || !after) return { toBoil, toStart: null, waterFirst };
  const part = after.T > before.T ? (startsAt - before.T) / (after.T - before.T) : 0;
  const time = before.time + Math.min(1, Math.max(0, part)) * (after.time - before.time);
  return { toBoil, toStart: time - toBoil, waterFirst };
}

function ofFit(fit: PlanGivens["fit"], plan: Planning, startsAt: number): TimesToStart {
  if (!fit) return { toBoil: null, toStart: null, waterFirst: 0 };
  const moment = fit.course.find(({ time }) => time >= fit.firstBoil) ?? fit.course.at(-1);
  const away = moment ? startsAt - moment.boilingPoint : 0;
  if (away >= 0) return { toBoil: fit.firstBoil, toStart: away / driftOf(plan), waterFirst: 0 };
  const { water, k } = plan.bath;
  return { toBoil: fit.firstBoil, toStart: 0, waterFirst: water * (1 - Math.exp(away / k)) };
}
