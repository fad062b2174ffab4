import type { Dimension, Kind, Knowing, Value, Written } from "../measure/types.ts";

/** A typed-in line: text as the maker wrote it. Empty text means "not given", which formulas can deal with. */
export interface Given {
  readonly kind: "given";
  readonly text: string;
  readonly known?: Knowing;
  /** Name for machines (`data-line`), where it differs from the line's name with its blanks made underscores. */
  readonly key?: string;
  /** Unit taken when none is written, and the kind of quantity that is expected ("lb", "°F", "in"). */
  readonly unit?: string;
  readonly metricUnit?: string;
  /** Heading under which the page lists the line, and a sentence for who asks what it is. */
  readonly group?: string;
  readonly about?: string;
  /** Not listed among the givens: the log, or a line that the page shows in its own way. */
  readonly hidden?: boolean;
  /** Seldom needed: the page folds it away. */
  readonly rare?: boolean;
  /** What the fact belongs to, if it outlives the case: the page keeps it with that thing for the next time. */
  readonly keptWith?: string;
  /** Never carried over from an invented thing: a figure measured on one instrument means nothing for another. */
  readonly ownOnly?: boolean;
  /** Taken as exact unless a ± is written: a target is decided, not measured. */
  readonly exact?: boolean;
  /** A given that is not a number: one word of a few. */
  readonly choices?: readonly string[];
  /**
   * What the text is read as: a kind of quantity as lib/measure names it ("mass", "water", "temperature" …);
   * "words", the text itself; or "anything", any number with or without a unit. Left out, it is the kind that `unit` tells.
   */
  readonly takes?: string;
  /** Smallest and largest amount that makes sense, SI: beyond it the text is refused, with the reason beside it. */
  readonly atLeast?: number;
  readonly atMost?: number;
  /** An amount handed in as it is, in place of a text: what a fit found, with its doubt. */
  readonly value?: Value;
}

/** A line worked out from others by one formula. `fitted` is the same, read out of a log. */
export interface Worked {
  readonly kind: "worked" | "fitted";
  readonly formula: string;
  readonly unit?: string;
  readonly metricUnit?: string;
  readonly key?: string;
  readonly group?: string;
  readonly about?: string;
  /** Written out as a bare result of the page's own making (a table, a fit): never listed among the numbers. */
  readonly hidden?: boolean;
  /** Seldom known: the page lists it only when it has a number. */
  readonly rare?: boolean;
  /** Shown without its spread: a limit that was decided, a span read off a clock. */
  readonly plain?: boolean;
  /** The thing in the figure whose mark the number wears in the answer. */
  readonly mark?: string;
  /** What the line is called where its number is below 0; it is then shown without its sign. */
  readonly below?: string;
  /** Its error can hurt: in a sentence it is a limit at the safe end of its interval, rounded to the safe side. */
  readonly safe?: "at most" | "at least";
  /** Stands beside the number wherever it is listed. */
  readonly caution?: string;
}

export type Line = Given | Worked;

/** One clause of the answer, with line names in braces; `otherwise` is said where one of them has no number. */
export interface Clause {
  readonly says: string;
  readonly otherwise?: string | Clause;
  /** Stand beside the clause; one with line names in braces only where all of them have come to something. */
  readonly caution?: string | readonly string[];
}

/**
 * What a case has of its own for a given: its text alone, or with how it is known. A reading of its own is independent
 * of the other cases' readings, unless `sameAs` names the case whose very reading it is.
 */
export type OwnGiven = string | { readonly text: string; readonly known?: Knowing; readonly sameAs?: string };

/** Where a case was taken from, for the page to say and to find things that no text can hold (a run's log). */
export interface CaseFrom {
  readonly kind: "run" | "setup" | "bath" | "case";
  readonly id: string;
  /** In words: "fitted 9 Nov". */
  readonly says?: string;
}

/** A figure that a maker made of lines, without a programmer. `by`, `from` and `to`: a given and texts with units. */
export type OwnFigure =
  | { readonly draws: "a line across cases"; readonly line: string; readonly title?: string }
  | {
      readonly draws: "a sweep";
      readonly line: string;
      readonly by: string;
      readonly from: string;
      readonly to: string;
      readonly title?: string;
    }
  | {
      readonly draws: "a line against another";
      readonly line: string;
      readonly against: string;
      readonly title?: string;
    };

