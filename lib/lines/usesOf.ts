import { childrenOf, type Tree } from "./tree.ts";

/** A name of a line where it stands in a formula: characters `from` up to, not including, `to`. */
export interface Mention {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

/**
 * Every mention of a line in a formula, in the order they are written.
 * @param tree The formula as read.
 * @returns The mentions; a line that is named twice is there twice.
 * @example
 * const read = parseFormula("salt / water", namesOf(["salt", "water"]));
 * mentionsIn(read.tree).map((mention) => mention.name) // ["salt", "water"]
 */
export function mentionsIn(tree: Tree): readonly Mention[] {
  const found: Mention[] = [];
  const left: Tree[] = [tree];
  for (let next = left.pop(); next !== undefined; next = left.pop()) {
    if (next.kind === "line") found.push({ name: next.name, from: next.from, to: next.to });
    left.push(...childrenOf(next));
  }
  return found.sort((a, b) => a.from - b.from);
}

/**
 * The lines that a formula uses, each once, in the order of their first mention.
 * @param tree The formula as read.
 * @returns Their names.
 * @example usesOf(parseFormula("a * (a + b)", namesOf(["a", "b"])).tree) // ["a", "b"]
 */
export function usesOf(tree: Tree): readonly string[] {
  return [...new Set(mentionsIn(tree).map((mention) => mention.name))];
}
