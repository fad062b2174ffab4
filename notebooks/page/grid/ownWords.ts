import type { Lines } from "../../../lib/lines/index.ts";
import type { CaseColumn } from "./rows.ts";

/** For which cases a given is their own: those have a text of their own, the rest take the line as it is written. */
export function ownIn(open: Lines, line: string, cases: readonly CaseColumn[]): readonly boolean[] {
  return cases.map(({ name }) => name !== "" && open.own(line, name) !== undefined);
}

/** In words whether cases share a given; "" where there is but one case. */
export function ownWords(own: readonly boolean[]): string {
  if (own.length < 2) return "";
  const count = own.filter(Boolean).length;
  if (count === 0) return "one for all";
  return count === own.length ? "own in each" : "own in";
}
