import type { Hints, Run } from "../log/types.ts";
import { itemOf } from "./changeItem.ts";
import { keyed } from "./keyed.ts";
import type { Fact, Facts, KeptRun, Moment, ShopRecord } from "./types.ts";

/** What a next run starts from: ids of its setup and bath, their facts and the answers that held for the setup. */
export interface Givens {
  readonly setup?: string;
  readonly bath?: string;
  readonly facts: Facts;
  readonly hints: Hints;
}

const here = (item: { readonly removed?: boolean } | undefined): boolean => item !== undefined && item.removed !== true;

const newest = (runs: readonly KeptRun[]): KeptRun | undefined =>
  runs.reduce<KeptRun | undefined>(
    (best, run) => (best === undefined || run.changed > best.changed ? run : best),
    undefined,
  );

/**
 * The open setup's givens, each marked as carried over: what a new log is answered with at once. The open setup and
 * bath are those of the run that is open, else of the maker's run that was changed last, else of the invented one that
 * is shown. Facts of the setup and the bath come first; what they do not say is taken from that run, except what
 * belongs to one firing alone.
 *
 * @param record - the record.
 * @param ids - another setup or bath than the open ones.
 * @param onceOnly - names of lines that are never carried over ("log").
 * @returns facts by line name, empty when nothing is known yet.
 * @example
 * factsForNextRun(newRecord()).facts; // {}
 */
export function factsForNextRun(
  record: ShopRecord,
  ids: { readonly setup?: string; readonly bath?: string } = {},
  onceOnly: readonly string[] = [],
): Givens {
  const open = record.runs.find((run) => run.id === record.settings.openRun && here(run));
  const shownRuns = record.runs.filter(here);
  const from = open ?? newest(shownRuns.filter((run) => run.invented !== true)) ?? newest(shownRuns);
  const setup = itemOf(record, "setups", ids.setup ?? from?.setup ?? "");
  const bath = itemOf(record, "baths", ids.bath ?? from?.bath ?? "");
  const sources = [from?.facts, bath?.facts, setup?.facts];
  const facts = sources
    .flatMap((source) => Object.entries(source ?? {}))
    .filter(([line]) => !onceOnly.includes(line))
    .map(([line, fact]): [string, Fact] => [line, { ...fact, carriedOver: true }]);
  const hints = setup?.hints ?? from?.hints ?? {};
  return {
    ...(setup === undefined ? {} : { setup: setup.id }),
    ...(bath === undefined ? {} : { bath: bath.id }),
    facts: keyed(facts),
    hints: keyed(Object.entries(hints)),
  };
}

/** A log that was read, with what is known about it besides. */
export interface Firing {
  readonly name: string;
  readonly log: Run;
  /** The log as it came. */
  readonly source: string;
  /** Answers given for this log; they stand above those of the setup. */
  readonly hints?: Hints;
  readonly date?: string;
  readonly outcome?: string;
}

/**
 * A run with a new id that copies the facts of bath and setup as they are now, each marked as carried over.
 *
 * @param firing - the log and its name.
 * @param givens - from `factsForNextRun`.
 * @param moment - when, and where the id comes from.
 * @example
 * const givens = factsForNextRun(newRecord());
 * newRun({ name: "Tuesday", log: { entries: [] }, source: "" }, givens, thisMoment()).name; // "Tuesday"
 */
export function newRun(firing: Firing, givens: Givens, moment: Moment): KeptRun {
  const { hints, ...rest } = firing;
  return {
    ...rest,
    id: moment.newId(),
    changed: moment.now,
    ...(givens.setup === undefined ? {} : { setup: givens.setup }),
    ...(givens.bath === undefined ? {} : { bath: givens.bath }),
    facts: keyed(Object.entries(givens.facts)),
    hints: keyed([...Object.entries(givens.hints), ...Object.entries(hints ?? {})]),
  };
}
