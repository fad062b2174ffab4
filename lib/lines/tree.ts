import type { Func } from "./types.ts";

/** Where a piece of a formula stands: its characters `from` up to, not including, `to`. */
interface Place {
  readonly from: number;
  readonly to: number;
}

export type Sign = "+" | "-" | "*" | "/" | "^";
export type Comparison = "<" | ">" | "<=" | ">=" | "=";

/** A formula as it was read. `at` is the character of the sign, for what is said when it cannot be done. */
export type Tree = Place &
  (
    | { readonly kind: "number"; readonly value: number; readonly unit?: string }
    | { readonly kind: "words"; readonly words: string }
    | { readonly kind: "line"; readonly name: string }
    | { readonly kind: "part"; readonly part: string; readonly of: Tree }
    | { readonly kind: "call"; readonly func: Func; readonly args: readonly Tree[] }
    | { readonly kind: "negative"; readonly of: Tree }
    | { readonly kind: "sign"; readonly sign: Sign; readonly left: Tree; readonly right: Tree; readonly at: number }
    | {
        readonly kind: "compare";
        readonly sign: Comparison;
        readonly left: Tree;
        readonly right: Tree;
        readonly at: number;
      }
    | { readonly kind: "is given"; readonly of: Tree; readonly not: boolean }
    | { readonly kind: "and" | "or"; readonly left: Tree; readonly right: Tree }
    | { readonly kind: "not"; readonly of: Tree }
    | { readonly kind: "choice"; readonly branches: readonly Branch[]; readonly otherwise: Tree }
  );

/** One `a when c` of a formula in pieces. */
export interface Branch {
  readonly is: Tree;
  readonly when: Tree;
}

/**
 * The pieces that a piece of a formula is made of, in the order they are written.
 * @param tree A formula or a piece of one.
 * @returns Its direct pieces, none for a number or a name.
 * @example childrenOf({ kind: "number", value: 2, from: 0, to: 1 }) // []
 */
export function childrenOf(tree: Tree): readonly Tree[] {
  switch (tree.kind) {
    case "part":
    case "negative":
    case "not":
    case "is given":
      return [tree.of];
    case "sign":
    case "compare":
    case "and":
    case "or":
      return [tree.left, tree.right];
    case "call":
      return tree.args;
    case "choice":
      return [...tree.branches.flatMap((branch) => [branch.is, branch.when]), tree.otherwise];
    default:
      return [];
  }
}
