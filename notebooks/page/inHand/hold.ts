import { foldName, type Lines } from "../../../lib/lines/index.ts";

/** What is being written in the line in hand. It lasts until another line is taken. */
export interface Hold {
  readonly line: string;
  readonly inCase: string;
  /** The formula or the given as it is being written; undefined while it stands as it is kept. */
  draft: string | undefined;
  caret: number;
  /** The list of completions is open. */
  listed: boolean;
  /** Which of them is chosen: -1 for none. */
  chosen: number | undefined;
  /** A name or a unit that was refused, as it was typed, and why. */
  refused: { readonly field: "name" | "unit"; readonly typed: string; readonly why: string } | undefined;
  /** What the focus goes to once the page is drawn. */
  wants: "name" | "first" | undefined;
}

const holds = new WeakMap<Lines, Hold>();

/** The hold on a line of an open notebook; a new one where another line or case is taken. */
export function holdOn(open: Lines, line: string, inCase: string): Hold {
  const known = holds.get(open);
  if (known && foldName(known.line) === foldName(line) && known.inCase === inCase) return known;
  return take(open, line, inCase);
}

/** Takes a line anew. */
export function take(open: Lines, line: string, inCase: string): Hold {
  const hold: Hold = {
    line,
    inCase,
    draft: undefined,
    caret: 0,
    listed: false,
    chosen: undefined,
    refused: undefined,
    wants: undefined,
  };
  holds.set(open, hold);
  return hold;
}

/** Lets go of what was being written. */
export function letGo(hold: Hold): void {
  hold.draft = undefined;
  hold.listed = false;
  hold.chosen = undefined;
}
