const BETWEEN = "|";

/**
 * The node of a line in a case.
 * @param line Id of the line; it has no bar in it.
 * @param inCase Id of the case.
 * @returns The node's id.
 * @example nodeOf("line 3", "case 1") // "line 3|case 1"
 */
export function nodeOf(line: string, inCase: string): string {
  return line + BETWEEN + inCase;
}

/**
 * Which line a node is of, and in which case.
 * @param node What `nodeOf` gave.
 * @returns The two ids.
 * @example lineAndCase("line 3|case 1") // { line: "line 3", inCase: "case 1" }
 */
export function lineAndCase(node: string): { readonly line: string; readonly inCase: string } {
  const at = node.indexOf(BETWEEN);
  return { line: node.slice(0, at), inCase: node.slice(at + 1) };
}
