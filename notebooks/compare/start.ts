import { type CaseFrom, foldName, type Notebook, type OwnGiven } from "../../lib/lines/index.ts";
import { type Facts, type KeptRun, keyed, type ShopRecord, shown } from "../../lib/record/index.ts";
import type { StartCases } from "../page/tool/types.ts";

/** A supposed change to the base: its name, and what it has of its own. */
export interface Supposed {
  readonly name: string;
  readonly own: Readonly<Record<string, OwnGiven>>;
}

/** A case may bear any name without these signs, up to 60 characters. */
const caseName = (name: string): string =>
  name
    .replace(/[\u0000-\u001f{}|]/gu, " ")
    .replace(/\s+/g, " ")
    .trim()
    .slice(0, 60) || "a run";

const readings = ({ log }: KeptRun): number =>
  log.entries.filter(({ kind, struck }) => kind === "reading" && !struck).length;

/** The run to start from: the maker's newest with readings enough for a fit, else the invented one's. */
export function lastFittedRun({ runs }: ShopRecord): KeptRun | undefined {
  const when = ({ date, changed }: KeptRun) => date ?? changed;
  return shown(runs)
    .filter((run) => readings(run) >= 4)
    .sort((a, b) => Number(a.invented ?? false) - Number(b.invented ?? false) || when(b).localeCompare(when(a)))[0];
}

/** A thing's facts as a case's own givens: those of which the notebook has a line. */
function ownOf(
  book: Notebook,
  facts: Facts,
): Record<string, { text: string; known?: NonNullable<Facts[string]["known"]> }> {
  const byName = new Map(Object.entries(facts).map(([name, fact]) => [foldName(name), fact]));
  return keyed(
    Object.entries(book.lines).flatMap(([name, line]) => {
      const fact = byName.get(foldName(name));
      if (line.kind !== "given" || !fact || fact.text.trim() === "") return [];
      return [[name, { text: fact.text, ...(fact.known && { known: fact.known }) }] as const];
    }),
  );
}

/**
 * The cases that a comparison starts with: the last fitted run as base, and beside it changes that are supposed. What
 * a supposed case shares with the base is the base's very own reading, so that it cancels between them.
 */
export function startFrom(book: Notebook, record: ShopRecord, supposed: readonly Supposed[]): StartCases {
  const run = lastFittedRun(record);
  const base = run ? caseName(run.name) : "as it is";
  const facts = run ? ownOf(book, run.facts) : {};
  const shared = keyed(Object.entries(facts).map(([line, one]) => [line, { ...one, sameAs: base }] as const));
  const others = supposed.filter(({ name }) => foldName(name) !== foldName(base));
  const cases: [string, Readonly<Record<string, OwnGiven>>][] = [[base, facts]];
  const from: [string, CaseFrom][] = run
    ? [[base, { kind: "run", id: run.id, says: run.invented ? "invented run" : "fitted run" }]]
    : [];
  for (const { name, own } of others) {
    cases.push([name, { ...shared, ...own }]);
    from.push([name, { kind: "case", id: base, says: "supposed" }]);
  }
  return { cases: keyed(cases), base, casesFrom: keyed(from) };
}
