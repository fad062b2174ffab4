import type { Lines } from "../../../lib/lines/index.ts";
import type { System } from "../showValue.ts";
import type { Typing } from "../Typing.ts";
import type { Trials } from "../trials/trials.ts";

/** A place in the grid: one line in one case. */
export interface Place {
  readonly line: string;
  readonly inCase: string;
}

export interface GridProps {
  readonly open: Lines;
  readonly system: System;
  readonly typing: Typing;
  /** The one case that is seen on a phone. */
  readonly shownCase: string;
  readonly showCase: (name: string) => void;
  readonly inHand: Place | undefined;
  /** Opens the line in hand at a place, or closes it. */
  readonly take: (place: Place | undefined) => void;
  /** What opens in place under its row. */
  readonly panel: (line: string, inCase: string) => unknown;
  /** Says something to screen readers and on the page. */
  readonly says: (words: string) => void;
  /** Small words under a case's name. */
  readonly caseActions: (name: string) => unknown;
  readonly redraw: () => void;
  /** What says where a ± will not do. */
  readonly trials?: Trials;
  /** Which lines, in order; all that are not hidden if left out. */
  readonly lines?: readonly string[];
  /** What stands under the table: "add a line", "add a case" … */
  readonly footer?: unknown;
}
