import { firstCase, handOf, type Spot } from "./hand.ts";
import { columnsOf } from "./rows.ts";
import { lineOf, rowsIn } from "./spots.ts";
import type { GridProps } from "./types.ts";

/** A block of lines and cases, in their order. */
export interface Block {
  readonly lines: readonly string[];
  readonly cases: readonly string[];
}

/** Whether a block is marked. */
export function marked({ open }: Pick<GridProps, "open">): boolean {
  return handOf(open).from !== undefined;
}

/** The marked block, or the place of the hand alone. A place beside the cases stands for its whole line. */
export function blockOf(root: Element, { open }: Pick<GridProps, "open">): Block | undefined {
  const { at, from } = handOf(open);
  if (!at || at.line === "") return undefined;
  const names = rowsIn(root, false).map(lineOf);
  const cases = columnsOf(open).map(({ name }) => name);
  const [one, other] = [at, from ?? at].map(({ line }) => names.indexOf(line)).sort((a, b) => a - b);
  const columns = [at.column, (from ?? at).column].map((column) => column - firstCase).sort((a, b) => a - b);
  const [left = 0, right = 0] = columns;
  const whole = left < 0 || left >= cases.length;
  return {
    lines: names.slice(Math.max(0, one ?? 0), (other ?? 0) + 1),
    cases: whole ? cases : cases.slice(left, right + 1),
  };
}

/** Marks from one place to another; the first end stays while the block grows. */
export function markTo(root: Element, props: GridProps, from: Spot, to: Spot, anew = false): void {
  const hand = handOf(props.open);
  if (anew || !hand.from) hand.from = from;
  hand.at = to;
  showMarks(root, props);
}

/** Forgets the marked block. */
export function unmark(root: Element, props: GridProps): void {
  if (!marked(props)) return;
  handOf(props.open).from = undefined;
  showMarks(root, props);
}

/** Shows which places are marked, for eyes and for screen readers. */
export function showMarks(root: Element, props: GridProps): void {
  for (const cell of root.querySelectorAll("[data-at][aria-selected]")) cell.removeAttribute("aria-selected");
  if (!marked(props)) return;
  const block = blockOf(root, props);
  const [lines, cases] = [new Set(block?.lines), new Set(block?.cases)];
  for (const row of rowsIn(root, false))
    if (lines.has(lineOf(row)))
      for (const cell of row.querySelectorAll<HTMLElement>(":scope > [data-in-case]"))
        if (cases.has(cell.dataset.inCase ?? "")) cell.setAttribute("aria-selected", "true");
}

const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? "" : "s"}`;

/** Says how large the marked block is. */
export function sayMarked(root: Element, props: GridProps): void {
  const block = blockOf(root, props);
  if (block)
    props.says(`marked: ${count(block.lines.length, "line")}, ${count(block.cases.length, "case")}; copy takes them`);
}
