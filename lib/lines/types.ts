import type { Knowing, Value } from "../measure/types.ts";

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
  /** A given that is not a number: the log itself, or one word of a few. */
  readonly choices?: readonly string[];
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
}

export type Line = Given | Worked;

export interface Notebook {
  readonly asks: string;
  readonly name?: string;
  readonly lines: Readonly<Record<string, Line>>;
  /** Clauses with line names in braces: "In the band {minutes in band} of {hold time}". */
  readonly answer?: readonly string[] | string;
  readonly figures?: readonly string[];
  readonly notes?: readonly string[];
}

/** What a line came to. Errors are values: the rest of the notebook goes on. */
export type Result =
  | { readonly state: "settled"; readonly value: unknown }
  | { readonly state: "not given" }
  | { readonly state: "stopped"; readonly says: string; readonly at?: number }
  | { readonly state: "waits"; readonly for: string };

/** A function that formulas can call, handed in from outside: lines knows nothing of baths. */
export interface Func {
  readonly name: string;
  readonly takes: readonly { readonly name: string; readonly optional?: boolean }[];
  readonly says: string;
  readonly source?: string;
  readonly work: (...args: readonly unknown[]) => unknown;
}

export interface Vocabulary {
  readonly functions: readonly Func[];
}

export type { Value };
