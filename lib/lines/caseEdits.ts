import type { Desk, KeptCase, KeptCases, LineChange } from "./Desk.ts";
import { foldName, tidyName } from "./foldName.ts";
import type { AddCase } from "./Lines.ts";
import { LONGEST_NAME } from "./longestName.ts";
import { copiedOwn, type NewOwn, ownFrom, withOwn } from "./ownEdits.ts";

/** What an edit of cases changes, and how it is called when it is undone or done again. */
export interface PlannedCases {
  readonly undo: string;
  readonly redo: string;
  readonly changes: readonly LineChange[];
  readonly cases: { readonly before: KeptCases; readonly after: KeptCases };
}

/** What the one case of a notebook is called once there is a second, until it is given a name. */
export const firstCase = "as it is";
const MOST_CASES = 60;

function planned(
  desk: Desk,
  [undo, redo]: readonly [string, string],
  after: KeptCases,
  changes: readonly LineChange[] = [],
): PlannedCases {
  return { undo, redo, changes, cases: { before: desk.cases, after } };
}

function refuseCaseName(name: string, others: readonly KeptCase[]): void {
  if (name === "") throw new Error("invalid case name: it is empty; write a few words");
  if (name.length > LONGEST_NAME)
    throw new Error(`invalid case name: ${name.slice(0, 40)}…; at most ${LONGEST_NAME} characters`);
  if (/[\u0000-\u001f{}|]/u.test(name))
    throw new Error(`invalid case name: ${name}; letters, figures and common signs are allowed`);
  if (others.some((one) => foldName(one.name) === foldName(name)))
    throw new Error(`ambiguous case name: ${name}; each case needs a name of its own`);
}

/**
 * The change that adds a case behind the others.
 * @param desk The lines and cases as they are.
 * @param id An id that no case has had.
 * @param name Its name.
 * @param how What it starts from.
 * @returns The change.
 * @throws Error `invalid case name: …`, `ambiguous case name: …`, `unknown case: …`, `unknown line: …`.
 * @example planAddCase(desk, "case 2", "Longer tank", {}).undo // "adding case Longer tank"
 */
export function planAddCase(desk: Desk, id: string, name: string, how: AddCase): PlannedCases {
  const { list, base } = desk.cases;
  const tidy = tidyName(name);
  const named = list.map((one) => (one.name === "" ? { ...one, name: firstCase } : one));
  refuseCaseName(tidy, named);
  const copied = how.copyOf === undefined ? [] : copiedOwn(desk, desk.caseNamed(how.copyOf).id, id);
  const byLine = new Map<string, LineChange>(copied.map((change) => [change.id, change]));
  for (const [line, given] of Object.entries(how.own ?? {})) {
    const kept = desk.named(line);
    if (kept.line.kind !== "given") throw new Error(`invalid case: ${line} is worked by one formula in every case`);
    const from = byLine.get(kept.id)?.after ?? kept;
    byLine.set(kept.id, {
      id: kept.id,
      at: desk.order.indexOf(kept.id),
      before: kept,
      after: withOwn(
        from,
        id,
        ownFrom(given, (folded) => list.find((one) => foldName(one.name) === folded)?.id),
      ),
    });
  }
  const added: KeptCase = { id, name: tidy, hidden: false, ...(how.from && { from: how.from }) };
  const words = `adding case ${tidy}`;
  return planned(desk, [words, words], { list: [...named, added], base }, [...byLine.values()]);
}

/**
 * The change that removes a case. What it had of its own stays with the lines, so that undoing brings it back.
 * @param desk The lines and cases as they are.
 * @param name The case.
 * @returns The change.
 * @throws Error `unknown case: …`; `invalid edit: …` for the last one.
 * @example planRemoveCase(desk, "Longer tank").undo // "removing case Longer tank"
 */
export function planRemoveCase(desk: Desk, name: string): PlannedCases {
  const gone = desk.caseNamed(name);
  const list = desk.cases.list.filter(({ id }) => id !== gone.id);
  const [first] = list;
  if (!first) throw new Error("invalid edit: the last case stays; add another first");
  const base = desk.cases.base === gone.id ? first.id : desk.cases.base;
  // A base that was hidden would leave nothing to compare with.
  const shown = list.map((one) => (one.id === base ? { ...one, hidden: false } : one));
  const words = `removing case ${gone.name}`;
  return planned(desk, [words, words], { list: shown, base });
}

/**
 * The change that gives a case another name.
 * @param desk The lines and cases as they are.
 * @param name The case.
 * @param next Its new name.
 * @returns The change, or undefined where it has that name already.
 * @throws Error as `planAddCase`.
 * @example planRenameCase(desk, "Longer tank", "42 in")?.undo // "case 42 in was called Longer tank"
 */
