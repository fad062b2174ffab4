import type { Lines, Notebook } from "../../../lib/lines/index.ts";
import type { ShopRecord } from "../../../lib/record/index.ts";
import type { Beside } from "../drawings.ts";
import type { System } from "../showValue.ts";

/** The cases of a notebook, and where they come from. */
export type StartCases = Pick<Notebook, "cases" | "base" | "casesFrom">;

export interface BookFigureInput {
  readonly open: Lines;
  readonly system: System;
  readonly width: number;
  readonly narrow: boolean;
  /** The one case that a phone shows. */
  readonly shownCase: string;
}

/** A figure that a notebook of the tool names: how it is titled, said and drawn. */
export interface BookFigureMaker {
  readonly title: string;
  readonly caption: (input: BookFigureInput) => string;
  readonly cautions?: (input: BookFigureInput) => readonly string[];
  /** Undefined while there is nothing to draw. */
  readonly draw: (input: BookFigureInput) => SVGSVGElement | undefined;
  /** Drawn within the sheet's margins, not from edge to edge of the page. */
  readonly inset?: boolean;
  /** What stands beside the figure on a desk, and below it on anything narrower. */
  readonly beside?: (input: BookFigureInput) => Beside | undefined;
}

export interface ExtraInput {
  readonly open: Lines;
  readonly record: ShopRecord;
  readonly system: System;
  readonly shownCase: string;
  /** Whether a line is still to be worked: what is shown stood before. */
  readonly busy: boolean;
}

/** A section that a notebook adds: a table, a card, a checklist. */
export interface Extra {
  /** For machines: the section's id. */
  readonly id: string;
  readonly title: string;
  readonly body: unknown;
  /** Under the figures if left out. */
  readonly stands?: "under the answer" | "under the figures" | "under the lines";
  /** Folded away, with what it finds in one line beside its title; stands under the lines. */
  readonly folded?: string;
}

/** A notebook that comes with the tool, of lines and cases. */
export interface ToolNotebook {
  /** Lines, answer, and the names of its figures. */
  readonly book: Notebook;
  /** The cases that it starts with, from what the record holds. They hold until the maker changes one. */
  readonly start: (record: ShopRecord) => StartCases;
  readonly figures: ReadonlyMap<string, BookFigureMaker>;
  readonly extras?: (input: ExtraInput) => readonly Extra[];
}
