import type { AddCase, Edit, Lines, Notebook } from "../../../lib/lines/index.ts";
import {
  addNotebook,
  changeNotebook,
  changeRun,
  type KeptNotebook,
  type KeptRun,
  keyed,
  type Moment,
  type NotebookData,
  newNotebook,
  type ShopRecord,
} from "../../../lib/record/index.ts";
import { withRunFact } from "../runFact.ts";
import { ownFiguresOf } from "./laidOver.ts";

type RecordEdit = (record: ShopRecord, moment: Moment) => ShopRecord;

/** What the lines of a run's page are kept by. */
export interface RunPlace {
  /** The notebook that comes with the tool. */
  readonly of: Notebook;
  readonly name: string;
  /** What the maker laid over it. */
  readonly own: () => KeptNotebook | undefined;
  readonly runOf: (inCase: string | undefined) => KeptRun | undefined;
  readonly change: (edit: RecordEdit, undo: string, redo: string) => void;
  /** An amount as a text that can be kept. */
  readonly asText: (line: string, thing: unknown) => string | undefined;
  readonly showRun: (id: string) => void;
  readonly history: Pick<Lines, "undo" | "redo" | "undoName" | "redoName">;
  /** Called after the open lines were edited by themselves. */
  readonly edited: () => void;
}

/** Changes what is laid over a notebook; the first change makes it. */
function laid({ name, own }: RunPlace, change: (data: NotebookData) => NotebookData): RecordEdit {
  return (record, moment) => {
    const there = own();
    const item = there && record.notebooks.find(({ id }) => id === there.id);
    if (item) return changeNotebook(record, item.id, { notebook: change(item.notebook) }, moment.now);
    return addNotebook(record, { ...newNotebook(name, change({ asks: "", lines: keyed([]) }), moment), of: name });
  };
}

/** Each run's fact under a line's new name. */
const factsRenamed =
  (from: string, to: string): RecordEdit =>
  (record, { now }) =>
    record.runs
      .filter(({ facts }) => facts[from] !== undefined)
      .reduce(
        (next, { id }) =>
          changeRun(
            next,
            id,
            ({ facts }) => ({
              facts: keyed(Object.entries(facts).map(([name, fact]) => [name === from ? to : name, fact])),
            }),
            now,
          ),
        record,
      );

/**
 * The lines of a run's page: a given belongs to its run, a line of the maker's own holds for every run, and a line that
 * comes with the tool stays as it is.
 */