export function planRenameCase(desk: Desk, name: string, next: string): PlannedCases | undefined {
  const one = desk.caseNamed(name);
  const tidy = tidyName(next);
  if (tidy === one.name) return undefined;
  refuseCaseName(
    tidy,
    desk.cases.list.filter(({ id }) => id !== one.id),
  );
  const list = desk.cases.list.map((each) => (each.id === one.id ? { ...each, name: tidy } : each));
  const words = [`case ${tidy} was called ${one.name || firstCase}`, `case ${one.name || firstCase} is called ${tidy}`];
  return planned(desk, [words[0] ?? "", words[1] ?? ""], { ...desk.cases, list });
}

/**
 * The change that moves a case before another, or to the end.
 * @param desk The lines and cases as they are.
 * @param name The case.
 * @param before The other case; the end if left out.
 * @returns The change, or undefined where it stands there already.
 * @throws Error `unknown case: …`.
 * @example planMoveCase(desk, "Longer tank", "Small tank")?.undo // "moving case Longer tank"
 */
export function planMoveCase(desk: Desk, name: string, before?: string): PlannedCases | undefined {
  const one = desk.caseNamed(name);
  const others = desk.cases.list.filter(({ id }) => id !== one.id);
  const at = before === undefined ? others.length : others.indexOf(desk.caseNamed(before));
  if (at < 0) return undefined;
  const list = [...others.slice(0, at), one, ...others.slice(at)];
  if (list.every(({ id }, i) => id === desk.cases.list[i]?.id)) return undefined;
  const words = `moving case ${one.name}`;
  return planned(desk, [words, words], { ...desk.cases, list });
}

/**
 * The change that hides a case or shows it again. The base is always shown.
 * @param desk The lines and cases as they are.
 * @param name The case.
 * @param hidden Whether it is to be hidden.
 * @returns The change, or undefined where it is so already.
 * @throws Error `unknown case: …`; `invalid edit: …` for the base.
 * @example planHideCase(desk, "Longer tank", true)?.undo // "hiding case Longer tank"
 */
export function planHideCase(desk: Desk, name: string, hidden: boolean): PlannedCases | undefined {
  const one = desk.caseNamed(name);
  if (one.hidden === hidden) return undefined;
  if (hidden && one.id === desk.cases.base)
    throw new Error(`invalid edit: ${one.name} is the base that the others are compared with; choose another first`);
  const list = desk.cases.list.map((each) => (each.id === one.id ? { ...each, hidden } : each));
  const words = `${hidden ? "hiding" : "showing"} case ${one.name}`;
  return planned(desk, [words, words], { ...desk.cases, list });
}

/**
 * The change that makes a case the base.
 * @param desk The lines and cases as they are.
 * @param name The case.
 * @returns The change, or undefined where it is so already.
 * @throws Error `unknown case: …`.
 * @example planBase(desk, "Longer tank")?.undo // "the base was Small tank"
 */
export function planBase(desk: Desk, name: string): PlannedCases | undefined {
  const [was, is] = [desk.caseNamed(undefined), desk.caseNamed(name)];
  if (was.id === is.id) return undefined;
  const list = desk.cases.list.map((each) => (each.id === is.id ? { ...each, hidden: false } : each));
  return planned(desk, [`the base was ${was.name}`, `the base is ${is.name}`], { list, base: is.id });
}

/**
 * The change that gives a case all that another has of its own.
 * @param desk The lines and cases as they are.
 * @param from The case that is copied.
 * @param to The case that gets them.
 * @returns The change, or undefined where they have the same already.
 * @throws Error `unknown case: …`.
 * @example planCopyGivens(desk, "Small tank", "Longer tank")?.undo // "copying the givens of Small tank to Longer tank"
 */
export function planCopyGivens(desk: Desk, from: string, to: string): PlannedCases | undefined {
  const [source, target] = [desk.caseNamed(from), desk.caseNamed(to)];
  const changes = source.id === target.id ? [] : copiedOwn(desk, source.id, target.id);
  if (changes.length === 0) return undefined;
  const words = `copying the givens of ${source.name} to ${target.name}`;
  return planned(desk, [words, words], desk.cases, changes);
}

/** As many cases as a notebook may have: a table of more is no help to anybody, and each costs work. */
export function refuseTooManyCases(count: number): void {
  if (count > MOST_CASES) throw new Error(`invalid cases: ${count}; at most ${MOST_CASES}`);
}

export type { NewOwn };
