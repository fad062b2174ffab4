import { answerOf } from "./Answer.ts";
import {
  planAddCase,
  planBase,
  planCopyGivens,
  planHideCase,
  planMoveCase,
  planRemoveCase,
  planRenameCase,
  refuseTooManyCases,
} from "./caseEdits.ts";
import { casesOf, casesWritten } from "./casesOf.ts";
import { checkEdit } from "./checkEdit.ts";
import { Desk, type KeptCases, type LineChange } from "./Desk.ts";
import { Engine } from "./Engine.ts";
import { planAdd, planRemove, planRename, planSet } from "./edits.ts";
import { functions } from "./functions.ts";
import { History } from "./History.ts";
import { isStraight } from "./isStraight.ts";
import type { Edit, Lines, OpenOptions } from "./Lines.ts";
import { lessBase } from "./lessBase.ts";
import { namesOf } from "./names.ts";
import { notebook } from "./notebook.ts";
import { ownFrom, planOwn, withOwn } from "./ownEdits.ts";
import { renameInRest } from "./renameInRest.ts";
import { solveFor } from "./solveFor.ts";
import { sweepOver } from "./sweepOver.ts";
import { trialOf } from "./trialOf.ts";
import type { Line, Notebook, Result } from "./types.ts";

type Rest = Omit<Notebook, "lines" | "cases" | "base" | "hiddenCases" | "casesFrom">;
interface Turn<T> {
  readonly before: T;
  readonly after: T;
}

interface Change {
  readonly lines: readonly LineChange[];
  readonly cases?: Turn<KeptCases>;
  readonly rest?: Turn<Rest>;
}

interface Step {
  readonly undo: string;
  readonly redo: string;
  readonly changes: readonly LineChange[];
  readonly cases?: Turn<KeptCases>;
}

/**
 * Opens a notebook: each line in each case becomes one node that is worked out again when, and only when, something it
 * uses changes. Several edits in one go are worked out once. Errors are results: the rest of the notebook goes on.
 * @param book The notebook as plain data.
 * @param options Functions that formulas may call beside sqrt, exp, ln, log10, sin, cos, tan, abs, min and max; and
 * what some lines are to begin with (texts, or things that no text can hold).
 * @returns The open notebook.
 * @throws Error `invalid line name: …`, `ambiguous function: …`, `unknown line: …`, `unknown case: …`.
 * @example
 * const book = notebook({
 *   asks: "How strong?",
 *   lines: { salt: given("24 lb", "weighed"), ratio: worked("salt / 2 gal", "lb/gal") },
 *   cases: { "as it is": {}, "more salt": { salt: "30 lb" } },
 * });
 * const lines = openLines(book);
 * const ratio = await lines.value("ratio", "more salt");
 * ratio.value // 1797.4...
 */
