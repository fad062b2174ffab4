export { correctionTable } from "./correctionTable.ts";
export { type HoldMoment, type HoldSpread, holdSpread } from "./holdSpread.ts";
export { humanErrors } from "./humanErrors.ts";
export { planFeed } from "./planFeed.ts";
export { type TurnDown, type TurnedDown, turnDown } from "./turnDown.ts";
export type {
  Addition,
  CorrectionRow,
  CorrectionTable,
  FeedPlan,
  HumanErrors,
  PlanCharge,
  PlanGivens,
  PlannedParts,
  PlanOptions,
  PlanSetup,
  SlugLimit,
} from "./types.ts";
