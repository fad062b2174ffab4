import { namesOf, parseFormula } from "../../../lib/lines/index.ts";
import type { Tree } from "../../../lib/lines/tree.ts";
import type { Func } from "../../../lib/lines/types.ts";

/** A function for tests that gives back its first argument. */
export const func = (name: string, least = 0, most = 3): Func => ({
  name,
  takes: Array.from({ length: most }, (_, i) => ({ name: `amount ${i + 1}`, optional: i >= least })),
  says: "Its first argument.",
  work: (first) => first,
});

/** How a formula was read, brackets round everything: names in <>, parts as {part}thing. What is wrong, with its place. */
export function shape(text: string, lines: readonly string[] = [], functions: readonly Func[] = []): string {
  const parsed = parseFormula(text, namesOf(lines, functions));
  return "tree" in parsed ? written(parsed.tree) : `${parsed.at}: ${parsed.says}`;
}

function written(tree: Tree): string {
  switch (tree.kind) {
    case "number":
      return `${tree.value}${tree.unit === undefined ? "" : `[${tree.unit}]`}`;
    case "words":
      return `"${tree.words}"`;
    case "line":
      return `<${tree.name}>`;
    case "part":
      return `{${tree.part}}${written(tree.of)}`;
    case "call":
      return `${tree.func.name}(${tree.args.map(written).join("; ")})`;
    case "negative":
      return `(-${written(tree.of)})`;
    case "sign":
    case "compare":
      return `(${written(tree.left)} ${tree.sign} ${written(tree.right)})`;
    case "is given":
      return `(${written(tree.of)} is ${tree.not ? "not " : ""}given)`;
    case "and":
    case "or":
      return `(${written(tree.left)} ${tree.kind} ${written(tree.right)})`;
    case "not":
      return `(not ${written(tree.of)})`;
    case "choice":
      return `(${tree.branches.map((one) => `${written(one.is)} when ${written(one.when)}`).join(", ")}, otherwise ${written(tree.otherwise)})`;
  }
}
