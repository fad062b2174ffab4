import type { CaseShown, Line, Lines, Result } from "../../../lib/lines/index.ts";
import type { GridProps } from "./types.ts";

/** A case as a column of the grid: `mark` is its place among all cases, so that hiding one changes no other's mark. */
export interface CaseColumn extends CaseShown {
  readonly mark: number;
}

export interface GridRow {
  readonly name: string;
  readonly line: Line;
  /** By case, in the order of the columns. */
  readonly results: readonly Result[];
}

export interface RowGroup {
  readonly name: string;
  readonly rows: readonly GridRow[];
}

/** The cases that are shown, in their order. */
export function columnsOf(open: Lines): readonly CaseColumn[] {
  return open.cases().flatMap((one, mark) => (one.hidden ? [] : [{ ...one, mark }]));
}

/** The lines that the grid lists, under their headings. Lines without a heading go on under the one before. */
export function groupsOf({ open, lines }: Pick<GridProps, "open" | "lines">, cases: readonly CaseColumn[]): RowGroup[] {
  const groups: { name: string; rows: GridRow[] }[] = [];
  for (const name of lines ?? open.names()) {
    const line = open.line(name);
    if (!lines && line.hidden) continue;
    const results = cases.map((one) => open.result(name, one.name));
    if (line.kind !== "given" && line.rare && results.every(({ state }) => state === "not given")) continue;
    const last = groups.at(-1);
    if (!last || (line.group !== undefined && line.group !== last.name))
      groups.push({ name: line.group ?? "", rows: [{ name, line, results }] });
    else last.rows.push({ name, line, results });
  }
  return groups;
}
