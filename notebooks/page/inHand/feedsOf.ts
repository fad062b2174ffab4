import { foldName, type Lines } from "../../../lib/lines/index.ts";

export interface Feeds {
  /** The lines that its formula names. */
  readonly feeds: readonly string[];
  /** The lines whose formulas name it. */
  readonly fed: readonly string[];
}

/** Whether a notebook has a line of that name: one in hand may have been renamed, or removed by undo. */
export function hasLine(open: Pick<Lines, "names">, line: string): boolean {
  return open.names().some((name) => foldName(name) === foldName(line));
}

/** What feeds a line and what it feeds; nothing for a line that is no more. */
export function feedsOf(open: Pick<Lines, "names" | "uses" | "usedBy">, line: string): Feeds {
  return hasLine(open, line) ? { feeds: open.uses(line), fed: open.usedBy(line) } : { feeds: [], fed: [] };
}
