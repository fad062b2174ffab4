import type { Knowing } from "../measure/types.ts";
import type { Answer } from "./Answer.ts";
import type { Solved } from "./solved.ts";
import type { SweepOptions, Swept } from "./swept.ts";
import type { TrialOptions, Tried } from "./Trial.ts";
import type { CaseFrom, Line, Notebook, OwnGiven, Result, Value, Vocabulary } from "./types.ts";

/** What a line can be set to: another text, another formula, another unit to be shown in, or a thing that no text can hold (a log). */
export type Edit =
  | { readonly given: string; readonly known?: Knowing | undefined }
  | { readonly worked: string }
  | { readonly fitted: string }
  | { readonly unit: string | undefined; readonly metricUnit?: string | undefined }
  | { readonly value: unknown };

/** A given set to an amount of lib/measure: it keeps its doubt and what that comes from. */
export interface AmountEdit {
  readonly given: Value;
}

export interface OpenOptions {
  readonly vocabulary?: Vocabulary;
  /** What some lines are to begin with: texts, or things that no text can hold. They are no edits: nothing undoes them. */
  readonly givens?: ReadonlyMap<string, unknown> | Readonly<Record<string, unknown>>;
  /** The same for single cases, by the case's name. */
  readonly inCases?: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
}

/** A case as it stands in an open notebook. */
export interface CaseShown {
  /** "" for the one case of a notebook that names none. */
  readonly name: string;
  readonly base: boolean;
  readonly hidden: boolean;
  readonly from?: CaseFrom;
}

export interface AddCase {
  /** Name of the case that it starts as a copy of; the lines as they are written if left out. */
  readonly copyOf?: string;
  /** What it has of its own, by line: texts, or things that no text can hold. */
  readonly own?: Readonly<Record<string, OwnGiven | { readonly value: unknown }>>;
  readonly from?: CaseFrom;
}

/** An opened notebook. A case left out is the base. Lines are called by their names, whatever the capitals; an unknown one is an error. */
export interface Lines {
  /** The line's answer, once it is worked out. */
  value(line: string, inCase?: string): Promise<Answer>;
  /** What the line comes to now; "working" from an edit until it is worked out. */
  result(line: string, inCase?: string): Result;
  /** The line as it is now. */
  line(line: string): Line;
  /** Its text: what was typed, or the formula. */
  text(line: string, inCase?: string): string;
  /** What a case has of its own for a given; undefined where it takes the line as written. */
  own(line: string, inCase: string): Exclude<OwnGiven, string> | undefined;
  /**
   * Changes a line. What does not change anything is no edit. A given may be changed for one case alone; without a case
   * it is changed for every case that has no text of its own. A formula and a unit hold in every case.
   * Throws `invalid edit: …` for anything else, and changes nothing then.
   */
  set(line: string, edit: Edit | AmountEdit, inCase?: string): void;
  /** Lets a case take a given as the line has it again. */
  putBack(line: string, inCase: string): void;
  /** All cases in their order. */
  cases(): readonly CaseShown[];
  /** Throws `invalid case name: …`. */
  addCase(name: string, how?: AddCase): void;
  removeCase(name: string): void;
  renameCase(name: string, next: string): void;
  /** Moves a case before another, to the end without one. */
  moveCase(name: string, before?: string): void;
  hideCase(name: string, hidden: boolean): void;
  setBase(name: string): void;
  /** Gives a case all that another has of its own. */
  copyGivens(from: string, to: string): void;
  /** The case less the base, with its own width: what both share cancels. Undefined where either has no amount. */
  less(line: string, inCase: string): Value | undefined;
  /**
   * Looks for the amount of one given at which a worked line comes to what is wanted.
   * @param wanted A text with its unit, or an amount.
   */
  solve(line: string, wanted: string | Value, by: string, inCase?: string): Promise<Solved>;
  /** Works a line for many amounts of one given, in each case asked for. */
  sweep(line: string, by: string, options: SweepOptions): Promise<readonly Swept[]>;
  /**
   * Works a line anew for many draws of all that it rests on (JCGM 101:2008), says whether the linear answer is good
   * enough, and what to show where it is not.
   */
  trial(line: string, inCase?: string, options?: TrialOptions): Promise<Tried>;
  /** A cheap look whether a trial is worth its time: false where the linear answer may not do. */
  isStraight(line: string, inCase?: string, options?: Pick<TrialOptions, "digits" | "rest">): Promise<boolean>;
  /** Changes what the notebook asks, its figures or its notes; undone like any edit. */
  setRest(was: string, rest: Partial<Pick<Notebook, "asks" | "name" | "figures" | "notes" | "answer">>): void;
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
  /** The edit that `undo` would take back, by both its names; another object for each edit. */
  did(): { readonly undo: string; readonly redo: string } | undefined;
  /** How many formulas have been worked out so far. */
  worked(): number;
  /** Tells of each line whose result changed. Gives back how to stop that. */
  observe(tell: (line: string, result: Result, inCase: string) => void): () => void;
  /** The lines whose slow function is at work. */
  atWork(): readonly string[];
  /** The same with the case of each. */
  atWorkIn(): readonly { readonly line: string; readonly inCase: string }[];
  /** Ends a line's slow work: it stays stopped, and says so, until something that it uses changes, or `again`. */
  stop(line: string, inCase?: string): void;
  /** Works a line anew: one that was stopped. */
  again(line: string, inCase?: string): void;
  /** Settles when every line is worked out. It waits for no animation frame. */
  settled(): Promise<void>;
  /** The notebook as plain data, with all edits; things that no text can hold are left out. */
  notebook(): Notebook;
  close(): void;
}
