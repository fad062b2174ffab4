import type { Desk, KeptCase, KeptCases } from "./Desk.ts";
import { foldName, tidyName } from "./foldName.ts";
import type { CaseFrom, Notebook, OwnGiven } from "./types.ts";

/**
 * The cases that a notebook names, ready for a desk; one without a name where it names none.
 * @param book The notebook, checked.
 * @returns The cases, with ids "case 1", "case 2" …
 * @example casesOf(notebook({ asks: "?", lines: {} })).list.length // 1
 */
export function casesOf(book: Notebook): KeptCases {
  const names = Object.keys(book.cases ?? {});
  const hidden = new Set((book.hiddenCases ?? []).map(foldName));
  const from = new Map(Object.entries(book.casesFrom ?? {}).map(([name, one]) => [foldName(name), one]));
  const list = (names.length === 0 ? [""] : names).map((name, i): KeptCase => {
    const source = from.get(foldName(name));
    return { id: `case ${i + 1}`, name, hidden: hidden.has(foldName(name)), ...(source && { from: source }) };
  });
  const base = list.find(({ name }) => foldName(name) === foldName(book.base ?? "")) ?? list[0];
  return { list, base: base?.id ?? "case 1" };
}

/**
 * The cases of a desk as a notebook holds them. Things that no text can hold are left out.
 * @param desk The lines and cases.
 * @returns The parts of a notebook that say what its cases are; nothing where there is one that has nothing of its own.
 * @example casesWritten(desk).base // "Small tank"
 */
export function casesWritten(desk: Desk): Pick<Notebook, "cases" | "base" | "hiddenCases" | "casesFrom"> {
  const { list, base } = desk.cases;
  const nameOf = (id: string) => list.find((one) => one.id === id)?.name;
  const cases: Record<string, Record<string, OwnGiven>> = Object.create(null);
  for (const { id, name } of list) {
    const own: Record<string, OwnGiven> = Object.create(null);
    for (const line of desk.order) {
      const kept = desk.kept.get(line);
      const mine = kept?.own?.get(id);
      if (!kept || !mine || mine.thing) continue;
      const same = mine.sameAs === undefined ? undefined : nameOf(mine.sameAs);
      own[kept.name] = {
        text: mine.text,
        ...(mine.known !== undefined && { known: mine.known }),
        ...(same !== undefined && { sameAs: same }),
      };
    }
    cases[name] = own;
  }
  const [only] = list;
  if (list.length === 1 && only?.name === "" && Object.keys(cases[""] ?? {}).length === 0) return {};
  const hidden = list.filter((one) => one.hidden).map(({ name }) => name);
  const from: Record<string, CaseFrom> = Object.create(null);
  for (const one of list) if (one.from) from[one.name] = one.from;
  const baseName = nameOf(base);
  return {
    cases,
    ...(baseName !== undefined && { base: baseName }),
    ...(hidden.length > 0 && { hiddenCases: hidden }),
    ...(Object.keys(from).length > 0 && { casesFrom: from }),
  };
}

/**
 * A notebook's cases, checked and tidied: each names givens that there are.
 * @param book The notebook; its lines are checked already.
 * @returns The cases, without prototypes.
 * @throws Error `ambiguous case name: …`, `unknown line: …`, `invalid case: …`.
 * @example checkedCases({ asks: "?", lines: {}, cases: { "Long tank": {} } })
 */
export function checkedCases(book: Notebook): Notebook["cases"] {
  if (!book.cases) return undefined;
  const lines = new Map(Object.entries(book.lines).map(([name, line]) => [foldName(name), { name, line }]));
  const seen = new Set<string>();
  const checked: Record<string, Record<string, OwnGiven>> = Object.create(null);
  for (const [name, own] of Object.entries(book.cases)) {
    const tidy = tidyName(name);
    if (seen.has(foldName(tidy))) throw new Error(`ambiguous case name: ${tidy}; each case needs a name of its own`);
    seen.add(foldName(tidy));
    const mine: Record<string, OwnGiven> = Object.create(null);
    for (const [line, given] of Object.entries(own)) {
      const found = lines.get(foldName(line));
      if (!found) throw new Error(`unknown line: ${line}, in the case ${tidy}; a line of this notebook`);
      if (found.line.kind !== "given")
        throw new Error(`invalid case: ${line} of ${tidy} is ${found.line.kind} by one formula in every case`);
      mine[found.name] = given;
    }
    checked[tidy] = mine;
  }
  return checked;
}
