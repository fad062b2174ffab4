import {
  checkName,
  foldName,
  type Line,
  type Notebook,
  namesOf,
  notebook,
  type OwnGiven,
  tidyName,
} from "../../../lib/lines/index.ts";
import { kinds } from "../../../lib/measure/index.ts";
import { keyed } from "../../../lib/record/index.ts";

/** A notebook that can be opened, and what had to be put right for it, in words for the maker. */
export interface Mended {
  readonly book: Notebook;
  readonly says: readonly string[];
}

const takes = new Set<string>(["words", "anything", "log", ...kinds.keys()]);

/** A line as it can be opened: a kind of quantity that nobody knows is left open. */
function lineOf(line: Line): Line {
  if (line.kind !== "given") return line;
  // No text can hold an amount that a fit found: what stands there came from elsewhere.
  const { value: _, ...given } = line;
  if (given.takes === undefined || takes.has(given.takes)) return given;
  return { ...given, takes: "anything" };
}

const refused = (lines: Notebook["lines"]): boolean => {
  try {
    notebook({ asks: "", lines });
    return false;
  } catch {
    return true;
  }
};

/** Lines under names that each can have. */
function renamed(lines: readonly (readonly [string, Line])[]): {
  readonly lines: Notebook["lines"];
  readonly says: readonly string[];
} {
  const says: string[] = [];
  const good: Record<string, Line> = Object.create(null);
  const names = namesOf(lines.map(([name]) => tidyName(name)));
  const taken = new Set<string>();
  const all = new Set(lines.map(([name]) => foldName(name)));
  let count = 1;
  for (const [name, line] of lines) {
    const tidy = tidyName(name);
    const wrong = taken.has(foldName(tidy)) ? "is the name of another line" : checkName(tidy, names);
    if (wrong === undefined) {
      taken.add(foldName(tidy));
      good[tidy] = line;
      continue;
    }
    let next = "renamed line";
    while (all.has(foldName(next))) next = `renamed line ${++count}`;
    all.add(foldName(next));
    good[next] = line;
    says.push(`The line “${tidy.slice(0, 80)}” is called “${next}” here: its name ${wrong}.`);
  }
  return { lines: good, says };
}

/** Cases in their order, with names of their own; of what they have, only what some given can take. */
function casesOf(data: MendedFrom, lines: Notebook["lines"]): Notebook["cases"] {
  const all = Object.entries(data.cases ?? {});
  const place = new Map((data.caseOrder ?? []).map((name, i) => [name, i]));
  const inOrder = [...all].sort(([a], [b]) => (place.get(a) ?? all.length) - (place.get(b) ?? all.length));
  const names = new Set(inOrder.map(([name]) => foldName(name)));
  const givens = new Set(
    Object.entries(lines).flatMap(([name, { kind }]) => (kind === "given" ? [foldName(name)] : [])),
  );
  const seen = new Set<string>();
  const kept: [string, Record<string, OwnGiven>][] = [];
  for (const [name, own] of inOrder) {
    const tidy = tidyName(name);
    if (seen.has(foldName(tidy))) continue;
    seen.add(foldName(tidy));
    const mine = Object.entries(own).flatMap(([line, given]): [string, OwnGiven][] => {
      if (!givens.has(foldName(line))) return [];
      if (typeof given === "string" || given.sameAs === undefined) return [[line, given]];
      const { sameAs, ...rest } = given;
      return [[line, names.has(foldName(sameAs)) && foldName(sameAs) !== foldName(name) ? given : rest]];
    });
    kept.push([tidy, keyed(mine)]);
  }
  return kept.length === 0 ? undefined : keyed(kept);
}

type MendedFrom = Notebook & { readonly caseOrder?: readonly string[] };

/**
 * A kept notebook as it can be opened: what two open tabs, or a stranger, put together wrongly is put right, and said.
 * @param data The notebook, by its schema.
 */
export function mended(data: MendedFrom): Mended {
  const { caseOrder: _, cases: __, base, ...rest } = data;
  const entries = Object.entries(data.lines).map(([name, line]) => [name, lineOf(line)] as const);
  const plain = keyed(entries);
  const { lines, says } = refused(plain) ? renamed(entries) : { lines: plain, says: [] };
  const cases = casesOf(data, lines);
  const there = base !== undefined && Object.keys(cases ?? {}).some((name) => foldName(name) === foldName(base));
  return { book: { ...rest, lines, ...(cases && { cases }), ...(there && { base }) }, says };
}
