import { functions, type Lines, type Notebook, namesOf, type Vocabulary } from "../../../lib/lines/index.ts";
import type { ShopRecord } from "../../../lib/record/index.ts";
import type { GridProps, Place } from "../grid/types.ts";
import { lineInHand } from "../inHand/lineInHand.ts";
import type { System } from "../showValue.ts";
import type { Typing } from "../Typing.ts";
import type { Trials } from "../trials/trials.ts";
import type { Asking } from "./asking.ts";
import { bookFooter } from "./bookFooter.ts";
import { caseActions } from "./caseActions.ts";
import type { Search } from "./solveForm.ts";

/** What is in hand, seen and searched for among a notebook's lines. Nothing of it is worth keeping. */
export interface AtHand {
  inHand: Place | undefined;
  shownCase: string | undefined;
  search: Search | undefined;
}

/** A notebook just opened. */
export const nothingAtHand = (): AtHand => ({ inHand: undefined, shownCase: undefined, search: undefined });

export interface LinesOnPage {
  readonly open: Lines;
  readonly book: Notebook;
  readonly record: ShopRecord;
  readonly system: System;
  readonly vocabulary: Vocabulary;
  readonly typing: Typing;
  readonly trials: Trials;
  readonly asking: Asking;
  readonly atHand: AtHand;
  /** The one case that is seen on a phone. */
  readonly seen: string;
  /** Which lines, in order; all that are not hidden if left out. */
  readonly lines?: readonly string[];
  /** What else can be done with this notebook. */
  readonly more?: unknown;
  readonly redraw: () => void;
}

/** The grid of a notebook that the maker can change, its line in hand and its footer with it. */
export function linesOnPage(props: LinesOnPage): GridProps {
  const { open, book, record, system, vocabulary, typing, trials, asking, atHand, seen, lines, more, redraw } = props;
  const set = (next: Partial<AtHand>): void => {
    Object.assign(atHand, next);
    redraw();
  };
  const take = (inHand: Place | undefined): void => set({ inHand });
  return {
    open,
    system,
    typing,
    trials,
    shownCase: seen,
    showCase: (shownCase) => set({ shownCase }),
    inHand: atHand.inHand,
    take,
    ...(lines ? { lines } : {}),
    panel: (line, inCase) =>
      lineInHand({
        open,
        line,
        inCase,
        system,
        names: namesOf(open.names(), [...functions, ...vocabulary.functions]),
        close: () => take(undefined),
        goTo: (next) =>
          open.line(next).hidden ? asking.says(`${next} is not among these lines`) : take({ line: next, inCase }),
        says: asking.says,
        redraw,
      }),
    says: asking.says,
    caseActions: (name) =>
      caseActions({ open, name, attempt: asking.attemptHere, rename: (which) => asking.ask(`rename ${which}`) }),
    redraw,
    footer: bookFooter({
      open,
      book,
      record,
      system,
      asking,
      search: atHand.search,
      setSearch: (search) => set({ search }),
      more,
    }),
  };
}

/** Takes a figure of the maker's own off the page. */
export function removeFigure({
  open,
  book,
  asking,
}: Pick<LinesOnPage, "open" | "book" | "asking">): (at: number) => void {
  return (at) =>
    asking.attemptHere(() =>
      open.setRest("removing a figure", { figures: (book.figures ?? []).filter((_, i) => i !== at) }),
    );
}