export interface Notebook {
  readonly asks: string;
  readonly name?: string;
  readonly lines: Readonly<Record<string, Line>>;
  /** By name, in order: what each has of its own; every other given stands as its line says. Left out, there is one. */
  readonly cases?: Readonly<Record<string, Readonly<Record<string, OwnGiven>>>>;
  /** The case that the others are compared with; the first if left out. */
  readonly base?: string;
  /** Cases that are kept but not shown. */
  readonly hiddenCases?: readonly string[];
  readonly casesFrom?: Readonly<Record<string, CaseFrom>>;
  /** Clauses with line names in braces: "In the band {minutes in band} of {hold time}". */
  readonly answer?: string | readonly (string | Clause)[];
  /** Figures that come with the tool by name, and the maker's own. */
  readonly figures?: readonly (string | OwnFigure)[];
  /** Paragraphs of plain text. */
  readonly notes?: readonly string[];
}

/** What a line came to. Errors are values: the rest of the notebook goes on. */
export type Result =
  /** `written` is there for a given: the unit and the way of knowing that its text told. */
  | { readonly state: "settled"; readonly value: unknown; readonly written?: Written }
  /**
   * A slow function is at work; ask again when the line is told of. `before` is what the line came to last, to be shown
   * as such; `says` and `share` (0..1) how far the work is, as far as it tells.
   */
  | { readonly state: "working"; readonly before?: unknown; readonly says?: string; readonly share?: number }
  | { readonly state: "not given" }
  /** `byYou`: somebody stopped the work; it can be done again. */
  | { readonly state: "stopped"; readonly says: string; readonly at?: number; readonly byYou?: true }
  | { readonly state: "waits"; readonly for: string };

/** The work of a slow function, as seen from inside: it tells how far it is, and hears when nobody waits for it. */
export interface Job {
  /** How far it is, in words, and the share that is done (0..1) where that is known. */
  says(words: string, share?: number): void;
  /** Called back, once, when the work is no longer wanted: a newer edit came, or somebody stopped it. */
  onStop(end: () => void): void;
}

/** One thing that a function is given. */
export interface Taken {
  readonly name: string;
  readonly optional?: boolean;
  /** What it measures, as a kind of lib/measure or by its exponents: anything else is refused before the call. */
  readonly kind?: Kind | Dimension;
}

interface FuncFacts {
  readonly name: string;
  readonly takes: readonly Taken[];
  readonly says: string;
  readonly source?: string;
  /** Amounts that it is given must be of one kind: where they are not, the error names both. */
  readonly alike?: true;
}

/** A function of whatever lines come to: amounts, words, logs. Amounts bring their doubt, and it sees to that itself. */
export interface FuncOfThings extends FuncFacts {
  readonly gives?: Kind | Dimension;
  /** May give a promise. */
  readonly work: (...args: readonly unknown[]) => unknown;
  /** The same off this thread, in place of `work`: with progress, and an end when it is no longer wanted. */
  readonly slow?: (job: Job, ...args: readonly unknown[]) => PromiseLike<unknown>;
  readonly numbers?: never;
  readonly slowNumbers?: never;
}

interface FuncOfNumbers extends FuncFacts {
  /** What the number measures; a plain number if left out. */
  readonly gives?: Kind | Dimension;
  /** The slopes ∂/∂x for each argument, where they are known exactly; differences are taken otherwise. */
  readonly partials?: (...si: number[]) => readonly number[];
  /** What the function itself is not sure of (a coefficient): handed in behind the arguments, and its doubt counted too. */
  readonly besides?: readonly Value[];
  readonly work?: never;
  readonly slow?: never;
}

/**
 * A function of plain SI numbers; an argument that is left out is undefined. Doubt is carried for it, source by source.
 * It throws outside its range, and says the range.
 */
export interface FastFunc extends FuncOfNumbers {
  readonly numbers: (...si: number[]) => number;
  readonly slowNumbers?: never;
}

/** The same for a function that takes long: it is asked for all it takes at once, so that this can run side by side. */
export interface SlowFunc extends FuncOfNumbers {
  readonly slowNumbers: (job: Job, ...si: number[]) => PromiseLike<number>;
  readonly numbers?: never;
}

/** A function that formulas can call, handed in from outside: lines knows nothing of baths. One of three forms. */
export type Func = FuncOfThings | FastFunc | SlowFunc;

export interface Vocabulary {
  readonly functions: readonly Func[];
}

export type { Value };
