import type { TurnedDown } from "../../lib/fit/index.ts";
import { exact } from "../../lib/measure/index.ts";

export interface TurnDownFound {
  readonly fires: readonly TurnedDown[];
  /** Simulated holds behind each share. */
  readonly draws: number;
  readonly cautions: readonly string[];
}

/** The fire that needs the least feeding and still boils steadily, where one does. */
export const bestFire = ({ fires }: TurnDownFound): TurnedDown | undefined =>
  fires
    .filter(({ steady }) => steady)
    .reduce<TurnedDown | undefined>((a, b) => (!a || b.feed < a.feed ? b : a), undefined);

/** What was found of smaller fires, under the names that formulas call it by. */
export function partsOfTurnDown(found: TurnDownFound): ReadonlyMap<string, unknown> {
  const best = bestFire(found);
  return new Map<string, unknown>([
    ...(best
      ? ([
          ["best share", exact(best.share)],
          ["feed there", exact(best.feed, { mass: 1, time: -1 })],
        ] as const)
      : []),
    ["whole turn-down", found],
  ]);
}
