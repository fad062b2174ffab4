import { answerOf } from "./Answer.ts";
import { Desk, type LineChange } from "./Desk.ts";
import { Engine } from "./Engine.ts";
import { type Planned, planAdd, planRemove, planRename, planSet } from "./edits.ts";
import { functions } from "./functions.ts";
import { History } from "./History.ts";
import type { Lines, OpenOptions } from "./Lines.ts";
import { namesOf } from "./names.ts";
import { notebook } from "./notebook.ts";
import { renameInAnswer } from "./renameInAnswer.ts";
import type { Line, Notebook, Result } from "./types.ts";

type Rest = Omit<Notebook, "lines">;

interface Change {
  readonly lines: readonly LineChange[];
  readonly rest?: { readonly before: Rest; readonly after: Rest };
}

/**
 * Opens a notebook: each line becomes one node that is worked out again when, and only when, something it uses changes.
 * Several edits in one go are worked out once. Errors are results: the rest of the notebook goes on.
 * @param book The notebook as plain data.
 * @param options Functions that formulas may call beside sqrt, exp, ln, log10, sin, cos, tan, abs, min and max; and
 * what some lines are to begin with (texts, or things that no text can hold).
 * @returns The open notebook.
 * @throws Error `invalid line name: …`, `ambiguous function: …`, `unknown line: …`.
 * @example
 * const book = notebook({ asks: "How strong?", lines: { salt: given("24 lb", "weighed"), ratio: worked("salt / 2 gal", "lb/gal") } });
 * const lines = openLines(book);
 * const ratio = await lines.value("ratio");
 * ratio.value // 1437.9...
 */
export function openLines(book: Notebook, options: OpenOptions = {}): Lines {
  const { lines, ...rest } = notebook(book);
  const names = namesOf([], [...functions, ...(options.vocabulary?.functions ?? [])]);
  const desk = new Desk(names.functions);
  const history = new History<Change>();
  const observers = new Set<(line: string, result: Result) => void>();
  const nameOf = (id: string) => desk.kept.get(id)?.name ?? id;
  const engine = new Engine(desk, (id, result) => {
    for (const tell of [...observers]) tell(nameOf(id), result);
  });
  let about: Rest = rest;
  let count = 0;
  let open = true;
  let gathered: Planned[] | undefined;

  engine.apply(
    Object.entries(lines).map(([name, line], at) => {
      const id = `line ${++count}`;
      return { id, at, after: { id, name, line } };
    }),
  );
  const givens = options.givens instanceof Map ? [...options.givens] : Object.entries(options.givens ?? {});
  engine.apply(
    givens.flatMap(
      ([name, value]) => planSet(desk, name, typeof value === "string" ? { given: value } : { value })?.changes ?? [],
    ),
  );

  function make(change: Change): void {
    engine.apply(change.lines);
    if (change.rest) about = change.rest.after;
  }

  function back(change: Change): void {
    engine.apply(change.lines.map(swapped).reverse());
    if (change.rest) about = change.rest.before;
  }

  function edit(planned: Planned | undefined, restAfter?: Rest): void {
    if (!open) throw new Error("invalid edit: the notebook is closed; open it again");
    if (!planned) return;
    const change: Change = { lines: planned.changes, ...(restAfter && { rest: { before: about, after: restAfter } }) };
    make(change);
    if (gathered) gathered.push(planned);
    else history.did({ undo: planned.undo, redo: planned.redo, change });
  }

  const idOf = (name: string) => desk.named(name).id;

  return {
    async value(name) {
      const id = idOf(name);
      do await engine.settled(id);
      while (open && desk.kept.has(id) && engine.result(id).state === "working");
      return answerOf(engine.result(id), desk.named(nameOf(id)).line);
    },
    result: (name) => engine.result(idOf(name)),
    line: (name) => desk.named(name).line,
    text: (name) => textOf(desk.named(name).line),
    set: (name, change) => edit(planSet(desk, name, change)),
    add: (name, line, after) => edit(planAdd(desk, `line ${++count}`, name, line, after)),
    remove: (name) => edit(planRemove(desk, name)),
    rename(name, next) {
      const before = desk.named(name);
      const planned = planRename(desk, name, next, engine.wiring.usedBy(before.id));
      edit(planned, planned && renameInAnswer(about, before.name, planned.changes[0]?.after?.name ?? next));
    },
    together(was, edits) {
      if (gathered) return edits();
      const restBefore = about;
      const mine: Planned[] = [];
      gathered = mine;
      try {
        edits();
      } finally {
        gathered = undefined;
        const change: Change = {
          lines: mine.flatMap(({ changes }) => changes),
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
    worked: () => engine.worked,
    observe(tell) {
      observers.add(tell);
      return () => observers.delete(tell);
    },
    atWork: () => engine.atWork().map(nameOf),
    stop: (name) => engine.stop(idOf(name)),
    again: (name) => engine.again(idOf(name)),
    settled: () => engine.settled(),
    notebook: () =>
      notebook({
        ...about,
        lines: Object.fromEntries(desk.order.map((id) => [nameOf(id), desk.named(nameOf(id)).line])),
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
