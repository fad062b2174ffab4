import { childrenOf, type Tree } from "./tree.ts";
import type { Func } from "./types.ts";

/**
 * The functions that a formula calls, each once, in the order they are written.
 * @param tree The formula as read.
 * @returns The functions, as they were handed in.
 * @example
 * const read = parseFormula("sqrt(2) + abs(sqrt(3))", namesOf([], functions));
 * functionsIn(read.tree).map((func) => func.name) // ["sqrt", "abs"]
 */
export function functionsIn(tree: Tree): readonly Func[] {
  const calls: { readonly func: Func; readonly from: number }[] = [];
  const left: Tree[] = [tree];
  for (let next = left.pop(); next !== undefined; next = left.pop()) {
    if (next.kind === "call") calls.push({ func: next.func, from: next.from });
    left.push(...childrenOf(next));
  }
  return [...new Set(calls.sort((a, b) => a.from - b.from).map(({ func }) => func))];
}
