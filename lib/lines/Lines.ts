import type { Knowing } from "../measure/types.ts";
import type { Answer } from "./Answer.ts";
import type { Line, Notebook, Result, Vocabulary } from "./types.ts";

/** What a line can be set to: another text, another formula, or a thing that no text can hold (a log). */
export type Edit =
  | { readonly given: string; readonly known?: Knowing | undefined }
  | { readonly worked: string }
  | { readonly fitted: string }
  | { readonly value: unknown };

export interface OpenOptions {
  readonly vocabulary?: Vocabulary;
  /** What some lines are to begin with: texts, or things that no text can hold. They are no edits: nothing undoes them. */
  readonly givens?: ReadonlyMap<string, unknown> | Readonly<Record<string, unknown>>;
}

/** An opened notebook. Lines are called by their names, whatever the capitals; an unknown one is an error. */
export interface Lines {
  /** The line's answer, once it is worked out. */
  value(line: string): Promise<Answer>;
  /** What the line comes to now; "working" from an edit until it is worked out. */
  result(line: string): Result;
  /** The line as it is now. */
  line(line: string): Line;
  /** Its text: what was typed, or the formula. */
  text(line: string): string;
  /** Changes a line. What does not change anything is no edit. */
  set(line: string, edit: Edit): void;
  /** Adds a line at the end, or behind another. Throws `invalid line name: …` with the reason for a name that is refused. */
  add(name: string, line: Line, after?: string): void;
  /** Removes a line; formulas that name it say so. */
  remove(line: string): void;
  /** Gives a line another name, in every formula and in the answer too. */
  rename(line: string, name: string): void;
  /** All that is done inside is one edit, with one name: "another run was open". */
  together(was: string, edits: () => void): void;
  names(): readonly string[];
  /** The lines that its formula names, and those whose formulas name it. */
  uses(line: string): readonly string[];
  usedBy(line: string): readonly string[];
  undo(): boolean;
  redo(): boolean;
  /** "Undo: altitude was 2,100 ft", or undefined when there is nothing to undo. */
  undoName(): string | undefined;
  redoName(): string | undefined;
  /** How many formulas have been worked out so far. */
  worked(): number;
  /** Tells of each line whose result changed. Gives back how to stop that. */
  observe(tell: (line: string, result: Result) => void): () => void;
  /** The lines whose slow function is at work. */
  atWork(): readonly string[];
  /** Ends a line's slow work: it stays stopped, and says so, until something that it uses changes, or `again`. */
  stop(line: string): void;
  /** Works a line anew: one that was stopped. */
  again(line: string): void;
  /** Settles when every line is worked out. It waits for no animation frame. */
  settled(): Promise<void>;
  /** The notebook as plain data, with all edits; things that no text can hold are left out. */
  notebook(): Notebook;
  close(): void;
}
