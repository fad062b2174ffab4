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
