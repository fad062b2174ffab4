import type { Hints, Problem, Question } from "./types.ts";

/** Every question that a log can leave open. Ids stay as they are: a shop record keeps answers by them. */
export const questionIds = [
  "time",
  "day or month first",
  "temperature unit",
  "temperature column",
  "water unit",
  "water column",
  "pour on a reading's row",
  "depth unit",
  "jug unit",
  "cylinder unit",
  "salt unit",
  "parts unit",
  "drip end",
] as const;

export type QuestionId = (typeof questionIds)[number];

interface Choice<Answer extends string> {
  readonly id: QuestionId;
  readonly asks: string;
  readonly line?: number;
  /** What the log itself makes likeliest. */
  readonly likeliest: Answer;
  readonly answers: readonly { readonly answer: Answer; readonly says: string; readonly changes: string }[];
  /** False where the log itself settles it: then nothing is asked and an answer kept from another log does not count. */
  readonly open: boolean;
}

export interface Inquiry {
  readonly hints: ReadonlyMap<string, string>;
  readonly questions: Question[];
  readonly problems: Problem[];
}

/**
 * Settles one question: by the answer given beforehand, else by the likeliest one, and then asks if it is open.
 *
 * @param inquiry answers given, and the lists that questions and problems are added to
 * @param choice the question with its answers
 * @returns the answer that is taken
 * @example
 * settle(inquiry, { id: "time", asks: "…", likeliest: "minutes", answers, open: true }) // "minutes"
 */
export function settle<Answer extends string>(inquiry: Inquiry, choice: Choice<Answer>): Answer {
  const { id, asks, line, likeliest, answers, open } = choice;
  if (!open) return likeliest;
  const given = inquiry.hints.get(id);
  const answered = answers.find(({ answer }) => answer === given);
  if (answered !== undefined) return answered.answer;
  if (given !== undefined) {
    inquiry.problems.push({
      line: line ?? 1,
      read: `the answer "${given.slice(0, 60)}" to "${id}"`,
      expected: `one of: ${answers.map(({ answer }) => answer).join("; ")}`,
      remedy: `"${likeliest}" was taken as the likeliest. Answer the question again.`,
    });
  }
  if (answers.length > 1) {
    inquiry.questions.push({ id, asks, ...(line === undefined ? {} : { line }), taken: likeliest, answers });
  }
  return likeliest;
}

/**
 * Answers given beforehand as a map, and a problem for each id that no question has.
 *
 * @param hints answers by question id
 * @returns the start of an inquiry
 * @example
 * openInquiry({ time: "minutes" }).hints.get("time") // "minutes"
 */
export function openInquiry(hints: Hints): Inquiry {
  const problems: Problem[] = [];
  const known: readonly string[] = questionIds;
  const map = new Map(Object.entries(hints).map(([id, answer]) => [id, String(answer)]));
  for (const [id, answer] of map) {
    if (known.includes(id)) continue;
    problems.push({
      line: 1,
      read: `an answer "${answer.slice(0, 60)}" to a question "${id.slice(0, 60)}"`,
      expected: `one of the questions: ${known.join("; ")}`,
      remedy: "It was left aside. Answer the questions that are shown with this log.",
    });
  }
  return { hints: map, questions: [], problems };
}
