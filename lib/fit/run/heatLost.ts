import { symmetric } from "../../bath/answer.ts";
import { doubtful } from "../../bath/doubtful.ts";
import type { Prepared } from "../../bath/prepare.ts";
import type { Answer } from "../../bath/types.ts";
import type { FitGivens } from "./types.ts";

const power = { mass: 1, length: 2, time: -3 } as const;

/**
 * What walls and top of the tank lose at the boil, W.
 *
 * @param prepared the log
 * @param givens for the tank
 * @returns undefined where the tank's size is not known
 * @example wallsAndTop(prepared, {}) // undefined
 */
export function wallsAndTop(_: Prepared, { tank }: Pick<FitGivens, "tank">): Answer | undefined {
  return tank && undefined;
}

/**
 * Gas burnt while the bath boiled, W gross, as the burner's size and the log's burner rows say.
 *
 * @param prepared the log
 * @param givens for the burner
 * @returns undefined where the burner is not known
 * @example gasBurnt(prepared, {}) // undefined
 */
export function gasBurnt({ line, facts }: Prepared, { burner }: Pick<FitGivens, "burner">): Answer | undefined {
  if (!burner) return undefined;
  const full = doubtful("burner", burner.power, 0.1);
  const first = facts.fires.filter(({ time, share }) => time <= line.start && share !== undefined).at(-1)?.share ?? 1;
  const burning = line.fire.done(
    line.end,
    line.fire.told.map(({ lnFactor }) => lnFactor),
  );
  const share = (first * burning) / Math.max(1, line.end - line.start);
  return symmetric(full.value * share, power, new Map([["burner", full.u * share]]), 0);
}
