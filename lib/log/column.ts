import type { Role } from "./heading.ts";

/** One column of a log's table. */
export interface Column {
  readonly index: number;
  readonly role: Role;
  /** The heading as written, or "column 3" where there is none. */
  readonly heading: string;
  readonly unit?: string;
  /** Where the heading began in its line, for columns lined up with blanks. */
  readonly start?: number;
}

export interface Table {
  readonly columns: readonly Column[];
  /** Position of the first row behind the heading. */
  readonly from: number;
  /** Line of the heading in the source, or of the first row. */
  readonly line: number;
  /** Cells of a heading that may be repeated further down, joined. */
  readonly headingText?: string;
}

/**
 * The cells of a row by column: by position where columns are lined up with blanks, else by count.
 *
 * @param columns the columns of the table
 * @param row a row's cells and, for lined-up columns, where each began
 * @returns one text for each column, "" where nothing stands
 * @example
 * cellsByColumn([{ index: 0, role: "time", heading: "t" }], { cells: ["0:00"] }) // ["0:00"]
 */
export function cellsByColumn(
  columns: readonly Column[],
  row: { readonly cells: readonly string[]; readonly starts?: readonly number[] },
): string[] {
  const { cells, starts } = row;
  if (starts === undefined || columns.some(({ start }) => start === undefined)) return [...cells];
  const placed = columns.map(() => "");
  cells.forEach((cell, at) => {
    const left = starts[at] ?? 0;
    const right = left + cell.length;
    let best = 0;
    let nearest = Infinity;
    columns.forEach(({ start = 0, heading }, index) => {
      const end = start + heading.length;
      const gap =
        left < end && start < right
          ? -Math.min(right, end) + Math.max(left, start)
          : Math.max(start - right, left - end);
      if (gap < nearest) {
        nearest = gap;
        best = index;
      }
    });
    placed[best] = placed[best] === "" ? cell : `${placed[best]} ${cell}`;
  });
  return placed;
}
