import { type FeedPlan, type HoldSpread, holdSpread, planFeed } from "../../lib/fit/index.ts";
import type { Says } from "../aside/asideFunction.ts";
import { type HeatUp, heatUp } from "./heatUp.ts";
import { heatDoubtOf, type PlanWork } from "./planWork.ts";

/** A plan, where its holds go, and the heat-up on the fire as it is thought to be, on a cooler and on a hotter one. */
export interface PlanFound {
  readonly plan: FeedPlan;
  readonly spread: HoldSpread;
  readonly heating: {
    readonly middle: HeatUp;
    readonly cool: HeatUp;
    readonly hot: HeatUp;
    /** Of the fire's heat, at the cool and hot end of what is known of it (95 %). */
    readonly shares: readonly [cool: number, hot: number];
  };
}

/** Rounds of refining; each simulates as many holds as all before. */
const rounds = 4;
/** Of the fire, that is simulated at the least. */
const leastShare = 0.2;

/** The plan of the first holds, before any search. */
export const planAtFirst = ({ givens, options }: PlanWork): FeedPlan =>
  planFeed(givens, { ...options, stop: () => true });

/** The plan, searched and refined; tells how far it is. */
export function planFound({ givens, options }: PlanWork, says: Says): PlanFound {
  says("trying feeds on simulated holds", 0.05);
  let round = 0;
  const plan = planFeed(givens, {
    ...options,
    refine: rounds,
    progress: ({ stage, simulated }) => {
      if (stage === "first") return;
      round += 1;
      const share = 0.1 + (0.75 * 2 ** round) / 2 ** (rounds + 1);
      says(`counting holds: ${simulated.toLocaleString("en-US")} simulated so far`, share);
    },
  });
  says("drawing where the holds go", 0.88);
  const spread = holdSpread(givens, plan, options);
  says("simulating the heat-up", 0.94);
  const doubt = 1.96 * heatDoubtOf(givens);
  const shares = [Math.max(leastShare, 1 - doubt), 1 + doubt] as const;
  const heating = {
    middle: heatUp(givens, plan.startReading),
    cool: heatUp(givens, plan.startReading, shares[0]),
    hot: heatUp(givens, plan.startReading, shares[1]),
    shares,
  };
  return { plan, spread, heating };
}
