import type { Pasted, Refused } from "./pasted.ts";

/** Refusals that are said one by one; the rest are counted. */
const most = 5;

const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? "" : "s"}`;

/** What was taken of a pasted block, and of each value that was not: where, what was expected and what to do. */
export function pasteWords({ takes, refused, same }: Pasted): string {
  const taken = takes.length === 0 ? "Nothing was changed" : `${count(takes.length, "value")} taken`;
  const already = same === 0 ? "" : `, ${same} stood there already`;
  if (refused.length === 0) return `${taken}${already}.`;
  const kinds = new Map<string, Refused[]>();
  for (const one of refused) {
    const key = JSON.stringify([one.where, one.expected, one.remedy]);
    const alike = kinds.get(key);
    if (alike) alike.push(one);
    else kinds.set(key, [one]);
  }
  const said = [...kinds.values()].slice(0, most);
  const words = said.map(([one, ...others]) => (one ? inWords(one, others.length) : ""));
  const left = refused.length - said.reduce((sum, { length }) => sum + length, 0);
  const rest = left > 0 ? ` And ${left} more.` : "";
  return `${taken}${already}; ${refused.length} left out. ${words.join(" ")}${rest}`;
}

/** What was refused alike at one place is said once. */
function inWords({ where, read, expected, remedy }: Refused, others: number): string {
  const quoted = read === "" || expected.includes(`"${read}"`) ? "" : `"${read.slice(0, 40)}"`;
  const more = others === 0 ? quoted : `${quoted || "this"} and ${others} more`;
  return `${where}: ${more === "" ? "" : `${more}: `}${expected.replace(/\.$/u, "")}. ${remedy}`;
}
