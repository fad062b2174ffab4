import type { FeedPlan, HoldSpread } from "../../lib/fit/index.ts";
import type { Lines, Result } from "../../lib/lines/index.ts";
import type { HeldBack } from "./heldBack.ts";
import type { TurnDownFound } from "./partsOfTurnDown.ts";
import type { PlanWork } from "./planWork.ts";

/** A planned hold as a case shows it. */
export interface ShownPlan {
  readonly plan: FeedPlan;
  readonly spread: HoldSpread;
  readonly work: PlanWork;
}

/** What a line came to; or, while it is worked again, what it came to before. */
function thingOf(result: Result): ReadonlyMap<string, unknown> | undefined {
  const thing = result.state === "settled" ? result.value : result.state === "working" ? result.before : undefined;
  return thing instanceof Map ? thing : undefined;
}

const named = (open: Lines, line: string, inCase: string): ReadonlyMap<string, unknown> | undefined =>
  open.names().includes(line) ? thingOf(open.result(line, inCase)) : undefined;

/** The plan of a case; undefined while there is none. */
export function shownPlan(open: Lines, inCase: string): ShownPlan | undefined {
  const thing = named(open, "planned hold", inCase);
  if (!thing) return undefined;
  return {
    plan: thing.get("whole plan") as FeedPlan,
    spread: thing.get("whole spread") as HoldSpread,
    work: thing.get("work") as PlanWork,
  };
}

/** The smaller fires of a case. */
export const shownFires = (open: Lines, inCase: string): TurnDownFound | undefined =>
  named(open, "smaller fires", inCase)?.get("whole turn-down") as TurnDownFound | undefined;

/** What holds the promise of a case back. */
export const shownLimits = (open: Lines, inCase: string): readonly HeldBack[] | undefined =>
  named(open, "what holds it back", inCase)?.get("whole list") as readonly HeldBack[] | undefined;
