import type { Notebook } from "../lines/types.ts";
import type { Hints, Run } from "../log/types.ts";
import type { Knowing } from "../measure/types.ts";

/** A fact of a bath, a setup or a run: what the maker wrote and how it is known. */
export interface Fact {
  readonly text: string;
  readonly known?: Knowing;
  /** Brought over from the setup or bath and not yet looked at for this run. */
  readonly carriedOver?: boolean;
}

/** Facts by line name: "sodium hydroxide", "altitude", "tank length" … */
export type Facts = Readonly<Record<string, Fact>>;

/** What an item said before it was changed. */
export interface Was {
  /** When it stopped saying so, ISO 8601 in UTC. */
  readonly at: string;
  /** The line, or the part of the item, that was changed. */
  readonly what: string;
  readonly was: string;
}

/** What every setup, bath, run and notebook of the record carries. */
export interface Kept {
  readonly id: string;
  /** When it was last changed, ISO 8601 in UTC: between two open tabs the later change wins. */
  readonly changed: string;
  readonly name: string;
  /** Made by our generator, not by a tank: shown wherever it appears. */
  readonly invented?: boolean;
  /** Thrown away by the maker: kept, so that it can be brought back. */
  readonly removed?: boolean;
  /** What it said before each change, oldest first. */
  readonly history?: readonly Was[];
}

/** A tank, its burner and cylinder, its thermometer. Holds no salts. */
export interface Setup extends Kept {
  readonly facts: Facts;
  /** Answers to questions about logs that held for this setup. */
  readonly hints: Hints;
}

/** Salt and water as a running account; outlives a run. */
export interface Bath extends Kept {
  readonly facts: Facts;
  readonly account: readonly {
    readonly id: string;
    readonly date: string;
    readonly kind: "charge" | "top-up" | "water" | "drag-out" | "sludge out" | "stored" | "emptied";
    readonly text: string;
  }[];
}

/** One firing. Its facts are copies: a later change to setup or bath never alters it. */
export interface KeptRun extends Kept {
  readonly setup?: string;
  readonly bath?: string;
  readonly date?: string;
  readonly facts: Facts;
  readonly log: Run;
  /** The log as it came, so that it can be read again with other answers. */
  readonly source: string;
  readonly hints: Hints;
  /** How the parts came out, in the maker's words. */
  readonly outcome?: string;
}

/** A notebook as plain data: what a text can hold of it. */
export interface NotebookData extends Notebook {
  /** The cases in their order: keys have none that a merge could keep. */
  readonly caseOrder?: readonly string[];
}

/** A notebook of the maker's own. */
export interface KeptNotebook extends Kept {
  readonly notebook: NotebookData;
  /** Name of the notebook that these lines, cases and figures are laid over; left out, it stands for itself. */
  readonly of?: string;
}

export interface Settings {
  readonly units: "US" | "metric";
  /** Id of the run that was open last. */
  readonly openRun?: string;
  /** When a copy was last saved to a file, ISO 8601 in UTC: a browser may drop what it keeps. */
  readonly copied?: string;
  /** When the settings were last changed, ISO 8601 in UTC. */
  readonly changed?: string;
}

export interface ShopRecord {
  /** Number of the schema this record follows. */
  readonly schema: 2;
  readonly kind: "shop record";
  readonly id: string;
  readonly saved: string;
  readonly settings: Settings;
  readonly setups: readonly Setup[];
  readonly baths: readonly Bath[];
  readonly runs: readonly KeptRun[];
  readonly notebooks: readonly KeptNotebook[];
}

/** The lists of a shop record, each by the name of its field, and what it holds. */
export interface Lists {
  readonly setups: Setup;
  readonly baths: Bath;
  readonly runs: KeptRun;
  readonly notebooks: KeptNotebook;
}

export type ListName = keyof Lists;

/** When a change is made, ISO 8601 in UTC, and where new ids come from: handed in, so that a test can fix both. */
export interface Moment {
  readonly now: string;
  readonly newId: () => string;
}

/** Why a file is not a shop record that can be opened, worded for the maker. The file itself is never changed. */
export interface RecordProblem {
  /** The place in words: `runs, 3rd ("Tuesday"), facts, "altitude"`. */
  readonly where: string;
  /** The same place as a JSON Pointer (RFC 6901), "" for the whole file. */
  readonly pointer: string;
  readonly read: string;
  readonly expected: string;
  readonly remedy: string;
}

export type RecordReading =
  | {
      readonly record: ShopRecord;
      /** The number of the older schema that the text followed, where it was brought up to date. */
      readonly upgradedFrom?: number;
    }
  | { readonly problem: RecordProblem };
