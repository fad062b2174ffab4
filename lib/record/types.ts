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

interface Kept {
  readonly id: string;
  /** When it was last changed, ISO 8601 in UTC: between two open tabs the later change wins. */
  readonly changed: string;
  readonly name: string;
  /** Made by our generator, not by a tank: shown wherever it appears. */
  readonly invented?: boolean;
  /** Thrown away by the maker: kept, so that it can be brought back. */
  readonly removed?: boolean;
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

export interface ShopRecord {
  /** Number of the schema this record follows. */
  readonly schema: 1;
  readonly kind: "shop record";
  readonly id: string;
  readonly saved: string;
  readonly settings: { readonly units: "US" | "metric"; readonly openRun?: string };
  readonly setups: readonly Setup[];
  readonly baths: readonly Bath[];
  readonly runs: readonly KeptRun[];
  readonly notebooks: readonly (Kept & { readonly notebook: unknown })[];
}
