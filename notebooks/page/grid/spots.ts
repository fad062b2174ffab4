import type { Spot } from "./hand.ts";

// Asking for the style alone lays nothing out.
const isSeen = (cell: Element): boolean => getComputedStyle(cell).display !== "none";

/** The rows of lines that are drawn in a grid, in order; with the heading row first if asked for. */
export function rowsIn(root: Element, withHead = true): readonly HTMLElement[] {
  // By class: the browser keeps that list from one key to the next.
  const rows = [...root.getElementsByClassName("row")].filter((row) => row instanceof HTMLElement);
  return withHead ? rows : rows.filter((row) => row.dataset.head === undefined);
}

/** Name of the line of a row; "" for the heading row. */
export const lineOf = (row: Element): string => row.getAttribute("data-name") ?? "";

/** The cells of a row that are seen, in order. */
export function cellsIn(row: Element): readonly HTMLElement[] {
  return [...row.querySelectorAll<HTMLElement>(":scope > [data-at]")].filter(isSeen);
}

/** The place of a cell, or of what lies in it. */
export function spotOf(target: EventTarget | null): Spot | undefined {
  if (!(target instanceof Element)) return undefined;
  const cell = target.closest("[data-at]");
  const row = cell?.closest("[data-name], [data-head]");
  return cell && row ? { line: lineOf(row), column: Number(cell.getAttribute("data-at")) } : undefined;
}

/** The row of a line, looked for by its name as it is. */
export function rowOf(root: Element, line: string): HTMLElement | undefined {
  return rowsIn(root).find((row) => lineOf(row) === line);
}

/** The cell at a place, or the nearest one before it in its row. */
export function cellAt(root: Element, spot: Spot | undefined): HTMLElement | undefined {
  const row = spot && rowOf(root, spot.line);
  if (!row) return undefined;
  const cells = cellsIn(row);
  return cells.filter((cell) => Number(cell.dataset.at) <= spot.column).at(-1) ?? cells[0];
}

const stops = new WeakMap<Element, HTMLElement>();

/** Makes one cell the grid's only tab stop. */
export function makeStop(root: Element, cell: HTMLElement | undefined): void {
  const last = stops.get(root);
  if (last !== cell) last?.setAttribute("tabindex", "-1");
  if (!cell) return;
  stops.set(root, cell);
  cell.setAttribute("tabindex", "0");
}

/** Whether the grid's tab stop is at this very place already. */
export function isStop(root: Element, spot: Spot | undefined): boolean {
  const stop = stops.get(root);
  if (!spot || !stop || !root.contains(stop) || stop.tabIndex !== 0) return false;
  const at = spotOf(stop);
  return at?.line === spot.line && at.column === spot.column;
}

export type Move = "left" | "right" | "up" | "down" | "home" | "end" | "first" | "last" | "page up" | "page down";

/** How many lines a page up or down is. */
const page = 10;

/** The place that a move leads to; it stays where there is nothing further. */
export function moved(root: Element, from: Spot, move: Move): Spot {
  const rows = rowsIn(root);
  const at = rows.findIndex((row) => lineOf(row) === from.line);
  const row = rows[at];
  if (!row) return from;
  const within = (to: number) => rows[Math.max(0, Math.min(rows.length - 1, to))] ?? row;
  const sideways = (pick: (cells: readonly HTMLElement[]) => HTMLElement | undefined, of = row): Spot => {
    const cell = pick(cellsIn(of));
    return { line: lineOf(of), column: cell ? Number(cell.dataset.at) : from.column };
  };
  const column = (cell: HTMLElement): number => Number(cell.dataset.at);
  switch (move) {
    case "left":
      return sideways((cells) => cells.filter((cell) => column(cell) < from.column).at(-1));
    case "right":
      return sideways((cells) => cells.find((cell) => column(cell) > from.column));
    case "home":
      return sideways((cells) => cells[0]);
    case "end":
      return sideways((cells) => cells.at(-1));
    case "first":
      return sideways((cells) => cells[0], within(1));
    case "last":
      return sideways((cells) => cells.at(-1), within(rows.length));
    default: {
      const by = { up: -1, down: 1, "page up": -page, "page down": page }[move];
      const target = within(at + by);
      // The heading row is reached by a step up from the first line, not by a leap.
      const leapt = by < -1 && lineOf(target) === "" ? within(1) : target;
      return { line: lineOf(leapt), column: from.column };
    }
  }
}
