import { at } from "./at.ts";
import { loggerWrote } from "./blockReadings.ts";
import { dot, solve } from "./cholesky.ts";
import type { Suspect } from "./explanations.ts";
import { historyOf } from "./fireHistory.ts";
import type { FittedLine } from "./fitLine.ts";
import type { Solved } from "./gaussianLine.ts";
import type { Prepared } from "./prepare.ts";
import type { LineGivens } from "./waterLine.ts";

/**
 * How likely a fire is changed at the boil without a word in a file that a logger wrote, and by how much of the first
 * fire (judgements): who writes the readings by hand writes that too.
 */
const changed = { share: 0.2, u: 0.4 };
/** s between the times that are thought of; the gusts blur a change by about as much. */
const step = 240;
/** s after the first boil in which a change cannot be told from a boil that began later than it seems. */
const settled = 900;
/** Times that are weighed against all else, the likeliest. */
const most = 6;
/** No fire is changed more often without a word in a file of a few hours. */
const mostChanges = 2;
/** No two suspects of this place are guilty at once; a pour's place is the time of its gap, never below 0. */
const place = -1;

/**
 * Fires that may have been changed without a word, as suspects: from some time on the bath boils off more or less than
 * before. Only where a logger wrote the file and no change is written.
 *
 * @param g the log in the line's shape
 * @param solved the line made straight, and solved for a usual noise
 * @example unsaidFires(prepared.line, solved).length // 0 where the readings were written by hand
 */
export function unsaidFires(g: LineGivens, solved: Solved): readonly Suspect[] {
  const { straight } = solved;
  const { rate } = straight;
  const { told } = g.fire;
  if (!(rate > 0) || told.length >= mostChanges || told.some(({ unsaid }) => !unsaid)) return [];
  if (!g.blocks.some(loggerWrote)) return [];
  const times: number[] = [];
  for (let time = g.start + settled; time <= g.end - step; time += step) times.push(time);
  const lnOdds = Math.log(changed.share / (1 - changed.share) / Math.max(1, times.length));
  return times
    .map((time) => {
      const column = Float64Array.from(straight.rows, (row, i) =>
        row.kind === "fact" ? 0 : -at(straight.perKilogram, i) * rate * Math.max(0, row.time - time),
      );
      const precision = dot(column, solve(solved.factor, column)) + 1 / changed.u ** 2;
      return { time, column, evidence: dot(column, solved.weighed) ** 2 / precision - Math.log(precision) };
    })
    .sort((a, b) => b.evidence - a.evidence)
    .slice(0, most)
    .map(({ time, column }, index) => ({
      kind: "burner",
      index,
      place,
      column,
      mean: 0,
      u: changed.u,
      count: 0,
      lnOdds,
      steam: (until) => rate * Math.max(0, until - time),
      time,
    }));
}

/** ln: a change that is taken for certain has its odds to pay no more, so the log must bear it better by most of them. */
const leastGain = 3;
/** ln: what is left of the doubt about such a change before the readings speak, about what they seemed to say at first. */
const changedTo = 0.4;

/**
 * The same log with a change of the fire in it that nobody wrote down, where that is more likely than not.
 *
 * @param prepared the log
 * @param fitted its fit
 * @returns undefined where no such change is likely
 * @example withUnsaidFire(prepared, fitted)?.line.fire.told.length
 */
export function withUnsaidFire(prepared: Prepared, { trial, line, straight, z }: FittedLine): Prepared | undefined {
  const burner = (a: number) => trial.suspects[a]?.kind === "burner";
  const share = trial.explanations.reduce((sum, { guilty, weight }) => (guilty.some(burner) ? sum + weight : sum), 0);
  const likely = trial.explanations[0];
  const which = likely?.guilty.findIndex(burner) ?? -1;
  const time = trial.suspects[likely?.guilty[which] ?? -1]?.time;
  if (share < 0.5 || !likely || time === undefined) return undefined;
  const k = line.index.rate;
  // It counts in the fire that the line was made straight about; the first fire is another one once a change is known.
  const first = Math.max(0.3, 1 + prepared.line.rate.relative * (at(z, k) - at(straight.z, k)));
  const amount = at(likely.amounts, which) / first;
  const { fire, start } = prepared.line;
  const more = (lnFactor: number) => Math.log(Math.min(3, Math.max(0.15, Math.exp(lnFactor) + amount)));
  const told = fire.told.map((change, i) => ({
    ...change,
    lnFactor: change.lnFactor + change.u * at(z, at(line.index.fire, i)),
  }));
  const before = told.filter((change) => change.time <= time);
  const changes = [
    ...before,
    { time, lnFactor: more(before.at(-1)?.lnFactor ?? 0), u: changedTo, unsaid: true },
    ...told.filter((change) => change.time > time).map((change) => ({ ...change, lnFactor: more(change.lnFactor) })),
  ];
  const minutes = Math.round((time - (prepared.thinned[0]?.time ?? start)) / 60);
  const remark = `From some ${minutes} min into the log ${amount < 0 ? "less" : "more"} boils off, as if the fire had been turned ${amount < 0 ? "down" : "up"} without a word: write each change of the burner down.`;
  return {
    ...prepared,
    line: { ...prepared.line, fire: historyOf(changes, fire.out, start) },
    remarks: [...prepared.remarks, remark],
  };
}

/**
 * Fits a log, and again for each change of the fire that it turns out to have without a word.
 *
 * @param prepared the log
 * @param fitted fits it
 * @returns the last fit, and the log that it was made of
 * @example fitUnsaid(prepared, (own) => ({ fitted: fitLine(own) })).fitted.z
 */
export function fitUnsaid<T extends { readonly fitted: FittedLine }>(
  prepared: Prepared,
  fitted: (prepared: Prepared) => T,
): T & { readonly prepared: Prepared } {
  let own = prepared;
  let found = fitted(own);
  for (;;) {
    const next = withUnsaidFire(own, found.fitted);
    if (!next) return { ...found, prepared: own };
    const then = fitted(next);
    // Made straight about the change, the log may turn out to bear it no better.
    if (then.fitted.trial.lnEvidence < found.fitted.trial.lnEvidence + leastGain) return { ...found, prepared: own };
    own = next;
    found = then;
  }
}
