import type { LogKind } from "../../../data/generator/inventLogForFit.ts";
import { type AnswerName, type Figures, figuresOf, type Judgement, type Outcome, questions } from "./judge.ts";

const some = (count: number, steps: readonly number[]) => {
  const from = steps.findLast((step) => count >= step) ?? 0;
  const next = steps[steps.indexOf(from) + 1];
  if (next === undefined) return `${from} or more`;
  return next - 1 === from ? `${from}` : `${from} to ${next - 1}`;
};

/** Ways to sort logs; each gives a log's label, or undefined where the question does not arise. */
export const sorts: Readonly<Record<string, (kind: LogKind) => string | undefined>> = {
  pours: ({ habit, pours }) => (habit === "drip" ? "drip" : some(pours, [0, 1, 3, 6, 12, 24])),
  unwritten: ({ habit, unwritten, pours }) =>
    habit === "drip" || pours === 0 ? undefined : some(unwritten, [0, 1, 2, 3]),
  misread: ({ misread }) => some(misread, [0, 1, 2]),
  "warm-up": ({ warmUp }) => warmUp,
  "water told": ({ waterTold }) => (waterTold ? "yes" : "no"),
  "below its boil": ({ offBoil }) => (offBoil < 0.1 ? "under 10 %" : offBoil < 0.4 ? "10 to 40 %" : "40 % or more"),
  habit: ({ habit }) => habit,
  minutes: ({ wholeMinutes }) => (wholeMinutes ? "whole" : "seconds"),
  readings: ({ readings }) => some(readings, [0, 12, 20, 40]),
};

/** Outcomes of one answer under each label of one sort. */
export function byKind(outcomes: readonly Outcome[], sort: (kind: LogKind) => string | undefined) {
  const groups = new Map<string, Outcome[]>();
  for (const outcome of outcomes) {
    const label = sort(outcome.log.kind);
    if (label !== undefined) groups.set(label, [...(groups.get(label) ?? []), outcome]);
  }
  return new Map([...groups].sort(([a], [b]) => a.localeCompare(b, "en", { numeric: true })));
}

function line(label: string, figures: Figures, isShare: boolean): string {
  const cell = (x: number) => (isShare ? `${(100 * x).toFixed(1)} %` : x.toFixed(1));
  const { logs, coverage, medianError, medianHalf, medianScore, meanScore, meanBias, medianBias } = figures;
  const figuresShown = [medianError, medianHalf, medianScore, meanScore, meanBias, medianBias].map(cell);
  return `| ${[label, logs, `${(100 * coverage).toFixed(1)} %`, ...figuresShown].join(" | ")} |`;
}

const heads = [
  "logs",
  "coverage",
  "median error",
  "median half-width",
  "median score",
  "mean score",
  "mean bias",
  "median bias",
];
const head = (what: string) => `| ${what} | ${heads.join(" | ")} |\n|${" --- |".repeat(heads.length + 1)}`;

/** All answers over all logs, a row each. */
export function tableOfAnswers({ outcomes, refused }: Judgement): string {
  const rows = (Object.keys(questions) as AnswerName[]).flatMap((name) => {
    const mine = outcomes.filter((outcome) => outcome.name === name);
    const { per, unit } = questions[name];
    return mine.length === 0 ? [] : [line(`${name} (${unit})`, figuresOf(mine), per === "truth")];
  });
  return [head("answer"), ...rows, `refused: ${refused.length}`].join("\n");
}

/** One answer by kind of log: each sort with its labels, then each fault with the logs that have it. */
export function tableByKind({ outcomes }: Judgement, name: AnswerName): string {
  const mine = outcomes.filter((outcome) => outcome.name === name);
  const isShare = questions[name].per === "truth";
  const sorted = Object.entries(sorts).flatMap(([sort, of]) =>
    [...byKind(mine, of)].map(([label, group]) => line(`${sort}: ${label}`, figuresOf(group), isShare)),
  );
  const faults = [...new Set(mine.flatMap(({ log }) => log.kind.faults))].sort();
  const faulty = faults.map((fault) => {
    const group = mine.filter(({ log }) => log.kind.faults.includes(fault));
    return line(`fault: ${fault}`, figuresOf(group), isShare);
  });
  return [head(name), ...sorted, ...faulty].join("\n");
}
