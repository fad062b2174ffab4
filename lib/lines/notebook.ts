import { checkedCases } from "./casesOf.ts";
import { checkName } from "./checkName.ts";
import { foldName, tidyName } from "./foldName.ts";
import { namesOf } from "./names.ts";
import type { Line, Notebook } from "./types.ts";

/**
 * A notebook as plain data, its line names checked and tidied. It can be kept, copied and opened with `openLines`.
 * @param spec The question, the lines under their names, the answer and the figures.
 * @returns The same data; `lines` has no prototype, so that a line may bear any word as its name.
 * @throws Error `invalid line name: …` or `ambiguous line name: …`, with the reason; `unknown line: …` for one that only a
 * case names.
 * @example notebook({ asks: "How much salt?", lines: { salt: given("24 lb", "weighed") } }).asks // "How much salt?"
 */
export function notebook(spec: Notebook): Notebook {
  const book = { ...spec, lines: linesOf(spec.lines) };
  const cases = checkedCases(book);
  return cases ? { ...book, cases } : book;
}

/** Lines under their tidy names, in their order. */
function linesOf(lines: Notebook["lines"]): Notebook["lines"] {
  const entries = Object.entries(lines).map(([name, line]) => [tidyName(name), line] as const);
  const names = namesOf(entries.map(([name]) => name));
  const seen = new Set<string>();
  const checked: Record<string, Line> = Object.create(null);
  for (const [name, line] of entries) {
    const wrong = checkName(name, names);
    if (wrong !== undefined) throw new Error(`invalid line name: ${name}; it ${wrong}`);
    if (seen.has(foldName(name))) throw new Error(`ambiguous line name: ${name}; each line needs a name of its own`);
    seen.add(foldName(name));
    checked[name] = line;
  }
  return checked;
}
