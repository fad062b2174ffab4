import type { Pasted } from "./pasted.ts";

/** Refusals that are said one by one; the rest are counted. */
const most = 5;

const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? "" : "s"}`;

/** What was taken of a pasted block, and of each value that was not: where, what was expected and what to do. */
export function pasteWords({ takes, refused, same }: Pasted): string {
  const taken = takes.length === 0 ? "Nothing was changed" : `${count(takes.length, "value")} taken`;
  const already = same === 0 ? "" : `, ${same} stood there already`;
  if (refused.length === 0) return `${taken}${already}.`;
  const words = refused
    .slice(0, most)
    .map(
      ({ where, read, expected, remedy }) =>
        `${where}: ${read === "" || expected.includes(`"${read}"`) ? "" : `"${read.slice(0, 40)}": `}${expected.replace(/\.$/u, "")}. ${remedy}`,
    );
  const rest = refused.length > most ? ` And ${refused.length - most} more.` : "";
  return `${taken}${already}; ${refused.length} left out. ${words.join(" ")}${rest}`;
}
