import type { Answer } from "../lib/bath/types.ts";
import type { FittedParameter, FittedRun } from "../lib/fit/index.ts";
import { exact, negate } from "../lib/measure/index.ts";
import type { Value } from "../lib/measure/types.ts";
import type { FittedValue } from "./page/told.ts";

const measuredOf = ({ measured, interval95 }: Answer): Value => ({ ...measured, interval95 });

/** A parameter with what the log told of it. */
const toldOf = ({ answer, prior, told }: FittedParameter): FittedValue => ({
  ...measuredOf(answer),
  told: { word: told.word, before: prior.interval95, from: prior.from },
});

const burnerChanges = ["first burner change", "second burner change", "third burner change"];

function burnerName(name: string): string {
  const number = Number(/^burner change (\d+)$/.exec(name)?.[1]);
  return burnerChanges[number - 1] ?? name;
}

/**
 * Water to come back to target where its sign is sure: what may be poured at most (the low end, so that an error never
 * pours too much), or how much too much is in the tank. Neither where the spread reaches zero.
 */
function sureOf(waterToTarget: Answer): readonly (readonly [string, unknown])[] {
  const water = measuredOf(waterToTarget);
  const [low, high] = waterToTarget.interval95;
  if (low > 0) return [["pour to come back", water]];
  if (high < 0) return [["too much water", { ...negate(water), interval95: [-high, -low] }]];
  return [];
}

/** The results of a fitted run under the names that formulas call them by; only what is known is there. */
export function partsOfFit(fit: FittedRun, aims: boolean): ReadonlyMap<string, unknown> {
  return new Map<string, unknown>([
    ...fit.parameters.map((parameter) => [burnerName(parameter.name), toldOf(parameter)] as const),
    ["boil-off", measuredOf(fit.boilOff)],
    ["make-up water", measuredOf(fit.makeUp)],
    ...(aims
      ? [
          ["water to come back to target", measuredOf(fit.waterToTarget)] as const,
          ["time until it leaves the band", measuredOf(fit.untilOutOfBand)] as const,
          ...sureOf(fit.waterToTarget),
        ]
      : []),
    ["first boil", exact(fit.firstBoil, { time: 1 })],
    ["whole fit", fit],
  ]);
}
