import type { Clause } from "../../lib/lines/index.ts";

/** Words, or a line's number; `bare` leaves its unit to the next number: "from 10.3 to 10.6 lb to the gallon". */
export type Piece = { readonly text: string } | { readonly name: string; readonly bare: boolean };

const bare = ", bare";

const named = (inside: string): Piece =>
  inside.endsWith(bare) ? { name: inside.slice(0, -bare.length), bare: true } : { name: inside, bare: false };

/** Cuts "for {minutes in the band} of the hold" into its words and its line names. */
export function cutClause(says: string): readonly Piece[] {
  return says
    .split(/(\{[^{}]*\})/)
    .filter((piece) => piece !== "")
    .map((piece) => (piece.startsWith("{") && piece.endsWith("}") ? named(piece.slice(1, -1)) : { text: piece }));
}

/** The first wording whose lines have all settled; the last one where none has. A caution stays with its clause. */
export function chooseClause(clause: Clause | string, settled: (name: string) => boolean): Clause {
  const asClause: Clause = typeof clause === "string" ? { says: clause } : clause;
  const names = cutClause(asClause.says).flatMap((piece) => ("name" in piece ? [piece.name] : []));
  if (asClause.otherwise === undefined || names.every(settled)) return asClause;
  const next = chooseClause(asClause.otherwise, settled);
  return asClause.caution && !next.caution ? { ...next, caution: asClause.caution } : next;
}
