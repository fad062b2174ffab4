import type { Lines, Names } from "../../../lib/lines/index.ts";
import type { System } from "../writtenAs.ts";

export interface InHandProps {
  readonly open: Lines;
  readonly line: string;
  /** "" for the one case of a notebook that names none. */
  readonly inCase: string;
  readonly system: System;
  /** Lines and functions that formulas may name. */
  readonly names: Names;
  readonly close: () => void;
  /** Takes another line in hand. */
  readonly goTo: (line: string) => void;
  /** Says something to screen readers and on the page. */
  readonly says: (words: string) => void;
  readonly redraw: () => void;
}
