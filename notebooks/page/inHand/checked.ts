import { findLoop, foldName, type Lines, type Names, parseFormula, usesOf } from "../../../lib/lines/index.ts";
import { mended } from "../grid/mended.ts";

/** What is wrong with a formula that is being written: at which character, in words, and what was probably meant. */
export interface Wrong {
  readonly says: string;
  readonly at?: number;
  /** A word to press, and the formula with it in place. */
  readonly meant?: { readonly word: string; readonly text: string };
}

/** What is wrong with a formula before it is kept; undefined for one that can be worked. */
export function checked(open: Lines, line: string, formula: string, names: Names): Wrong | undefined {
  const parsed = parseFormula(formula, names);
  if (!("tree" in parsed)) {
    const meant = mended(formula, parsed.says, parsed.at);
    return { says: parsed.says, at: parsed.at, ...(meant && { meant }) };
  }
  const name = names.lines.get(foldName(line)) ?? line;
  const uses = usesOf(parsed.tree);
  const loop = findLoop(name, (one) => (one === name ? uses : open.uses(one)));
  return loop && { says: roundWords(loop) };
}

/** A way round in words: "a needs b, b needs a". */
function roundWords(loop: readonly string[]): string {
  if (loop.length === 1) return `${loop[0]} cannot be worked from itself`;
  const steps = loop.map((one, place) => `${one} needs ${loop[(place + 1) % loop.length]}`);
  return `this goes round: ${steps.join(", ")}`;
}
