import { answerOf } from "../../bath/answer.ts";
import { at } from "../../bath/at.ts";
import type { FittedLine } from "../../bath/fitLine.ts";
import type { Prepared } from "../../bath/prepare.ts";
import type { Run } from "../../log/types.ts";
import type { ProbablyMisread, ProbablyUnwritten } from "./types.ts";

/** Below this nobody need be told. */
const least = 0.3;
/** K (3 °F): a reading that is less off than this is not misread, whatever the likelihoods say: it is read off. */
const slight = 1.67;
/** Weights add up to 1 but for rounding. */
const probability = (weight: number): number => Math.min(1, weight);

interface Shared {
  weight: number;
  amount: number;
  square: number;
}

/** How likely each suspect is, and how much of it then, over all explanations. */
function shares({ trial }: FittedLine): readonly Shared[] {
  const all = trial.suspects.map(() => ({ weight: 0, amount: 0, square: 0 }));
  for (const { guilty, weight, amounts, covariance } of trial.explanations) {
    guilty.forEach((a, i) => {
      const slot = all[a];
      if (!slot) return;
      const amount = at(amounts, i);
      slot.weight += weight;
      slot.amount += weight * amount;
      slot.square += weight * (amount * amount + at(covariance, i * guilty.length + i));
    });
  }
  return all;
}

const minutes = (seconds: number): string => `${Math.round(seconds / 60)}`;

/**
 * Pours that were probably made and not written down, likeliest first.
 *
 * @param run the log
 * @param prepared the same, prepared
 * @param fitted its fit
 * @returns those with a probability of 0.3 or more
 * @example probablyUnwritten(run, prepared, fitted)[0]?.probability
 */
export function probablyUnwritten(run: Run, { line }: Prepared, fitted: FittedLine): readonly ProbablyUnwritten[] {
  const rows = run.entries.filter((entry) => !entry.struck);
  const last = line.blocks.at(-1)?.time ?? line.end;
  return shares(fitted)
    .flatMap(({ weight, amount, square }, a): ProbablyUnwritten[] => {
      const suspect = fitted.trial.suspects[a];
      if (suspect?.kind !== "pour" || weight < least) return [];
      const time = fitted.pourTimes.get(a) ?? line.start;
      const before = line.pours.filter((pour) => pour.time <= time).at(-1)?.time ?? line.start;
      const after = line.pours.find((pour) => pour.time > time)?.time ?? last;
      const kg = amount / weight;
      const u = Math.sqrt(Math.max(1e-12, square / weight - kg * kg));
      const mass = answerOf(
        kg,
        [kg - 1.96 * u, kg + 1.96 * u],
        { mass: 1 },
        new Map([["what was not written down", u]]),
      );
      const stands = rows.filter((entry) => entry.time <= time).at(-1)?.id;
      const gap = `no pour is written for ${minutes(after - before)} min, and the readings after it are as low as if ${suspect.count === 1 ? "one was" : `${suspect.count} were`} made`;
      return [
        {
          probability: probability(weight),
          from: before,
          to: after,
          time,
          mass,
          count: suspect.count,
          ...(stands === undefined ? {} : { after: stands }),
          reason: gap,
        },
      ];
    })
    .sort((a, b) => b.probability - a.probability);
}

/**
 * Readings that probably do not belong, likeliest first.
 *
 * @param run the log
 * @param prepared the same, prepared
 * @param fitted its fit
 * @returns those with a probability of 0.3 or more
 * @example probablyMisread(run, prepared, fitted)[0]?.off
 */
export function probablyMisread(run: Run, { line }: Prepared, fitted: FittedLine): readonly ProbablyMisread[] {
  return shares(fitted)
    .flatMap(({ weight, amount }, a): ProbablyMisread[] => {
      const suspect = fitted.trial.suspects[a];
      const row = fitted.straight.rows[suspect?.index ?? -1];
      if (suspect?.kind !== "misread" || row?.kind !== "reading" || weight < least) return [];
      const id = line.blocks[suspect.index]?.id;
      const entry = run.entries.find(
        (one) =>
          one.kind === "reading" &&
          !one.struck &&
          (id === undefined ? one.time === row.time && one.quantity?.si === row.y : one.id === id),
      );
      if (!entry) return [];
      const off = amount / weight;
      if (Math.abs(off) < slight) return [];
      return [
        {
          id: entry.id,
          line: entry.line,
          time: entry.time,
          probability: probability(weight),
          off,
          reason: `about ${Math.abs(off * 1.8).toFixed(0)} °F ${off > 0 ? "above" : "below"} what the other readings say`,
        },
      ];
    })
    .sort((a, b) => b.probability - a.probability);
}
