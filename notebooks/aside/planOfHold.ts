import { turnDown } from "../../lib/fit/index.ts";
import { type PlanFound, planAtFirst, planFound } from "../hold/found.ts";
import { type HeldBack, heldBack } from "../hold/heldBack.ts";
import { partsOfFirst, partsOfPlan } from "../hold/partsOfPlan.ts";
import { partsOfTurnDown, type TurnDownFound } from "../hold/partsOfTurnDown.ts";
import { type PlanWork, planWork } from "../hold/planWork.ts";
import { asideFunction } from "./asideFunction.ts";

const same = (a: PlanWork, b: PlanWork): boolean => JSON.stringify(a) === JSON.stringify(b);

/** The promises of the first simulated holds. */
export const firstPlanOfHold = asideFunction({
  name: "first plan of hold",
  waits: "waiting to be planned",
  work: planWork,
  does(work, says) {
    says("simulating the first holds");
    return planAtFirst(work);
  },
  parts: (plan) => partsOfFirst(plan),
  same,
});

/** The plan of a hold, searched and refined. */
export const planOfHold = asideFunction<PlanWork, PlanFound>({
  name: "plan of hold",
  waits: "waiting to be planned",
  work: planWork,
  does: planFound,
  parts: partsOfPlan,
  same,
});

/** Shares of full fire that are tried. */
const fires = [1, 0.95, 0.9, 0.85, 0.8, 0.7, 0.6, 0.5];
/** Simulated holds for each promise of each fire. */
const draws = 200;

/** What turning the fire down would do to the same hold. */
export const turnDownOfHold = asideFunction<PlanWork, TurnDownFound>({
  name: "turn-down of hold",
  waits: "waiting to try other fires",
  work: planWork,
  does({ givens, options }, says) {
    const rows = fires.flatMap((share, i) => {
      says(`trying the fire at ${Math.round(100 * share)} %`, i / fires.length);
      const { fires: rows } = turnDown(givens, [share], { ...options, draws });
      // The log of a fitted run showed that full fire boils it.
      return rows.map((row) => (givens.fit && share === 1 ? { ...row, steady: true } : row));
    });
    return { fires: rows, draws, cautions: turnDown(givens, [], options).cautions };
  },
  parts: partsOfTurnDown,
  same,
});

/** What would keep more holds in the band. */
export const limitsOfHold = asideFunction<PlanWork, readonly HeldBack[]>({
  name: "limits of hold",
  waits: "waiting to see what holds it back",
  work: planWork,
  does: heldBack,
  parts: (list) => new Map<string, unknown>([["whole list", list]]),
  same,
});
