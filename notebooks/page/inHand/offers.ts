import { type Completion, completions, foldName, type Lines, type Names, partsOf } from "../../../lib/lines/index.ts";
import type { System } from "../writtenAs.ts";
import { lineWords } from "./amountWords.ts";

/** As many as stand under a field without pushing away what is below. */
const most = 6;

/** What could be written at the caret of a formula, each line with its kind and its value in one case. */
export function offers(
  open: Lines,
  { line, inCase, system }: { readonly line: string; readonly inCase: string; readonly system: System },
  formula: string,
  caret: number,
  names: Names,
): readonly Completion[] {
  const others: Names = { ...names, except: foldName(line) };
  const later = behind(open, line);
  const found = completions(formula, caret, others, {
    most: most + later.size,
    says: (name) => `${open.line(name).kind}: ${valueWords(open, name, inCase, system)}`,
    partsOf: (name) => {
      const result = open.result(name, inCase);
      return result.state === "settled" ? partsOf(result.value) : [];
    },
  });
  return found.filter(({ kind, name }) => kind !== "line" || !later.has(name)).slice(0, most);
}

/** The lines that are worked from a line: with one of them it would go round in a circle. */
function behind(open: Lines, line: string): ReadonlySet<string> {
  const found = new Set<string>();
  const left = [...open.usedBy(line)];
  for (let next = left.pop(); next !== undefined; next = left.pop()) {
    if (found.has(next)) continue;
    found.add(next);
    left.push(...open.usedBy(next));
  }
  return found;
}

function valueWords(open: Lines, name: string, inCase: string, system: System): string {
  const words = lineWords(open, name, inCase, system);
  if (words) return words.bare;
  const { state } = open.result(name, inCase);
  return state === "settled" ? "more than a number" : state === "waits" ? "waits for another line" : state;
}

/** The text with a completion written in, and the caret behind it. */
export function taken(
  text: string,
  { from, to, insert }: Completion,
): { readonly text: string; readonly caret: number } {
  return { text: text.slice(0, from) + insert + text.slice(to), caret: from + insert.length };
}

/**
 * Whether the first of what is offered is meant at once, so that Enter writes it: only where the formula cannot be kept
 * as it is and a part of a name is written. In all other places Enter keeps the formula.
 */
export function takesFirst(found: readonly Completion[], caret: number, wrong: boolean): boolean {
  const [first] = found;
  return wrong && first !== undefined && first.from < caret;
}
