import type { AsideFunction } from "./asideFunction.ts";
import { firingOfBath } from "./firing.ts";
import { fitOfRun } from "./fitOfRun.ts";
import { boilOffOverLengths } from "./lengths.ts";
import { newTankByScaling } from "./newTank.ts";
import { firstPlanOfHold, limitsOfHold, planOfHold, turnDownOfHold } from "./planOfHold.ts";

/** All functions of the vocabulary that are worked aside: one more is one more entry here. */
export const asideFunctions: readonly AsideFunction[] = [
  fitOfRun,
  firingOfBath,
  firstPlanOfHold,
  planOfHold,
  turnDownOfHold,
  limitsOfHold,
  newTankByScaling,
  boilOffOverLengths,
];
