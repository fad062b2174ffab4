import type { Written } from "../measure/types.ts";

export type EntryKind =
  | "reading"
  | "addition"
  | "salt in"
  | "burner"
  | "parts in"
  | "parts out"
  | "depth"
  | "level"
  | "cylinder"
  | "remark";

/**
 * One thing that a log says. A row of a table with a temperature and a pour gives two entries with the same
 * time and line. Quantities: reading in K (a point), addition and level in kg of water, salt in and cylinder
 * in kg, parts in/out in kg where a weight was written, depth in m, burner as a share of full fire (1 = full).
 */
export interface Entry {
  readonly id: string;
  /** s from the first row of the log. */
  readonly time: number;
  /** The time as it was written ("7:51 pm"), absent where none was. */
  readonly clock?: string;
  readonly kind: EntryKind;
  readonly quantity?: Written;
  /** The words of a remark or event, as written. */
  readonly text?: string;
  /** An addition that flows rather than being poured at once: how long it ran, s. */
  readonly duration?: number;
  /** Line of the source text, from 1. 0 for an entry made on the page. */
  readonly line: number;
  readonly struck: boolean;
  /** Why it was struck out, in the maker's words. */
  readonly reason?: string;
  /** What the entry said before it was corrected, oldest first. */
  readonly before?: readonly string[];
}

export interface Run {
  readonly entries: readonly Entry[];
  /** Local date and time of the first row, ISO 8601 without zone, as far as the log told ("2026-11-09T19:40"). */
  readonly start?: string;
  /** What the log's own headings said about the temperature unit and such, to show beside the log. */
  readonly columns?: readonly { readonly heading: string; readonly taken: string }[];
}

export interface Problem {
  readonly line: number;
  readonly read: string;
  readonly expected: string;
  readonly remedy: string;
}

/** Something a log leaves open. The reading that was taken is the likeliest; the answer to a question changes it. */
export interface Question {
  readonly id: string;
  readonly asks: string;
  readonly line?: number;
  /** The answer that was taken, one of `answers[].answer`. */
  readonly taken: string;
  readonly answers: readonly { readonly answer: string; readonly says: string; readonly changes: string }[];
}

/** Answers by question id: settle what a log leaves open. Unknown ids and answers are reported as problems. */
export type Hints = Readonly<Record<string, string>>;

export interface LogReading {
  readonly run: Run;
  readonly problems: readonly Problem[];
  readonly questions: readonly Question[];
}
