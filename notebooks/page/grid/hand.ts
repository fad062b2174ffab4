import type { Lines } from "../../../lib/lines/index.ts";
import type { Place } from "./types.ts";

/** A place among the lines and columns of the grid; columns count from 1, as aria-colindex does. */
export interface Spot {
  readonly line: string;
  readonly column: number;
}

/** A given that is being changed in its place. */
export interface Edit extends Place {
  /** What stood there, and what stands in the blank at first. */
  readonly was: string;
  readonly begin: string;
}

/** Where the hand is in a grid. Nothing of it is worth keeping; it lasts as long as the notebook is open. */
export interface Hand {
  at: Spot | undefined;
  /** The other end of a marked block. */
  from: Spot | undefined;
  edit: Edit | undefined;
  /** Where the focus goes once the page is drawn. */
  wants: "place" | "blank" | "panel" | undefined;
  /** The line in hand when the grid was drawn last. */
  opened: Place | undefined;
  /** What decides which places are seen, when the grid was drawn last. */
  seenBy: string | undefined;
  /** A given that is being stepped with a held key: what its first undo says. */
  stepping: { readonly key: string; readonly undo: string | undefined } | undefined;
}

const hands = new WeakMap<Lines, Hand>();

/** The hand in the grid of an open notebook. */
export function handOf(open: Lines): Hand {
  const known = hands.get(open);
  if (known) return known;
  const hand: Hand = {
    at: undefined,
    from: undefined,
    edit: undefined,
    wants: undefined,
    opened: undefined,
    seenBy: undefined,
    stepping: undefined,
  };
  hands.set(open, hand);
  return hand;
}

/** Column of the first case: kind, line and unit stand before it. */
export const firstCase = 4;
