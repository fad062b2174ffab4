import { foldName, type Line, type Notebook, type OwnGiven } from "../../../lib/lines/index.ts";
import { keyed, type NotebookData, same } from "../../../lib/record/index.ts";
import { ownFiguresOf } from "../book/laidOver.ts";
import type { StartCases } from "./types.ts";

const folded = (lines: Notebook["lines"]): ReadonlyMap<string, Line> =>
  new Map(Object.entries(lines).map(([name, line]) => [foldName(name), line]));

/** A line of the tool as the maker changed it: text, formula and unit are theirs, how it is listed stays ours. */
function changed(ours: Line, theirs: Line | undefined): Line {
  if (!theirs) return ours;
  const { unit, metricUnit } = theirs;
  const units = { ...(unit !== undefined && { unit }), ...(metricUnit !== undefined && { metricUnit }) };
  if (ours.kind === "given" && theirs.kind === "given") {
    const { known: _, ...rest } = ours;
    return { ...rest, ...units, text: theirs.text, ...(theirs.known !== undefined && { known: theirs.known }) };
  }
  if (ours.kind !== "given" && theirs.kind !== "given")
    return { ...ours, ...units, kind: theirs.kind, formula: theirs.formula };
  return theirs;
}

/**
 * A notebook of the tool with what the maker changed laid over it: what they left alone is ours as it is today.
 *
 * @param of the notebook that comes with the tool
 * @param own what the record keeps of the maker's changes
 * @param start the cases where the maker changed none
 */
export function laidOverTool(of: Notebook, own: NotebookData | undefined, start: StartCases): NotebookData {
  if (!own) return { ...of, ...start };
  const theirs = folded(own.lines);
  const ours = folded(of.lines);
  const lines = keyed([
    ...Object.entries(of.lines).map(([name, line]) => [name, changed(line, theirs.get(foldName(name)))] as const),
    ...Object.entries(own.lines).filter(([name]) => !ours.has(foldName(name))),
  ]);
  const { cases, base, casesFrom, hiddenCases, caseOrder } = own;
  const theirCases = {
    ...(cases && { cases }),
    ...(base !== undefined && { base }),
    ...(casesFrom && { casesFrom }),
    ...(hiddenCases && { hiddenCases }),
    ...(caseOrder && { caseOrder }),
  };
  return {
    ...of,
    lines,
    ...(cases ? theirCases : start),
    figures: [...(of.figures ?? []), ...ownFiguresOf(own)],
    ...(own.notes && { notes: own.notes }),
  };
}

/** The cases of a notebook with what is understood written out, so that two can be compared. */
function casesOf({ cases = {}, base, casesFrom = {}, hiddenCases = [] }: Notebook) {
  const given = (one: OwnGiven) => (typeof one === "string" ? { text: one } : one);
  const written = Object.entries(cases).map(([name, own]) => [
    name,
    keyed(Object.entries(own).map(([line, one]) => [line, given(one)] as const)),
  ]);
  return { written, base: base ?? Object.keys(cases)[0], casesFrom, hiddenCases };
}

/** What the record keeps of an open notebook: only what differs from the one that comes with the tool. */
export function ownOfTool(of: Notebook, start: StartCases, open: Notebook): NotebookData {
  const ours = folded(of.lines);
  const lines = keyed(Object.entries(open.lines).filter(([name, line]) => !same(ours.get(foldName(name)), line)));
  const figures = ownFiguresOf(open);
  const { cases, base, casesFrom, hiddenCases } = open;
  const own = {
    ...(cases && { cases, caseOrder: Object.keys(cases) }),
    ...(base !== undefined && { base }),
    ...(casesFrom && { casesFrom }),
    ...(hiddenCases && { hiddenCases }),
  };
  return {
    asks: of.asks,
    ...(of.name !== undefined && { name: of.name }),
    lines,
    ...(same(casesOf({ ...of, ...start }), casesOf(open)) ? {} : own),
    ...(figures.length > 0 && { figures }),
    ...(open.notes && { notes: open.notes }),
  };
}
