import { symmetric } from "./answer.ts";
import type { Prepared } from "./prepare.ts";
import type { Answer } from "./types.ts";

/**
 * Water written as poured from the first boil on, kg, with what the cup leaves in doubt.
 *
 * @param prepared the log
 * @example pouredOf(prepared).value
 */
export function pouredOf({ line }: Prepared): Answer {
  const value = line.pours.reduce((sum, pour) => sum + pour.mass, 0);
  const each = line.cup.eachPour * Math.sqrt(line.pours.reduce((sum, pour) => sum + pour.mass ** 2, 0));
  return symmetric(
    value,
    { mass: 1 },
    new Map([
      ["cup", line.cup.allNight * value],
      ["each pour", each],
    ]),
    0,
  );
}

/**
 * What the feed jug lost beyond the written pours, kg; undefined without a jug.
 *
 * @param prepared the log
 * @param remarks where a plain disagreement is told
 * @example unwrittenOf(prepared, [])?.value
 */
export function unwrittenOf({ jug, facts, line }: Prepared, remarks: string[]): Answer | undefined {
  if (!jug) return undefined;
  const inside = facts.pours.filter((pour) => pour.time >= jug.from && pour.time <= jug.to);
  const written = inside.reduce((sum, pour) => sum + pour.mass, 0);
  const each = line.cup.eachPour * Math.sqrt(inside.reduce((sum, pour) => sum + pour.mass ** 2, 0));
  const answer = symmetric(
    jug.value - written,
    { mass: 1 },
    new Map([
      ["feed jug", jug.u],
      ["cup", line.cup.allNight * written],
      ["each pour", each],
    ]),
  );
  if (answer.interval95[0] > 0)
    remarks.push("The jug lost more water than the log has written down: some pours are probably missing.");
  if (answer.interval95[1] < 0)
    remarks.push(
      "The log has more water written down than the jug lost: a pour may be written twice, or the jug was filled up.",
    );
  return answer;
}
