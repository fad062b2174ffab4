import type { KeptCase } from "./Desk.ts";
import { isValue } from "./isValue.ts";
import { probe } from "./probe.ts";
import type { World } from "./supposed.ts";
import type { SweepOptions, Swept } from "./swept.ts";
import { wantedIn } from "./wantedIn.ts";

const MOST_POINTS = 2000;

/**
 * A worked line over a range of one given, in each case, with the width that everything else leaves it.
 * @param world The open notebook, settled.
 * @param line Id of the worked line.
 * @param by Id of the given.
 * @param cases The cases.
 * @param how From where to where, and in how many points.
 * @returns For each case its points in rising order.
 * @throws Error, worded for the maker, for ends that cannot be read, and where the line does not depend on the given.
 * @example (await sweepOver(world, "line 3", "line 1", cases, { from: "20 in", to: "60 in" }))[0].points.length // 41
 */
export async function sweepOver(
  world: World,
  line: string,
  by: string,
  cases: readonly KeptCase[],
  how: SweepOptions,
): Promise<readonly Swept[]> {
  const count = Math.round(how.points ?? 41);
  if (!(count >= 2 && count <= MOST_POINTS))
    throw new Error(`invalid points: ${how.points}; 2 to ${MOST_POINTS} are allowed`);
  const given = world.desk.kept.get(by)?.line;
  const swept: Swept[] = [];
  let done = 0;
  // All before the first is asked: the thread is given back between points, and lines may change.
  const probes = cases.map(({ id, name }) => ({ name, ...probe(world, id, line, by) }));
  for (const { name, at, now, end } of probes) {
    const edge = (text: string | number) =>
      typeof text === "number" ? text : wantedIn(text, now.dimension, given?.unit);
    const [from, to] = [edge(how.from), edge(how.to)].sort((a, b) => a - b) as [number, number];
    if (!(to > from)) throw new Error(`invalid range: from ${how.from} to ${how.to}; two amounts that differ`);
    const points: Swept["points"][number][] = [];
    for (let i = 0; i < count; i++) {
      const x = from + ((to - from) * i) / (count - 1);
      const y = await at(x);
      points.push(isValue(y) ? { x, y } : { x, says: y.says });
      done += 1;
      if (how.progress?.(done / (count * cases.length)) === true) {
        end();
        return [...swept, { inCase: name, points }];
      }
    }
    swept.push({ inCase: name, points });
  }
  return swept;
}
