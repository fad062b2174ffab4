import { at } from "./at.ts";
import type { Fact } from "./gaussianLine.ts";
import type { Prepared } from "./prepare.ts";
import type { WaterLine } from "./waterLine.ts";

/**
 * What the feed jug lost, as one more thing that was seen: every pour between its two weighings, written or not.
 *
 * @param prepared the log
 * @param line whose doubts of cup and pours the jug speaks about
 * @returns one fact, or none without a jug
 * @example jugRow(prepare(run, givens), line).length // 0 or 1
 */
export function jugRow({ jug, line: g, facts }: Prepared, line: WaterLine): readonly Fact[] {
  if (!jug) return [];
  const before = facts.pours.filter((pour) => pour.time < g.start - 1e-9 && pour.time >= jug.from);
  const { cup: iCup, firstPour } = line.index;
  const predict = (z: Float64Array) => {
    const by = new Float64Array(z.length);
    const cup = 1 + g.cup.allNight * at(z, iCup);
    let value = before.reduce((sum, pour) => sum + pour.mass, 0) * cup;
    g.pours.forEach((pour, i) => {
      if (pour.time < jug.from || pour.time > jug.to) return;
      const each = 1 + g.cup.eachPour * at(z, firstPour + i);
      value += pour.mass * cup * each;
      by[iCup] = at(by, iCup) + pour.mass * each * g.cup.allNight;
      by[firstPour + i] = pour.mass * cup * g.cup.eachPour;
    });
    return { value, by };
  };
  return [
    {
      kind: "fact",
      source: "feed jug",
      time: jug.to,
      order: 0,
      y: jug.value,
      extra: jug.u ** 2,
      predict,
      perPour: () => 1,
    },
  ];
}
