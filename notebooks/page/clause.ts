/** A clause of an answer: text with line names in braces, and what to say while one of them has no number. */
export interface Clause {
  readonly says: string;
  readonly otherwise?: string | Clause;
  readonly caution?: string;
}

export type Piece = { readonly text: string } | { readonly name: string };

/** Cuts "for {minutes in band} of the hold" into its words and its line names. */
export function cutClause(says: string): readonly Piece[] {
  return says
    .split(/(\{[^{}]*\})/)
    .filter((piece) => piece !== "")
    .map((piece) => (piece.startsWith("{") && piece.endsWith("}") ? { name: piece.slice(1, -1) } : { text: piece }));
}

/** The first wording whose lines have all settled; the last one where none has. */
export function chooseClause(clause: Clause | string, settled: (name: string) => boolean): Clause {
  const asClause = typeof clause === "string" ? { says: clause } : clause;
  const names = cutClause(asClause.says).flatMap((piece) => ("name" in piece ? [piece.name] : []));
  if (names.every(settled) || asClause.otherwise === undefined) return asClause;
  const next = chooseClause(asClause.otherwise, settled);
  return asClause.caution && !next.caution ? { ...next, caution: asClause.caution } : next;
}
