import {
  foldName,
  type Given,
  type Line,
  type Notebook,
  type OwnFigure,
  type OwnGiven,
} from "../../../lib/lines/index.ts";
import { type KeptRun, keyed, type NotebookData } from "../../../lib/record/index.ts";
import { mended } from "./mended.ts";

/** A notebook of the tool with the maker's own lines laid over it, for one run and those beside it. */
export interface Laid {
  readonly book: Notebook;
  /** The run of each case, the present one first, under the case's name. */
  readonly runs: ReadonlyMap<string, KeptRun>;
}

const merged = new WeakMap<NotebookData, { readonly of: Notebook; readonly lines: Notebook["lines"] }>();

/** The tool's lines and the maker's behind them, each under a name it can have. */
export function linesLaid(of: Notebook, own: NotebookData | undefined): Notebook["lines"] {
  if (!own || Object.keys(own.lines).length === 0) return of.lines;
  const known = merged.get(own);
  if (known?.of === of) return known.lines;
  const ours = new Set(Object.keys(of.lines).map(foldName));
  const theirs = Object.entries(own.lines).map(([name, line]): [string, Line] => [
    ours.has(foldName(name)) ? `${name} of mine` : name,
    line,
  ]);
  const { lines } = mended({ asks: "", lines: keyed([...Object.entries(of.lines), ...theirs]) }).book;
  merged.set(own, { of, lines });
  return lines;
}

/** What the maker's figures are among a notebook's: those that come with it stay first. */
export const ownFiguresOf = (own: NotebookData | undefined): readonly OwnFigure[] =>
  (own?.figures ?? []).filter((figure) => typeof figure !== "string");

const isFact = (line: Line): line is Given => line.kind === "given" && line.takes !== "log";

/** A given as a run's facts have it. */
function factual(name: string, line: Line, run: KeptRun): Line {
  const fact = run.facts[name];
  if (!fact || !isFact(line)) return line;
  return { ...line, text: fact.text, ...(fact.known !== undefined && { known: fact.known }) };
}

/** What a run beside the present one has of its own. What belongs to the same tank or bath is one and the same reading. */
function ownOf(lines: Notebook["lines"], present: KeptRun, run: KeptRun): Readonly<Record<string, OwnGiven>> {
  const entries = Object.entries(lines).flatMap(([name, line]): [string, OwnGiven][] => {
    if (!isFact(line)) return [];
    const [here, there] = [factual(name, line, present), factual(name, line, run)];
    if (here.kind !== "given" || there.kind !== "given") return [];
    const alike = here.text === there.text && here.known === there.known;
    const shared =
      there.text === "" ||
      (line.keptWith === "setup" && run.setup === present.setup) ||
      (line.keptWith === "bath" && run.bath === present.bath) ||
      line.exact === true ||
      line.choices !== undefined;
    if (alike && shared) return [];
    return [[name, { text: there.text, ...(there.known !== undefined && { known: there.known }) }]];
  });
  return keyed(entries);
}

/** Names for cases: each run's own, told apart where two are called alike. */
function namesOf(runs: readonly KeptRun[]): ReadonlyMap<string, KeptRun> {
  const named = new Map<string, KeptRun>();
  const taken = new Set<string>();
  for (const run of runs) {
    const plain =
      run.name
        .replace(/[\u0000-\u001f{}|]/gu, " ")
        .trim()
        .slice(0, 50) || "a run";
    let name = plain;
    for (let i = 2; taken.has(foldName(name)); i++) name = `${plain}, ${i}`;
    taken.add(foldName(name));
    named.set(name, run);
  }
  return named;
}

/**
 * Lays the maker's lines, cases and figures over a notebook of the tool, for one run. Facts are those of each run as
 * they are now: a run's own page shows the run.
 */
export function laidOver(of: Notebook, own: NotebookData | undefined, run: KeptRun, beside: readonly KeptRun[]): Laid {
  const all = linesLaid(of, own);
  const lines = keyed(Object.entries(all).map(([name, line]) => [name, factual(name, line, run)] as const));
  const figures = [...(of.figures ?? []), ...ownFiguresOf(own)];
  const book = { ...of, lines, figures, ...(own?.notes && { notes: own.notes }) };
  if (beside.length === 0) return { book, runs: new Map([["", run]]) };
  const runs = namesOf([run, ...beside]);
  const cases = keyed([...runs].map(([name, one]) => [name, one === run ? {} : ownOf(all, run, one)] as const));
  const hidden = new Set(own?.hiddenCases ?? []);
  const hiddenCases = [...runs].filter(([, one]) => one !== run && hidden.has(one.id)).map(([name]) => name);
  const casesFrom = keyed(
    [...runs].map(([name, one]) => [name, { kind: "run", id: one.id, says: one.name } as const] as const),
  );
  return { book: { ...book, cases, casesFrom, ...(hiddenCases.length > 0 && { hiddenCases }) }, runs };
}