export function runLines(inner: Lines, place: RunPlace): Lines {
  const { of, runOf } = place;
  const named = (line: string): string =>
    inner.names().find((name) => name.toLowerCase() === line.toLowerCase()) ?? line;
  const isOurs = (line: string): boolean => Object.hasOwn(of.lines, named(line));
  let batch: RecordEdit[] | undefined;

  function change(edit: RecordEdit, undo: string, redo: string): void {
    if (batch) batch.push(edit);
    else place.change(edit, undo, redo);
  }

  /** An edit of the maker's own lines: made where they are open, then kept. */
  function ownEdit(work: () => void, also: RecordEdit = (record) => record): void {
    const before = inner.did();
    work();
    const step = inner.did();
    if (!step || step === before) return;
    place.edited();
    const lines = Object.entries(inner.notebook().lines).filter(([name]) => !Object.hasOwn(of.lines, name));
    const keep = laid(place, (data) => ({
      ...data,
      // What a given says here is this run's; what it said when it was made holds for the others.
      lines: keyed(lines.map(([name, line]) => [name, (line.kind === "given" && data.lines[name]) || line] as const)),
    }));
    change((record, moment) => also(keep(record, moment), moment), step.undo, step.redo);
  }

  function refuseOurs(line: string): void {
    if (isOurs(line))
      throw new Error(
        `${named(line)} comes with ${place.name}; copy the notebook as a question of your own to change it there`,
      );
  }

  function set(line: string, edit: Edit, inCase?: string): void {
    const found = inner.line(line);
    if (found.kind !== "given" || "worked" in edit || "fitted" in edit || "unit" in edit) {
      refuseOurs(line);
      ownEdit(() => inner.set(line, edit));
      return;
    }
    const run = runOf(inCase);
    const text = "value" in edit ? place.asText(line, edit.value) : edit.given;
    if (!run || text === undefined) throw new Error(`${named(line)} cannot be written here; its log is written below`);
    const name = named(line);
    const was = inner.text(name, inCase) || "blank";
    const known = ("given" in edit ? edit.known : undefined) ?? run.facts[name]?.known ?? found.known;
    const whose = inCase === undefined || inCase === "" || runOf(undefined) === run ? name : `${name} of ${inCase}`;
    change(
      (record, moment) => withRunFact(record, moment, run.id, name, { text, known }, found),
      `${whose} was ${was}`,
      `${whose} is ${text || "blank"}`,
    );
  }

  function addCase(name: string, { from }: AddCase = {}): void {
    if (from?.kind !== "run")
      throw new Error(`a case of ${place.name} is another run; a question of your own takes any`);
    const { id } = from;
    const words = `showing ${from.says ?? name} beside it`;
    change(
      laid(place, (data) => ({
        ...data,
        cases: { ...data.cases, [id]: {} },
        casesFrom: { ...data.casesFrom, [id]: from },
      })),
      words,
      words,
    );
  }

  function removeCase(name: string): void {
    const id = runOf(name)?.id;
    if (id === undefined) return;
    const without = <T>(all: Readonly<Record<string, T>> | undefined) =>
      keyed(Object.entries(all ?? {}).filter(([one]) => one !== id));
    const words = `putting ${name} away`;
    change(
      laid(place, (data) => ({ ...data, cases: without(data.cases), casesFrom: without(data.casesFrom) })),
      words,
      words,
    );
  }

  function hideCase(name: string, hidden: boolean): void {
    const id = runOf(name)?.id;
    if (id === undefined) return;
    const words = `${hidden ? "hiding" : "showing"} ${name}`;
    change(
      laid(place, (data) => {
        const others = (data.hiddenCases ?? []).filter((one) => one !== id);
        return { ...data, hiddenCases: hidden ? [...others, id] : others };
      }),
      words,
      words,
    );
  }

  const notHere = (): void => {
    throw new Error(`the cases of ${place.name} are runs; a question of your own takes any`);
  };

  return {
    ...inner,
    set,
    putBack: notHere,
    add: (name, line) => ownEdit(() => inner.add(name, line)),
    remove(line) {
      refuseOurs(line);
      ownEdit(() => inner.remove(line));
    },
    rename(line, next) {
      refuseOurs(line);
      const from = named(line);
      let to = from;
      ownEdit(
        () => {
          const before = new Set(inner.names());
          inner.rename(line, next);
          to = inner.names().find((name) => !before.has(name)) ?? from;
        },
        (record, moment) => factsRenamed(from, to)(record, moment),
      );
    },
    addCase,
    removeCase,
    hideCase,
    setBase(name) {
      const run = runOf(name);
      if (run) place.showRun(run.id);
    },
    renameCase: notHere,
    moveCase: notHere,
    copyGivens: notHere,
    setRest: (was, { figures, notes }) =>
      change(
        laid(place, (data) => ({
          ...data,
          ...(figures && { figures: ownFiguresOf({ ...data, figures }) }),
          ...(notes && { notes }),
        })),
        was,
        was,
      ),
    together(was, edits) {
      if (batch) {
        edits();
        return;
      }
      const mine: RecordEdit[] = [];
      batch = mine;
      try {
        edits();
      } finally {
        batch = undefined;
        if (mine.length > 0)
          place.change((record, moment) => mine.reduce((next, edit) => edit(next, moment), record), was, was);
      }
    },
    ...place.history,
  };
}
