import type { LogForFit, TruthForFit } from "../../../data/generator/inventLogForFit.ts";

/** What a fit says of one quantity. */
export interface Said {
  readonly value: number;
  readonly interval95: readonly [low: number, high: number];
}

/** The quantities that are judged, by their names in a fit's result. */
export type AnswerName =
  | "boilOff"
  | "makeUp"
  | "water"
  | "waterStart"
  | "waterEnd"
  | "waterToTarget"
  | "untilOutOfBand";

/** Any of the answers; `water` is that at the first row, `waterStart` that at the first boil. */
export type Fit = (log: LogForFit) => Partial<Readonly<Record<AnswerName, Said>>>;

interface Question {
  readonly truth: (truth: TruthForFit) => number;
  /** What errors and widths are told in shares of: the truth itself, or a fixed amount where the truth may be 0. */
  readonly per: "truth" | number;
  readonly unit: string;
}

const flOz = 0.0295735295625 * 0.9982;

/** How each answer is held against the truth. */
export const questions: Readonly<Record<AnswerName, Question>> = {
  boilOff: { truth: ({ boilOff }) => boilOff, per: "truth", unit: "%" },
  makeUp: { truth: ({ makeUp }) => makeUp, per: "truth", unit: "%" },
  water: { truth: ({ waterAtFirstRow }) => waterAtFirstRow, per: "truth", unit: "%" },
  waterStart: { truth: ({ waterAtBoil }) => waterAtBoil, per: "truth", unit: "%" },
  waterEnd: { truth: ({ waterAtEnd }) => waterAtEnd, per: "truth", unit: "%" },
  waterToTarget: { truth: ({ waterToTarget }) => waterToTarget, per: flOz, unit: "fl oz" },
  untilOutOfBand: { truth: ({ untilOutOfBand }) => untilOutOfBand, per: 60, unit: "min" },
};

/** One answer to one log. Error, half-width and score in the question's unit as a plain share or count. */
export interface Outcome {
  readonly log: Pick<LogForFit, "seed" | "kind">;
  readonly name: AnswerName;
  readonly holds: boolean;
  /** Signed: above 0 where the fit says too much. */
  readonly error: number;
  readonly half: number;
  /** Width + 40 x what sticks out: a width cannot buy coverage (Gneiting and Raftery, JASA 102 (2007) 359, section 6.2; from memory). */
  readonly score: number;
}

export interface Figures {
  readonly logs: number;
  /** 0..1. */
  readonly coverage: number;
  readonly medianError: number;
  readonly medianHalf: number;
  readonly medianScore: number;
  readonly meanScore: number;
  readonly meanBias: number;
  readonly medianBias: number;
}

export interface Judgement {
  readonly outcomes: readonly Outcome[];
  /** Logs that the fit threw at. */
  readonly refused: readonly { readonly seed: number; readonly message: string }[];
}

/**
 * Holds a fit against the truth of invented logs, log by log. Answers that the fit does not give are not judged; an
 * interval that is not finite or does not hold its own value counts as a refusal with its reason.
 */
export function judge(logs: Iterable<LogForFit>, answersTo: Fit): Judgement {
  const outcomes: Outcome[] = [];
  const refused: { seed: number; message: string }[] = [];
  for (const log of logs) {
    let said: ReturnType<Fit>;
    try {
      said = answersTo(log);
    } catch (error) {
      refused.push({ seed: log.seed, message: error instanceof Error ? error.message : String(error) });
      continue;
    }
    for (const name of Object.keys(questions) as AnswerName[]) {
      const answer = said[name];
      if (answer === undefined) continue;
      const outcome = outcomeOf(log, name, answer);
      if (typeof outcome === "string") refused.push({ seed: log.seed, message: `${name}: ${outcome}` });
      else outcomes.push(outcome);
    }
  }
  return { outcomes, refused };
}

function outcomeOf(log: LogForFit, name: AnswerName, { value, interval95 }: Said): Outcome | string {
  const question = questions[name];
  // A bath that never leaves its band within eight hours is judged at eight hours.
  const longest = 8 * 3600;
  const cap = (x: number) => (name === "untilOutOfBand" ? Math.min(longest, x) : x);
  const truth = cap(question.truth(log.truth));
  const [low, high] = [cap(interval95[0]), cap(interval95[1])];
  const guess = cap(value);
  if (![truth, low, high, guess].every(Number.isFinite)) return `not finite: ${value} in ${low} to ${high}`;
  if (low > guess || high < guess) return `value outside its own interval: ${value} in ${low} to ${high}`;
  const unit = question.per === "truth" ? Math.abs(truth) : question.per;
  const out = Math.max(0, low - truth, truth - high);
  return {
    log: { seed: log.seed, kind: log.kind },
    name,
    holds: out === 0,
    error: (guess - truth) / unit,
    half: (high - low) / 2 / (question.per === "truth" ? Math.abs(guess) : unit),
    score: (high - low + 40 * out) / unit,
  };
}

export function median(list: readonly number[]): number {
  const sorted = [...list].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const [low, high] = [sorted[sorted.length % 2 ? half : half - 1], sorted[half]];
  return low === undefined || high === undefined ? Number.NaN : (low + high) / 2;
}

/** The figures of some outcomes of one answer. */
export function figuresOf(outcomes: readonly Outcome[]): Figures {
  const logs = outcomes.length;
  const mean = (of: (outcome: Outcome) => number) => outcomes.reduce((sum, one) => sum + of(one), 0) / logs;
  return {
    logs,
    coverage: mean(({ holds }) => (holds ? 1 : 0)),
    medianError: median(outcomes.map(({ error }) => Math.abs(error))),
    medianHalf: median(outcomes.map(({ half }) => half)),
    medianScore: median(outcomes.map(({ score }) => score)),
    meanScore: mean(({ score }) => score),
    meanBias: mean(({ error }) => error),
    medianBias: median(outcomes.map(({ error }) => error)),
  };
}