export function openLines(book: Notebook, options: OpenOptions = {}): Lines {
  const { lines, cases, base: _base, hiddenCases: _hidden, casesFrom: _from, ...rest } = notebook(book);
  const names = namesOf([], [...functions, ...(options.vocabulary?.functions ?? [])]);
  refuseTooManyCases(Object.keys(cases ?? {}).length);
  const desk = new Desk(names.functions, casesOf({ ...book, ...(cases && { cases }) }));
  const history = new History<Change>();
  const observers = new Set<(line: string, result: Result, inCase: string) => void>();
  const nameOf = (id: string) => desk.kept.get(id)?.name ?? id;
  const caseName = (id: string) => desk.cases.list.find((one) => one.id === id)?.name ?? id;
  const engine = new Engine(desk, (id, result, inCase) => {
    if (observers.size === 0) return;
    const [name, one] = [nameOf(id), caseName(inCase)];
    for (const tell of [...observers]) tell(name, result, one);
  });
  let about: Rest = rest;
  let count = 0;
  let caseCount = desk.cases.list.length;
  let open = true;
  let gathered: Step[] | undefined;

  engine.apply(openedLines());
  const texts = (value: unknown): Edit => (typeof value === "string" ? { given: value } : { value });
  const givens = options.givens instanceof Map ? [...options.givens] : Object.entries(options.givens ?? {});
  engine.apply(givens.flatMap(([name, value]) => planSet(desk, name, texts(value))?.changes ?? []));
  for (const [inCase, own] of Object.entries(options.inCases ?? {}))
    for (const [name, value] of Object.entries(own))
      engine.apply(planOwn(desk, name, desk.caseNamed(inCase), texts(value))?.changes ?? []);

  function openedLines(): readonly LineChange[] {
    return Object.entries(lines).map(([name, line], at) => {
      const id = `line ${++count}`;
      let after: NonNullable<LineChange["after"]> = { id, name, line };
      for (const one of desk.cases.list) {
        const given = cases?.[one.name]?.[name];
        if (given === undefined) continue;
        const idOf = (folded: string) => desk.caseNamed(folded).id;
        after = withOwn(after, one.id, ownFrom(given, idOf));
      }
      return { id, at, after };
    });
  }

  function make({ lines: changes, cases: turn, rest: turned }: Change): void {
    if (turn && turn.after !== desk.cases) {
      // Own readings are there before their case is worked, and still there when it goes.
      engine.apply(changes);
      engine.applyCases(turn.after);
    } else engine.apply(changes);
    if (turned) about = turned.after;
  }

  function back({ lines: changes, cases: turn, rest: turned }: Change): void {
    make({
      lines: changes.map(swapped).reverse(),
      ...(turn && { cases: turnedRound(turn) }),
      ...(turned && { rest: turnedRound(turned) }),
    });
  }

  function edit(planned: Step | undefined, restAfter?: Rest): void {
    if (!open) throw new Error("invalid edit: the notebook is closed; open it again");
    if (!planned) return;
    const change: Change = {
      lines: planned.changes,
      ...(planned.cases && { cases: planned.cases }),
      ...(restAfter && { rest: { before: about, after: restAfter } }),
    };
    make(change);
    if (gathered) gathered.push(planned);
    else history.did({ undo: planned.undo, redo: planned.redo, change });
  }

  const idOf = (name: string) => desk.named(name).id;
  const caseId = (name: string | undefined) => desk.caseNamed(name).id;
  const resultIn = (line: string, inCase: string) => engine.result(line, inCase);
  const world = { desk, wiring: engine.wiring, result: resultIn };

  async function settledResult(line: string, inCase: string): Promise<Result> {
    const hasCase = () => desk.cases.list.some(({ id }) => id === inCase);
    do await engine.settled(line, inCase);
    while (open && desk.kept.has(line) && hasCase() && engine.result(line, inCase).state === "working");
    if (!desk.kept.has(line)) return { state: "stopped", says: "this line was removed" };
    if (!hasCase()) return { state: "stopped", says: "this case was removed" };
    const result = engine.result(line, inCase);
    return result.state === "working" ? { state: "stopped", says: "the notebook was closed" } : result;
  }

  return {
    async value(name, inCase) {
      const id = idOf(name);
      const { line } = desk.named(name);
      const result = await settledResult(id, caseId(inCase));
      return answerOf(result, desk.kept.get(id)?.line ?? line, nameOf(id));
    },
    result: (name, inCase) => engine.result(idOf(name), caseId(inCase)),
    line: (name) => desk.named(name).line,
    text(name, inCase) {
      const { line, own } = desk.named(name);
      return own?.get(caseId(inCase))?.text ?? textOf(line);
    },
    own(name, inCase) {
      const own = desk.named(name).own?.get(caseId(inCase));
      if (!own) return undefined;
      const { sameAs, thing: _, ...mine } = own;
      return { ...mine, ...(sameAs !== undefined && { sameAs: caseName(sameAs) }) };
    },
    set(name, change, inCase) {
      checkEdit(change);
      const one = inCase === undefined ? undefined : desk.caseNamed(inCase);
      const alone = one === undefined || one.name === "" || !("given" in change || "value" in change);
      edit(alone ? planSet(desk, name, change) : planOwn(desk, name, one, change));
    },
    putBack: (name, inCase) => edit(planOwn(desk, name, desk.caseNamed(inCase), undefined)),
    add: (name, line, after) => edit(planAdd(desk, `line ${++count}`, name, line, after)),
    remove: (name) => edit(planRemove(desk, name)),
    rename(name, next) {
      const before = desk.named(name);
      const planned = planRename(desk, name, next, engine.wiring.usedBy(before.id));
      edit(planned, planned && renameInRest(about, before.name, planned.changes[0]?.after?.name ?? next));
    },
    cases: () =>
      desk.cases.list.map(({ id, name, hidden, from }) => ({
        name,
        base: id === desk.cases.base,
        hidden,
        ...(from && { from }),
      })),
    addCase(name, how = {}) {
      refuseTooManyCases(desk.cases.list.length + 1);
      edit(planAddCase(desk, `case ${++caseCount}`, name, how));
    },
    removeCase: (name) => edit(planRemoveCase(desk, name)),
    renameCase: (name, next) => edit(planRenameCase(desk, name, next)),
    moveCase: (name, before) => edit(planMoveCase(desk, name, before)),
    hideCase: (name, hidden) => edit(planHideCase(desk, name, hidden)),
    setBase: (name) => edit(planBase(desk, name)),
    copyGivens: (from, to) => edit(planCopyGivens(desk, from, to)),
    less: (name, inCase) => lessBase(resultIn(idOf(name), caseId(inCase)), resultIn(idOf(name), desk.cases.base)),
    async solve(name, wanted, by, inCase) {
      const [line, given, one] = [idOf(name), idOf(by), caseId(inCase)];
      await settledResult(line, one);
      await settledResult(given, one);
      return solveFor({ ...world, inCase: one }, line, wanted, given);
    },
    async sweep(name, by, how) {
      const [line, given] = [idOf(name), idOf(by)];
      const asked = how.cases ?? desk.cases.list.filter(({ hidden }) => !hidden).map((one) => one.name);
      const ids = asked.map((one) => desk.caseNamed(one));
      for (const { id } of ids) await settledResult(line, id);
      return sweepOver(world, line, given, ids, how);
    },
    async trial(name, inCase, how) {
      const [line, one] = [idOf(name), caseId(inCase)];
      await settledResult(line, one);
      return trialOf(world, one, line, how);
    },
    async isStraight(name, inCase, how) {
      const [line, one] = [idOf(name), caseId(inCase)];
      await settledResult(line, one);
      return isStraight(world, one, line, how);
    },
    setRest(was, part) {
      edit({ undo: was, redo: was, changes: [] }, { ...about, ...part });
    },
    together(was, edits) {
      if (gathered) return edits();
      const [restBefore, casesBefore] = [about, desk.cases];
      const mine: Step[] = [];
      gathered = mine;
      try {
        edits();
      } finally {
        gathered = undefined;
        const change: Change = {
          lines: mine.flatMap(({ changes }) => changes),
          ...(desk.cases !== casesBefore && { cases: { before: casesBefore, after: desk.cases } }),
          rest: { before: restBefore, after: about },
        };
        if (mine.length > 0) history.did({ undo: was, redo: was, change });
      }
    },
    names: () => desk.order.map(nameOf),
    uses: (name) => engine.wiring.uses(idOf(name)).map(nameOf),
    usedBy: (name) => engine.wiring.usedBy(idOf(name)).map(nameOf),
    undo() {
      const step = history.back();
      if (step) back(step.change);
      return step !== undefined;
    },
    redo() {
      const step = history.forth();
      if (step) make(step.change);
      return step !== undefined;
    },
    undoName: () => history.last && `Undo: ${history.last.undo}`,
    redoName: () => history.next && `Redo: ${history.next.redo}`,
    did: () => history.last,
    worked: () => engine.worked,
    observe(tell) {
      observers.add(tell);
      return () => observers.delete(tell);
    },
    atWork: () => [...new Set(engine.atWork().map(({ line }) => nameOf(line)))],
    atWorkIn: () => engine.atWork().map(({ line, inCase }) => ({ line: nameOf(line), inCase: caseName(inCase) })),
    stop: (name, inCase) => engine.stop(idOf(name), caseId(inCase)),
    again: (name, inCase) => engine.again(idOf(name), caseId(inCase)),
    settled: () => engine.settled(),
    notebook: () =>
      notebook({
        ...about,
        lines: Object.fromEntries(desk.order.map((id) => [nameOf(id), desk.named(nameOf(id)).line])),
        ...casesWritten(desk),
      }),
    close() {
      open = false;
      observers.clear();
      engine.close();
    },
  };
}

function textOf(line: Line): string {
  return line.kind === "given" ? line.text : line.formula;
}

function swapped({ before, after, ...rest }: LineChange): LineChange {
  return { ...rest, ...(after && { before: after }), ...(before && { after: before }) };
}

function turnedRound<T>({ before, after }: Turn<T>): Turn<T> {
  return { before: after, after: before };
}
